/**
 * A round: one start, one goal, one clock, and what each student has made of it.
 * Values are never changed in place; every event gives a new round that shares what stayed the same.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import type { Turn } from '../cube/turns.ts'
import { firstStageToDo } from '../method/goals.ts'
import { STAGES, type Stage } from '../method/stages.ts'
import type { HintLevel } from '../method/way/hint-level.ts'
import type { RoundId, SeatId } from './ids.ts'
import type { GivenNudge } from './nudges.ts'
import type { RoundClock } from './round-clock.ts'
import type { RoundSettings } from './round-settings.ts'
import type { Step } from './steps.ts'

/** The goal was reached: with how many turns (outer block turn metric) and after how many played milliseconds. */
export type Reached = { readonly turns: number; readonly momentMs: number }

/** A hint that was asked for, and how many turns stood by then. */
export type GivenHint = { readonly level: HintLevel; readonly afterTurns: number }

/** How turns came to the server, where it was not one by one as they were made. */
export type HowSent = {
  /** Some were kept on the device while there was no connection: their moments are those of their coming in. */
  readonly kept: boolean
  /** Written down from a real cube and sent at once. */
  readonly written: boolean
}

/** One go at a round. */
export type Try = {
  /** 1 for the first try. */
  readonly number: number
  /** Everything that was sent, in order; `steps.length` is the number that the next message counts from. */
  readonly steps: readonly Step[]
  /** The turns that stand, take-backs carried out. */
  readonly standing: readonly Turn[]
  /** Counted turns (outer block turn metric) of `standing`, and what the hints cost. */
  readonly turns: number
  readonly position: CubePosition
  readonly reached: Reached | null
  readonly hints: readonly GivenHint[]
  readonly how: HowSent
  /** The furthest that this try stood, 0 to 4 for each stage of the round; see stageProgress. */
  readonly progress: number
  /** The furthest stage whose goal this try has met, those before the round included. */
  readonly highest: Stage | 0
  /** That goal is not met now, and this many steps stood before it broke; null while it is whole. */
  readonly brokeAfter: number | null
}

/**
 * What is kept of a try once the next one has begun: enough to answer its steps again, should they be sent once more, and
 * how many hints it had, for what they told helps in every later try.
 */
export type PastTry = { readonly nSteps: number; readonly nHints: number; readonly reached: Reached | null }

/** A try that reached the goal, with what a review needs of it. */
export type BestTry = Reached &
  Pick<Try, 'standing' | 'hints' | 'how'> & {
    readonly tryNumber: number
  }

/** Turns that were made without a connection and came in after the end: judged, shown and marked, and never ranked. */
export type HandedIn = Pick<Try, 'number' | 'steps' | 'standing' | 'turns' | 'reached' | 'progress' | 'hints'>

/** What one student has made of a round; there is none before the first message of turns. */
export type Player = {
  readonly seatId: SeatId
  /** Came in after the signal; the clock was not kept back. */
  readonly late: boolean
  readonly current: Try
  /** The tries before the current one, try 1 first. */
  readonly triesBefore: readonly PastTry[]
  readonly best: BestTry | null
  /** The furthest the student ever stood, 0 to 4 for each stage of the round; see stageProgress. */
  readonly bestProgress: number
  /** When the last steps came in, by the server's clock. */
  readonly lastStepAtMs: number | null
  /** Played milliseconds at which the last steps came in, */
  readonly lastStepMomentMs: number
  /** at which the try under way last came further than before, */
  readonly lastGainMomentMs: number
  /** and at which an earlier layer broke; null while all of them are whole. */
  readonly brokeMomentMs: number | null
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
  /** In the order of their first message of turns; see players.ts. */
  readonly players: readonly Player[]
  /** What the teacher has sent to each student in this round, the first one first. */
  readonly nudges: ReadonlyMap<SeatId, readonly GivenNudge[]>
  /** What came in after the end, the best of each student. */
  readonly handedIn: ReadonlyMap<SeatId, HandedIn>
}

/** @returns the round as it is dealt: nobody has turned, and the signal has not been given */
export function aNewRound(parts: { id: RoundId; number: number; settings: RoundSettings; start: CubePosition }): Round {
  return {
    ...parts,
    clock: { phase: 'ready' },
    signalAtMs: null,
    players: [],
    nudges: new Map(),
    handedIn: new Map(),
  }
}

/** @param start of the round @param number 1 for the first try @returns a try that nobody has turned in yet */
export function anEmptyTry(start: CubePosition, number: number): Try {
  return {
    number,
    steps: [],
    standing: [],
    turns: 0,
    position: start,
    reached: null,
    hints: [],
    how: { kept: false, written: false },
    progress: 0,
    highest: stagesMet(start),
    brokeAfter: null,
  }
}

/** How many stages are done, from the first one on and without a gap. */
function stagesMet(position: CubePosition): Stage | 0 {
  return ((firstStageToDo(position, STAGES[STAGES.length - 1]) ?? STAGES.length + 1) - 1) as Stage | 0
}
