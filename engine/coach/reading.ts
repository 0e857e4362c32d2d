/** What reading a solution gives: episodes, moments, notes and totals. Plain data that can be sent and stored. */

import type { Hold } from '../cube/hold.ts'
import type { StageCaseId } from '../method/piece-cases.ts'
import type { Stage } from '../method/stages.ts'
import type { LessonStep, LookedForPiece } from '../method/way/lesson-step.ts'
import type { Note } from './note.ts'

/** A sequence of the book that was recognised in the turns. */
export type DoneSequence = {
  /** The stage of the book in whose list it stands. */
  readonly stage: Stage
  /** Place in that list. */
  readonly sequenceIndex: number
  /** How often in a row. */
  readonly nTimes: number
  /** How the cube was held when it began. */
  readonly hold: Hold
  /** Was it done as the book has it, without a slip? */
  readonly isExact: boolean
}

/**
 * What was done from one sound moment of the puzzle to the next: from case to case while the earlier stages stand, or at
 * stages 1 to 3 until the pieces that were home are home again and one more thing has been done.
 */
export type Episode = {
  /** Index of the first turn; re-holds count as entries of the row. */
  readonly fromTurn: number
  /** One behind the last. */
  readonly toTurn: number
  readonly stage: Stage
  /** Is that a stage before the first one of the span? */
  readonly isRepair: boolean
  readonly caseId: StageCaseId | null
  readonly piece: LookedForPiece | null
  /** The sequences that were recognised, in order; often one. */
  readonly done: readonly DoneSequence[]
  /** What the book advises there. */
  readonly advised: LessonStep
  /** Counted turns (outer block turn metric). */
  readonly nTurns: number
  /** Par of the stage alone before and after; null without tables of par, and where the earlier stages do not stand. */
  readonly parBefore: number | null
  readonly parAfter: number | null
  /** nTurns - (parBefore - parAfter); null where par is not known. */
  readonly overPar: number | null
  /** Counted turns that the notes of this episode cost, 0..nTurns. */
  readonly nWasted: number
  /** Is it the last one, and do the earlier stages not stand at its end? */
  readonly isOpen: boolean
}

/**
 * A moment of the puzzle, by which ribbons are aligned: two solutions are at the same moment when `key` is the same.
 */
export type Moment = {
  /** `4/dot`, `2/3` (three pieces of stage 2 are home), `7/solved`. */
  readonly key: string
  /** So many turns had been made; re-holds count as entries of the row. */
  readonly turnIndex: number
  readonly stage: Stage
  /** At stages 4 to 7; else null. */
  readonly caseId: StageCaseId | null
  /** Pieces of the stage that are home, 0..4. */
  readonly nPartsDone: number
}

/** What the coach has read. */
export type Reading = {
  /** Is the goal of the span reached? What comes after that is not read. */
  readonly isReached: boolean
  /** Entries of the row that were read: up to the goal, or all. */
  readonly nRead: number
  /** Counted turns of these. */
  readonly nTurns: number
  /** Sum over the episodes; null without tables of par, or while an episode is open. */
  readonly overPar: number | null
  readonly episodes: readonly Episode[]
  /** In order of turns; the first is the start. */
  readonly moments: readonly Moment[]
  /** The dearest first; equal ones in order of turns. */
  readonly notes: readonly Note[]
}
