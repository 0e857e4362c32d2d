/**
 * A round: one start, one goal, one clock, and what each student has made of it.
 * Values are never changed in place; every event gives a new round that shares what stayed the same.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import type { Turn } from '../cube/turns.ts'
import type { RoundId, SeatId } from './ids.ts'
import type { RoundClock } from './round-clock.ts'
import type { RoundSettings } from './round-settings.ts'
import type { Step } from './steps.ts'

/** The goal was reached: with how many turns (outer block turn metric) and after how many played milliseconds. */
export type Reached = { readonly turns: number; readonly momentMs: number }

/** One go at a round. */
export type Try = {
  /** 1 for the first try. */
  readonly number: number
  /** Everything that was sent, in order; `steps.length` is the number that the next message counts from. */
  readonly steps: readonly Step[]
  /** The turns that stand, take-backs carried out. */
  readonly standing: readonly Turn[]
  /** Counted turns (outer block turn metric) of `standing`. */
  readonly turns: number
  readonly position: CubePosition
  readonly reached: Reached | null
}

/** What is kept of a try once the next one has begun: enough to answer its steps again, should they be sent once more. */
export type PastTry = { readonly nSteps: number; readonly reached: Reached | null }

/** What one student has made of a round; there is none before the first message of turns. */
export type Player = {
  readonly seatId: SeatId
  /** Came in after the signal; the clock was not kept back. */
  readonly late: boolean
  readonly current: Try
  /** The tries before the current one, try 1 first. */
  readonly triesBefore: readonly PastTry[]
  readonly best: (Reached & { readonly tryNumber: number }) | null
  /** The furthest the student ever stood, 0 to 4 for each stage of the round; see stageProgress. */
  readonly bestProgress: number
  /** When the last steps came in, by the server's clock. */
  readonly lastStepAtMs: number | null
}

/** A round with all its players. */
export type Round = {
  readonly id: RoundId
  /** 1 for the first round of the room. */
  readonly number: number
  readonly settings: RoundSettings
  readonly start: CubePosition
  readonly clock: RoundClock
  /** The moment at which the signal fell, which no later pause moves; null before the teacher's press. Who joined later is late. */
  readonly signalAtMs: number | null
  readonly players: ReadonlyMap<SeatId, Player>
}

/** @returns the round as it is dealt: nobody has turned, and the signal has not been given */
export function aNewRound(parts: { id: RoundId; number: number; settings: RoundSettings; start: CubePosition }): Round {
  return { ...parts, clock: { phase: 'ready' }, signalAtMs: null, players: new Map() }
}

/** @param start of the round @param number 1 for the first try @returns a try that nobody has turned in yet */
export function anEmptyTry(start: CubePosition, number: number): Try {
  return { number, steps: [], standing: [], turns: 0, position: start, reached: null }
}
