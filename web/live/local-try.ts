/**
 * A student's tries as this page holds them: what the server has on record, and what it has yet to hear of. Pure.
 *
 * Steps are kept until the server holds them, so a message may be lost, doubled or late and nothing goes missing. The
 * server's word always wins: where the two differ, the page takes what the server holds.
 */

import { TRIES_MAX } from '../../engine/contest/limits.ts'
import type { Reached } from '../../engine/contest/round-state.ts'
import { type Step, stepOf, TAKE_BACK } from '../../engine/contest/steps.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../engine/cube/cube-position.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { goalMet } from '../../engine/method/goals.ts'
import type { Stage } from '../../engine/method/stages.ts'
import type { TryView } from '../../engine/wire/views.ts'

/** One try with all its steps; the first `nHeld` are on the server's record. */
export type HeldTry = {
  readonly number: number
  readonly steps: readonly Step[]
  readonly nHeld: number
  readonly isOpen: boolean
}

/** The try under way is the last one; those before it stay only while the server lacks some of their steps. */
export type Outbox = { readonly roundId: string; readonly tries: readonly HeldTry[] }

/** What the bench shows of the try under way. */
export type LocalTry = {
  readonly number: number
  readonly steps: readonly Step[]
  readonly standing: readonly Turn[]
  /** Counted turns (outer block turn metric). */
  readonly turns: number
  readonly position: CubePosition
  /** The server has said so. */
  readonly reached: Reached | null
  /** Our own guess, ahead of the server. */
  readonly reachedHere: boolean
  /** Steps that the server has not acknowledged. */
  readonly nWaiting: number
}

export function anEmptyOutbox(roundId: string): Outbox {
  return { roundId, tries: [{ number: 1, steps: [], nHeld: 0, isOpen: true }] }
}

/** @returns what the server holds, together with what this page still has for it (`kept`, from before a reload or a lost connection) */
export function outboxFromView(roundId: string, mine: TryView | null, kept: Outbox | null): Outbox {
  const number = mine?.number ?? 1
  const steps = (mine?.steps ?? []).map(stepOf)
  const held: HeldTry = { number, steps, nHeld: steps.length, isOpen: true }
  if (kept === null || kept.roundId !== roundId) return { roundId, tries: [held] }
  const own = kept.tries.find((each) => each.number === number)
  const later = kept.tries.filter((each) => each.number > number)
  if (own === undefined || !startsWith(own.steps, steps)) {
    // Another tab went on, or the server never heard of that try: only a next try that is wholly ours may follow.
    return { roundId, tries: own === undefined && later[0]?.number === number + 1 ? [held, ...later] : [held] }
  }
  return { roundId, tries: [{ ...held, steps: own.steps }, ...later] }
}

export function withSteps(outbox: Outbox, steps: readonly Step[]): Outbox {
  const last = currentTry(outbox)
  return { ...outbox, tries: [...outbox.tries.slice(0, -1), { ...last, steps: [...last.steps, ...steps] }] }
}

/** Opens the next try; null when a round has no more. */
export function withNextTry(outbox: Outbox): Outbox | null {
  const number = currentTry(outbox).number + 1
  if (number > TRIES_MAX) return null
  return { ...outbox, tries: [...outbox.tries.filter(hasNews), { number, steps: [], nHeld: 0, isOpen: false }] }
}

/** The next message: the steps that the server lacks of the earliest try, or null when it has everything. */
export function nextMessage(
  outbox: Outbox,
  nStepsMax: number,
): { tryNumber: number; from: number; steps: readonly Step[] } | null {
  for (const each of outbox.tries) {
    if (hasNews(each))
      return { tryNumber: each.number, from: each.nHeld, steps: each.steps.slice(each.nHeld, each.nHeld + nStepsMax) }
  }
  return null
}

/** What the server said of a try. When it holds less than was thought, the rest is simply sent again. */
export function afterAnswer(outbox: Outbox, answer: TurnsAnswer): Outbox {
  const tries = outbox.tries.map((each): HeldTry => {
    if (each.number !== answer.tryNumber) return each
    // After the goal the server takes nothing more of this try.
    const steps = answer.reached === null ? each.steps : each.steps.slice(0, answer.held)
    return { ...each, steps, nHeld: Math.min(answer.held, steps.length), isOpen: true }
  })
  const current = tries[tries.length - 1]
  return { ...outbox, tries: tries.filter((each) => each === current || hasNews(each)) }
}

/** Gives up whatever the server does not hold. */
export function withoutNews(outbox: Outbox): Outbox {
  const last = currentTry(outbox)
  return { ...outbox, tries: [{ ...last, steps: last.steps.slice(0, last.nHeld) }] }
}

export function currentTry(outbox: Outbox): HeldTry {
  return outbox.tries[outbox.tries.length - 1]
}

export function showTry(outbox: Outbox, start: CubePosition, to: Stage, reached: Reached | null): LocalTry {
  const { number, steps, nHeld } = currentTry(outbox)
  const standing = standingTurns(steps)
  const position = copyCube(start)
  for (const turn of standing) applyTurn(position, turn)
  return {
    number,
    steps,
    standing,
    turns: countOuterBlockTurns(standing),
    position,
    reached,
    reachedHere: steps.length > 0 && goalMet(position, to),
    nWaiting: steps.length - nHeld,
  }
}

function standingTurns(steps: readonly Step[]): Turn[] {
  const standing: Turn[] = []
  for (const step of steps) {
    if (step === TAKE_BACK) standing.pop()
    else standing.push(step)
  }
  return standing
}

function hasNews(each: HeldTry): boolean {
  return each.nHeld < each.steps.length || !each.isOpen
}

function startsWith(steps: readonly Step[], first: readonly Step[]): boolean {
  return first.length <= steps.length && first.every((step, index) => steps[index] === step)
}
