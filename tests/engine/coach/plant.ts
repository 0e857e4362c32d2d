/**
 * Plants one mistake in a lesson way, and goes on with the lesson from where the cube stands then. Which examples are drawn
 * again is decided by rules about the turns alone; the coach is never asked.
 *
 * 1. The mistake makes the way to the goal of its stage no longer: nothing went wrong. Re-holds are free anyhow.
 * 2. Its turns are also a form that another kind takes at this place: nobody could tell them apart.
 * 3. The cube comes back to where it had been, but the kind is not one of those that do: that is another kind.
 * 4. They bring another piece nearer its home: a right step, for that one.
 * 5. Two turns of one layer come to stand side by side where the lesson has none: that looks like turns undone, or several
 *    for one. Or the mistake and what comes behind it are together a sequence of the book.
 * 6. A kind that breaks a layer does not break one, or one that is never mended is; or the turn is of the layer that was
 *    turned just before it, which looks like half a turn.
 * 7. The goal of the span is reached inside the mistake, where the try ends.
 * 8. Two slips look like two others nearby. They are only planted where four more turns are left to know the sequence by, and
 *    not in a first turn of the top layer, which is a top turn before it; a single slip need not be told apart from two.
 * 9. A way that is only longer is for another piece on its way a right step, or not longer than the lesson's for its own.
 */

