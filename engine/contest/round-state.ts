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

export type Player = {
  readonly seatId: SeatId
  /** Came in after the signal; the clock was not kept back. */
  readonly late: boolean
  readonly current: Try
  /** Lengths in steps of the tries before the current one, so that turns sent again get the same answer. */
  readonly heldBefore: readonly number[]
  readonly best: (Reached & { readonly tryNumber: number }) | null
  /** The furthest the student ever stood, 0 to 4 for each stage of the round; see stageProgress. */
  readonly bestProgress: number
  readonly lastStepAtMs: number | null
}

export type Round = {
  readonly id: RoundId
  /** 1 for the first round of the room. */
  readonly number: number
  readonly settings: RoundSettings
  readonly start: CubePosition
  readonly clock: RoundClock
  readonly players: ReadonlyMap<SeatId, Player>
}

export function aNewRound(parts: { id: RoundId; number: number; settings: RoundSettings; start: CubePosition }): Round {
  return { ...parts, clock: { phase: 'ready' }, players: new Map() }
}

/** A try that nobody has turned in yet. */
export function anEmptyTry(round: Round, number: number): Try {
  return { number, steps: [], standing: [], turns: 0, position: round.start, reached: null }
}
