/**
 * A student's tries as this page holds them: what the server has on record, and what it has yet to hear of. Pure.
 *
 * Steps are kept until the server holds them, so a message may be lost, doubled or late and nothing goes missing. The
 * server's word always wins: where the two differ, the page takes what the server holds.
 */

import type { RoundId } from '../../engine/contest/ids.ts'
import { TRIES_MAX } from '../../engine/contest/limits.ts'
import { playTry } from '../../engine/contest/play-try.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { anEmptyTry, type Reached, type Try } from '../../engine/contest/round-state.ts'
import { type Step, stepOf } from '../../engine/contest/steps.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import type { TryView } from '../../engine/wire/views.ts'

/** One try with all its steps; the first `nHeld` are on the server's record. */
export type HeldTry = {
  readonly number: number
  readonly steps: readonly Step[]
  readonly nHeld: number
  /** Whether the server knows of this try; one without a step has to be opened too. */
  readonly isOpen: boolean
  /** Some of its steps were made while there was no connection. */
  readonly kept: boolean
  /** Written down from a real cube. */
  readonly written: boolean
}

/**
 * The try under way is the last one. Before it stand those of which the server lacks something, and the last one that
 * the server has opened, to which everything can fall back.
 */
export type Outbox = { readonly roundId: RoundId; readonly tries: readonly HeldTry[] }

/** What the bench shows of the try under way. `reached` is what the server has said. */
export type LocalTry = Try & {
  /** Our own guess, ahead of the server. */
  readonly reachedHere: boolean
  /** Steps that the server has not acknowledged. */
  readonly nWaiting: number
}

/** The next message: steps of one try. */
export type TurnsMessage = {
  readonly tryNumber: number
  readonly from: number
  readonly steps: readonly Step[]
  readonly kept: boolean
  readonly written: boolean
}

/** @returns what the server holds, together with what this page still has for it (`kept`, from before a reload or a lost connection) */
export function outboxFromView(roundId: RoundId, mine: TryView | null, kept: Outbox | null): Outbox {
  const number = mine?.number ?? 1
  const steps = (mine?.steps ?? []).map(stepOf)
  const held: HeldTry = { number, steps, nHeld: steps.length, isOpen: true, kept: false, written: false }
  if (kept === null || kept.roundId !== roundId) return { roundId, tries: [held] }
  const own = kept.tries.find((each) => each.number === number)
  const later = kept.tries.filter((each) => each.number > number)
  if (own === undefined || !startsWith(own.steps, steps)) {
    // Another tab went on, or the server never heard of that try: only a next try that is wholly ours may follow.
    return { roundId, tries: own === undefined && later[0]?.number === number + 1 ? [held, ...later] : [held] }
  }
  // Behind the goal the server takes nothing more of a try.
  const isOver = mine !== null && mine.reached !== null
  const { steps: ownSteps, kept: isKept, written } = own
  return { roundId, tries: [isOver ? held : { ...held, steps: ownSteps, kept: isKept, written }, ...later] }
}

/** How steps are made, where it is not one by one and at once; see HowSent. */
export type HowMade = Pick<HeldTry, 'kept' | 'written'>

export function withSteps(
  outbox: Outbox,
  steps: readonly Step[],
  how: HowMade = { kept: false, written: false },
): Outbox {
  const last = currentTry(outbox)
  const kept = last.kept || how.kept
  const written = last.written || how.written
  return {
    ...outbox,
    tries: [...outbox.tries.slice(0, -1), { ...last, steps: [...last.steps, ...steps], kept, written }],
  }
}

/** Opens the next try; null when a round has no more. */
export function withNextTry(outbox: Outbox): Outbox | null {
  const number = currentTry(outbox).number + 1
  if (number > TRIES_MAX) return null
  const next: HeldTry = { number, steps: [], nHeld: 0, isOpen: false, kept: false, written: false }
  return withoutDone({ ...outbox, tries: [...outbox.tries, next] })
}

/** The next message: the steps that the server lacks of the earliest try, or null when it has everything. */
export function nextMessage(outbox: Outbox, nStepsMax: number): TurnsMessage | null {
  const lacking = outbox.tries.find(hasNews)
  if (lacking === undefined) return null
  const { number, nHeld, steps, kept, written } = lacking
  return { tryNumber: number, from: nHeld, steps: steps.slice(nHeld, nHeld + nStepsMax), kept, written }
}

/**
 * The longest try that was played without a connection and of which the server lacks something: it can still be handed in
 * after the end. Null when there is none.
 */
export function tryToHandIn(outbox: Outbox): HeldTry | null {
  const lacking = outbox.tries.filter((each) => each.kept && each.nHeld < each.steps.length)
  return lacking.reduce<HeldTry | null>(
    (longest, each) => (longest === null || longest.steps.length <= each.steps.length ? each : longest),
    null,
  )
}

/** What the server said of a try. When it holds less than was thought, the rest is simply sent again. */
export function afterAnswer(outbox: Outbox, answer: TurnsAnswer): Outbox {
  const tries = outbox.tries.map((each): HeldTry => {
    if (each.number !== answer.tryNumber) return each
    const steps = answer.reached === null ? each.steps : each.steps.slice(0, answer.held)
    return { ...each, steps, nHeld: Math.min(answer.held, steps.length), isOpen: true }
  })
  return withoutDone({ ...outbox, tries })
}

/** The server lacks steps of this try that we thought it held: they are sent again from number `held` on. */
export function afterGap(outbox: Outbox, tryNumber: number, held: number): Outbox {
  const tries = outbox.tries.map((each) =>
    each.number === tryNumber ? { ...each, nHeld: Math.min(each.nHeld, held) } : each,
  )
  return { ...outbox, tries }
}

/** Gives up whatever the server does not hold: its steps, and tries that it has not opened. */
export function withoutNews(outbox: Outbox): Outbox {
  const last = outbox.tries[lastOpen(outbox.tries)]
  return { ...outbox, tries: [{ ...last, steps: last.steps.slice(0, last.nHeld) }] }
}

export function currentTry(outbox: Outbox): HeldTry {
  return outbox.tries[outbox.tries.length - 1]
}

/**
 * Plays the try under way by the rules of the round, as the server will: it ends with the step that reaches the goal.
 *
 * @param reached what the server has said of this try
 */
export function showTry(
  outbox: Outbox,
  start: CubePosition,
  settings: RoundSettings,
  reached: Reached | null,
): LocalTry {
  const { number, steps, nHeld } = currentTry(outbox)
  const empty = anEmptyTry(start, number)
  const played = playTry(empty, steps, settings, 0)
  // What the rules refuse is not shown: the server refuses it as well, and then tells what it holds.
  const shown = played.ok ? played.value : empty
  return { ...shown, reached, reachedHere: shown.reached !== null, nWaiting: steps.length - nHeld }
}

function withoutDone({ roundId, tries }: Outbox): Outbox {
  const fallBack = lastOpen(tries)
  const current = tries.length - 1
  return { roundId, tries: tries.filter((each, index) => index === current || index === fallBack || hasNews(each)) }
}

function lastOpen(tries: readonly HeldTry[]): number {
  return tries.map((each) => each.isOpen).lastIndexOf(true)
}

function hasNews(each: HeldTry): boolean {
  return each.nHeld < each.steps.length || !each.isOpen
}

function startsWith(steps: readonly Step[], first: readonly Step[]): boolean {
  return first.length <= steps.length && first.every((step, index) => steps[index] === step)
}
