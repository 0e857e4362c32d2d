/**
 * What the coach says about a solution, as data: one note for one thing that went otherwise than it could have. The keys
 * are a closed list; only `web/locales/` turns them into sentences. Everything is plain data that can be sent and stored.
 *
 * A note is about a mistake that was seen, never about a way that is merely longer than the shortest: the lesson's own way
 * has none.
 */

import type { Turn } from '../cube/turns.ts'
import type { StageCaseId } from '../method/piece-cases.ts'
import type { Stage } from '../method/stages.ts'
import type { HoldMark } from '../method/way/hold-mark.ts'
import type { LookedForPiece } from '../method/way/lesson-step.ts'

/** Which of the two triggers of the lesson. */
export type TriggerSide = 'right' | 'left'

/** A single turn of a sequence that went otherwise, where more than one did. */
export type SlippedTurn = {
  /** Another turn came instead, it was left out, or it came twice. */
  readonly kind: 'instead' | 'leftOut' | 'twice'
  /** As it was made; null when it was left out. */
  readonly turn: Turn | null
  /** As the book has it. */
  readonly shouldBe: Turn
  /** Index of the turn that was made, or of the one in front of which one is missing; re-holds count as entries of the row. */
  readonly atTurn: number
}

/** What every note says. */
export type NoteFacts = {
  /** The stage that was under way. */
  readonly stage: Stage
  /** Index of the first turn that the note is about; re-holds count as entries of the row. */
  readonly fromTurn: number
  /** One behind the last. */
  readonly toTurn: number
  /**
   * Counted turns by which the mistake made the way longer: those that were made until the earlier stages stood again,
   * plus what the lesson takes from there, less what it took before. 0 for re-holds, which are free. Of a try that reached
   * its goal those of all notes together are no more than its turns less par; where they would be they are lessened alike, to
   * 0 at worst: what a mistake lost was won back by a way that is shorter than the lesson's.
   */
  readonly costTurns: number
  /** Is it the last thing that was done, and not made good yet? */
  readonly isOpen: boolean
  /** The case that stood there when it began; null between two stages. */
  readonly caseId: StageCaseId | null
  /** At stages 1 to 3 the piece that the case is about, in the hold at the beginning of the episode. */
  readonly piece: LookedForPiece | null
  /** The case that stood afterwards at the same stage, at stages 4 to 7; null when it is done, or an earlier stage broke. */
  readonly becomes: StageCaseId | null
  /** The first earlier stage that was broken afterwards, or the stage itself when a piece left its home; else null. */
  readonly broken: Stage | null
  /** The sequence of the book that was done or meant, as the book writes it: `F A F'`, `A^3`; null when there is none. */
  readonly sequence: string | null
  /** The stage of the book in whose list that sequence stands; null when there is none. */
  readonly sequenceStage: Stage | null
}

/** What the notes of one kind say besides. */
export type NoteDetails =
  /** A turn was undone at once: `U U'`, `R R R R`. */
  | { readonly key: 'coach/undone'; readonly turn: Turn; readonly nTurns: number }
  /** Several turns of one layer for one: `U U` for `U2`. */
  | { readonly key: 'coach/two-for-one'; readonly nTurns: number; readonly better: Turn }
  /** The last turns of a trigger or of a sequence are missing. `side` null: what is unfinished is not a trigger. */
  | {
      readonly key: 'coach/unfinished'
      readonly side: TriggerSide | null
      /** Which trigger of this side within the sequence, from 1. */
      readonly nth: number
      readonly missing: readonly Turn[]
    }
  /** The mirror image of the right trigger was done; `side` is the one that was done. */
  | { readonly key: 'coach/wrong-trigger'; readonly side: TriggerSide }
  /**
   * The right sequence, the cube held another way. `advised` is `hold/any` when the hold that was meant is not the lesson's
   * own for its next step, so that nothing is advised that belongs to another piece.
   */
  | { readonly key: 'coach/wrong-hold'; readonly held: HoldMark; readonly advised: HoldMark }
  /** The right sequence, but the top layer was brought to another place before it. */
  | { readonly key: 'coach/wrong-top-turn'; readonly advised: Turn | null }
  /** The sequence of another case or of another stage. */
  | {
      readonly key: 'coach/wrong-sequence'
      /** The stage whose sequence it was. */
      readonly ofStage: Stage
      /** What the lesson does here, as the book writes it. */
      readonly advised: string
    }
  /** A sequence or a trigger in it was repeated once too often. */
  | {
      readonly key: 'coach/too-often'
      readonly side: TriggerSide | null
      readonly nDone: number
      readonly nAdvised: number
    }
  /** It was repeated too seldom, and something else was begun. */
  | {
      readonly key: 'coach/too-seldom'
      readonly side: TriggerSide | null
      readonly nDone: number
      readonly nAdvised: number
    }
  /** A turn that belongs to no sequence broke what was done; it was mended later. */
  | { readonly key: 'coach/layer-broken'; readonly turn: Turn }
  /** The same, and it was never mended. */
  | { readonly key: 'coach/layer-left-broken'; readonly turn: Turn }
  /** Inside a sequence a layer was turned the other way round. */
  | { readonly key: 'coach/wrong-way'; readonly turn: Turn; readonly shouldBe: Turn }
  /** Inside a sequence a turn is missing. */
  | { readonly key: 'coach/turn-left-out'; readonly shouldBe: Turn }
  /** Inside a sequence another layer was turned. */
  | { readonly key: 'coach/wrong-layer'; readonly turn: Turn; readonly shouldBe: Turn }
  /** Inside a sequence half a turn for a quarter, or a quarter for half a turn. */
  | { readonly key: 'coach/wrong-amount'; readonly turn: Turn; readonly shouldBe: Turn }
  /** Two single turns of one sequence went otherwise; all others are as in the book. */
  | { readonly key: 'coach/two-slips'; readonly slips: readonly [SlippedTurn, SlippedTurn] }
  /** The re-hold inside a sequence is missing, or is another one. */
  | { readonly key: 'coach/re-hold-left-out'; readonly shouldBe: Turn }
  /** A turn of the top layer that the case did not need. */
  | { readonly key: 'coach/needless-top-turn'; readonly turn: Turn }
  /** Re-holds that lead back to the same hold. */
  | { readonly key: 'coach/needless-re-hold'; readonly nReHolds: number }
  /** The puzzle came back to where it had been. */
  | { readonly key: 'coach/led-nowhere'; readonly nTurns: number }
  /** A way that leads on and is longer than the lesson's: one's own, or by another sequence of the book. */
  | { readonly key: 'coach/long-way'; readonly nTurns: number; readonly nLessonTurns: number }

/** A note. */
export type Note = NoteFacts & NoteDetails

/** The closed list of keys. Every language has a sentence for each. */
export type NoteKey = Note['key']