import { below } from '../../../engine/chance/random-source.ts'
import { pushTokens } from '../../../engine/coach/turn-tokens.ts'
import { afterTurns, applyTurn } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../../engine/cube/hold.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { type Turn, turnOf } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { goalMet, goalsBeforeMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { isPieceStage } from '../../../engine/method/piece-cases.ts'
import { RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'
import { STAGES, type StageSpan } from '../../../engine/method/stages.ts'
import { type LookFor, turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { sourceNumbered } from '../method/starts.ts'
import { helpsAnotherPiece } from './other-pieces.ts'
import type { Form } from './plant-forms.ts'
import { KINDS, type Kind } from './plant-kinds.ts'
import { drawPlace, type Place } from './plant-place.ts'
import { twoSlipsNear } from './plant-two-slips.ts'

/** A try with one mistake. */
export type Planted = {
  readonly key: string
  readonly start: CubePosition
  readonly span: StageSpan
  readonly turns: readonly Turn[]
  /** The turns that are the mistake. */
  readonly from: number
  readonly to: number
  /** Where more than one turn is otherwise: the place of each. */
  readonly places?: readonly number[]
}

const COMES_BACK = ['coach/undone', 'coach/led-nowhere', 'coach/needless-re-hold', 'coach/two-for-one']
const IS_FREE = ['coach/needless-re-hold']
const ANY_PIECE: LookFor = { key: 'look/base-not-down' }
const BREAKS = ['coach/layer-broken', 'coach/layer-left-broken']
const DRAWS_MAX = 3_000

/** @param number of the example; the same number gives the same example */
export function plant(kind: Kind, number: number): Planted {
  const random = sourceNumbered(1_000_000 + 1_000 * KINDS.indexOf(kind) + number)
  for (let draw = 0; draw < DRAWS_MAX; draw++) {
    const place = drawPlace(random, kind.stages)
    const forms = kind.forms(place)
    if (forms.length === 0) continue
    const form = forms[below(random, forms.length)]
    const planted = plantedWith(kind, place, form)
    if (planted !== null) return planted
  }
  throw new Error(`no place for ${kind.key}`)
}

function plantedWith(kind: Kind, place: Place, form: Form): Planted | null {
  const { start, span, before, position, step } = place
  const after = afterTurns(position, form.turns)
  const behind = kind.isLast ? [] : lessonWay(after, span)
  const stage = form.stage ?? step.stage
  const lost = countOuterBlockTurns(form.turns) + nLessonTurns(after, stage) - nLessonTurns(position, stage)
  if (lost <= 0 && !IS_FREE.includes(kind.key)) return null
  if (!COMES_BACK.includes(kind.key) && comesBack(start, before.length, [...before, ...form.turns, ...behind]))
    return null
  if (isPieceStage(step.stage) && goalsBeforeMet(after, step.stage) && !IS_FREE.includes(kind.key)) {
    // The top turn was needless, not wrong, when it brings the piece itself nearer home.
    const lookFor = kind.key === 'coach/wrong-top-turn' ? ANY_PIECE : step.lookFor
    if (helpsAnotherPiece(position, after, step.stage, lookFor, 1) && kind.key !== 'coach/too-seldom') return null
  }
  if (kind.key === 'coach/too-seldom' && isPieceStage(step.stage)) {
    const stopped = afterTurns(position, form.turns.slice(0, form.to))
    if (helpsAnotherPiece(position, stopped, step.stage, step.lookFor, 1)) return null
  }
  if (BREAKS.includes(kind.key) && isOneLayer(textOf(start, [...before, form.turns[0]]))) return null
  if (kind.key === 'coach/layer-broken' && goalsBeforeMet(after, step.stage)) return null
  if (kind.isLast && staysSoundOrMends(position, form.turns, place)) return null
  if (!COMES_BACK.includes(kind.key) && kind.key !== 'coach/wrong-amount') {
    const isJoined =
      nPairs(start, [...before, ...form.turns, ...behind], before.length, form) >
      nPairs(start, [...before, ...turnsOfStep(step)], before.length, null)
    if (isJoined) return null
  }
  if (becomesASequence(position, form, behind)) return null
  if (reachesGoalEarly(position, form.turns, span)) return null
  if (!IS_FREE.includes(kind.key) && isAlsoAnother(kind, place, form)) return null
  if (kind.isRare === true && isAnyTwo(place, form)) return null
  return {
    key: kind.key,
    start,
    span,
    turns: [...before, ...form.turns, ...behind],
    from: before.length + form.from,
    to: before.length + form.to,
    ...(form.places === undefined ? {} : { places: form.places.map((at) => before.length + at) }),
  }
}

/** Do two slips at other turns of the sequence look alike? */
function isAnyTwo(place: Place, form: Form): boolean {
  const text = textOf(place.position, form.turns)
  return twoSlipsNear(place, form).some(
    ({ turns, pair }) =>
      turns.length === form.turns.length &&
      pair?.join() !== form.pair?.join() &&
      textOf(place.position, turns) === text,
  )
}

function isAlsoAnother(kind: Kind, place: Place, form: Form): boolean {
  const text = textOf(place.position, form.turns)
  const nTurns = countOuterBlockTurns(form.turns)
  return KINDS.some(
    (other) =>
      other !== kind &&
      other.isLast !== true &&
      other.isRare !== true &&
      other
        .forms(place)
        .some(({ turns }) => countOuterBlockTurns(turns) === nTurns && textOf(place.position, turns) === text),
  )
}

function nLessonTurns(position: CubePosition, to: Place['step']['stage']): number {
  return countOuterBlockTurns(lessonWay(position, { from: to, to }))
}

/** What the turns do to layers, whoever holds the cube how. */
function textOf(position: CubePosition, turns: readonly Turn[]): string {
  const moving = copyCube(position)
  const tokens: number[] = []
  for (const turn of turns) {
    pushTokens(moving, turn, tokens)
    applyTurn(moving, turn)
  }
  return tokens.join()
}

/** Does the cube, once the mistake has begun, stand again as it stood up to then? */
function comesBack(start: CubePosition, nBefore: number, turns: readonly Turn[]): boolean {
  const moving = copyCube(start)
  const seen = new Set([pieces(moving)])
  let last = pieces(moving)
  for (const [index, turn] of turns.entries()) {
    applyTurn(moving, turn)
    const now = pieces(moving)
    if (now === last) continue
    last = now
    if (index < nBefore) seen.add(now)
    else if (seen.has(now)) return true
  }
  return false
}

function pieces(position: CubePosition): string {
  return asHeldHome(position).subarray(0, 20).join()
}

function staysSoundOrMends(position: CubePosition, turns: readonly Turn[], { step }: Place): boolean {
  const moving = copyCube(position)
  return turns.some((turn) => {
    applyTurn(moving, turn)
    return goalsBeforeMet(moving, step.stage)
  })
}

function reachesGoalEarly(position: CubePosition, turns: readonly Turn[], { to }: StageSpan): boolean {
  const moving = copyCube(position)
  return turns.some((turn) => {
    applyTurn(moving, turn)
    return goalMet(moving, to)
  })
}

/** How often one layer is turned twice in a row, from the turn before the step to the one behind its mistake. */
function nPairs(start: CubePosition, turns: readonly Turn[], nBefore: number, form: Form | null): number {
  const end = form === null ? turns.length : nBefore + form.turns.length
  const layers: number[] = []
  const moving = copyCube(start)
  let nBehind = 0
  for (const [index, turn] of turns.entries()) {
    const tokens: number[] = []
    pushTokens(moving, turn, tokens)
    applyTurn(moving, turn)
    if (index < nBefore) layers.splice(0, tokens.length > 0 ? 1 : 0)
    if (end <= index && tokens.length > 0 && ++nBehind > 1) break
    layers.push(...tokens.map((token) => token >> 2))
  }
  return layers.filter((layer, index) => index > 0 && layers[index - 1] === layer).length
}

/** Is the mistake, or the last trigger of it, together with what comes behind the beginning of a sequence of the book? */
function becomesASequence(position: CubePosition, { turns }: Form, behind: readonly Turn[]): boolean {
  return [0, turns.length - RIGHT_TRIGGER.length].some((from) => {
    if (from < 0) return false
    const held = afterTurns(position, turns.slice(0, from))
    const text = textOf(held, turns.slice(from))
    const further = textOf(held, [...turns.slice(from), ...behind.slice(0, LONGEST_SEQUENCE)])
    return STAGES.flatMap((stage) => LESSON_BOOK.stages[stage]).some((sequence) =>
      SIDE_HOLDS.some((hold) => {
        const whole = textOf(held, [...hold, ...sequence.turns])
        return whole.startsWith(`${text},`) && further.startsWith(whole)
      }),
    )
  })
}

const LONGEST_SEQUENCE = 60
const SIDE_HOLDS = [[], [turnOf('y')], [turnOf("y'")], [turnOf('y2')]]

/** Are the last two tokens of a text of one layer? */
function isOneLayer(text: string): boolean {
  const [last, before] = text.split(',').reverse().map(Number)
  return last >> 2 === before >> 2
}
