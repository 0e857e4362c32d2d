/**
 * A sequence of the book that does not lead on. What is nearest to it among the choices that do says what was wrong.
 *
 *     y F A F'       the corner shape's arms in front and right: "held another way, it leads on"
 *     U A            "the top layer was brought to another place before it"
 *     B              "the left trigger was done in place of the right one"
 *     A A A          where two of them bring the corner home: "once too often"
 *     L' A^2 L ...   at stage 4: "that is what stage 6 does"
 */

import { holdOf } from '../../cube/hold.ts'
import { mirrorTurns } from '../../cube/mirror-turns.ts'
import { type Turn, type TurnName, turnNamed, turnQuarters } from '../../cube/turns.ts'
import type { HoldMark } from '../../method/way/hold-mark.ts'
import { writeStep } from '../../method/way/lesson-steps.ts'
import { adviceAt, type GoodChoice, goodChoicesAt } from '../advice.ts'
import { heldMark } from '../held-mark.ts'
import type { NoteDetails } from '../note.ts'
import type { Segment, SequenceDone } from '../segment.ts'
import { isMending, type TurnTrack } from '../turn-track.ts'
import { aboutSegment, type Explained, type Finder } from './finding.ts'
import { bringsHome } from './long-way.ts'

/** How much is otherwise: the smaller the sum, the likelier that this choice was meant. */
const OTHER = { hold: 2, top: 2.2, hand: 2, times: 2, notLessons: 1 }

/** What differs from a choice that leads on. */
type Likeness = {
  readonly good: GoodChoice
  readonly isHoldOther: boolean
  readonly isTopOther: boolean
  readonly isMirrored: boolean
  readonly isMore: boolean
  readonly sum: number
}

/** A sequence, done as the book has it, after which the lesson has no less to do. */
export const wrongStep: Finder = (explained, index) => {
  const { track, segments } = explained
  const segment = segments[index]
  if (segment.kind !== 'sequence' || segment.leadsOn) return null
  if (isUnseenBreak(explained, segment.from, segment.done)) return null
  // Nothing about it was wrong; `long-way.ts` says that it took long.
  if (bringsHome(track, segment)) return null
  const again = onceMore(explained, index, segment.done)
  if (again !== null) return aboutSegment(segment, again)
  const [nearest] = goodChoicesAt(track, segment.from)
    .flatMap((good) => likeness(track, segment.done, good) ?? [])
    .sort((a, b) => a.sum - b.sum)
  const details = nearest === undefined ? wrongSequence(track, segment) : detailsFor(track, segment, nearest)
  return aboutSegment(segment, details)
}

/** Whoever does not see that a layer broke goes on with later stages; that it broke was said already. */
function isUnseenBreak({ track }: Explained, from: number, { pattern }: SequenceDone): boolean {
  const { stage } = track.standings[from]
  return stage !== null && stage < pattern.stage && isMending(track, from)
}

/** The same sequence as just before, which had finished its stage. */
function onceMore({ track, segments }: Explained, index: number, done: SequenceDone): NoteDetails | null {
  const before = segments[index - 1]
  if (before?.kind !== 'sequence' || !before.leadsOn || done.topQuarters !== 0) return null
  const isSame = isSameTurns(before.done.pattern.turns, done.pattern.turns)
  const isFinished = track.standings[before.from].stage !== track.standings[before.to].stage
  if (!isSame || !isFinished || before.to !== done.beginsAt) return null
  const side = sideOf(done)
  return { key: 'coach/too-often', side, nDone: before.done.nTimes + done.nTimes, nAdvised: before.done.nTimes }
}

function likeness(track: TurnTrack, done: SequenceDone, good: GoodChoice): Likeness | null {
  const isSame = isSameTurns(done.pattern.turns, good.turns)
  const isMirrored = !isSame && isSameTurns(mirrorTurns(done.pattern.turns), good.turns)
  if (!isSame && !isMirrored) return null
  const isHoldOther = holdAt(track, done) !== good.hold
  const isTopOther = done.topQuarters !== good.topQuarters
  const sum =
    Number(isHoldOther) * OTHER.hold +
    Number(isTopOther) * OTHER.top +
    Number(isMirrored) * OTHER.hand +
    Number(done.nTimes !== good.nTimes) * OTHER.times +
    Number(!good.isLessons) * OTHER.notLessons
  return { good, isHoldOther, isTopOther, isMirrored, isMore: done.nTimes > good.nTimes, sum }
}

type SequenceSegment = Extract<Segment, { kind: 'sequence' }>

function detailsFor(track: TurnTrack, segment: SequenceSegment, nearest: Likeness): NoteDetails {
  const { done } = segment
  const { good, isHoldOther, isTopOther, isMirrored, isMore } = nearest
  const side = sideOf(done)
  if (isMirrored) {
    if (isHoldOther || isTopOther || side === null) return wrongSequence(track, segment)
    return { key: 'coach/wrong-trigger', side }
  }
  if (isHoldOther) {
    const advised: HoldMark = good.isLessons ? adviceAt(track, segment.from).hold.mark : { key: 'hold/any' }
    return { key: 'coach/wrong-hold', held: heldMark(track, segment.from, done), advised }
  }
  if (isTopOther) return { key: 'coach/wrong-top-turn', advised: topTurnOf(good.topQuarters) }
  return isMore
    ? { key: 'coach/too-often', side, nDone: done.nTimes, nAdvised: good.nTimes }
    : wrongSequence(track, segment)
}

function wrongSequence(track: TurnTrack, { from, done }: SequenceSegment): NoteDetails {
  const advised = writeStep(adviceAt(track, from), track.book).do
  return { key: 'coach/wrong-sequence', ofStage: done.pattern.stage, advised }
}

/** The side of a sequence that is nothing but a trigger, else null. */
export function sideOf({ pattern }: SequenceDone) {
  const [block] = pattern.blocks
  return block !== undefined && pattern.tokens.length === 4 * pattern.nTimes ? block.side : null
}

const TOP_TURNS: readonly TurnName[] = ['U', 'U2', "U'"]

function topTurnOf(quarters: number): Turn | null {
  return TOP_TURNS.map(turnNamed).find((turn) => turn !== undefined && turnQuarters(turn) === quarters) ?? null
}

function holdAt(track: TurnTrack, { beginsAt }: SequenceDone) {
  return holdOf(track.standings[beginsAt].position)
}

function isSameTurns(a: readonly Turn[], b: readonly Turn[]): boolean {
  return a.length === b.length && a.every((turn, index) => turn === b[index])
}
