/**
 * What a sequence book is: for each of the seven stages the sequences that a teacher teaches there, as written and as
 * turns. The texts of the books stand in `book/`, with the grammar that reads them and the checker that proves them.
 * Source of the two triggers: common practice of the trade. What they do is checked in `tests/published/`.
 */

import { mirrorTurns } from '../cube/mirror-turns.ts'
import { type Turn, turnOf } from '../cube/turns.ts'
import type { Stage } from './stages.ts'

/** One word of a written sequence: a turn, a part by its name, or a bracket; the last two with a power, 1 or more. */
export type WrittenItem =
  | { readonly kind: 'turn'; readonly turn: Turn }
  | { readonly kind: 'part'; readonly name: string; readonly power: number }
  | { readonly kind: 'group'; readonly items: readonly WrittenItem[]; readonly power: number }

/** A sequence in the book's own spelling and written out as turns, as the solver sees the cube at that moment. */
export type BookSequence = { readonly written: readonly WrittenItem[]; readonly turns: readonly Turn[] }

/** A sequence with a name, so that others can be built from it. */
export type BookPart = BookSequence & { readonly name: string }

/** The sequences of a lesson. A part uses only parts that stand before it. A stage without sequences has an empty list. */
export type SequenceBook = {
  readonly title: string
  readonly parts: readonly BookPart[]
  readonly stages: Readonly<Record<Stage, readonly BookSequence[]>>
}

/**
 * U R U' R'. Order 6, so that five of them undo one. Undone, it reads R U R' U': the same trigger run backwards, which
 * cannot stand in for it, since it does not keep the middle layer in the sequence of stage 7.
 */
export const RIGHT_TRIGGER: readonly Turn[] = (['U', 'R', "U'", "R'"] as const).map(turnOf)

/** U' L' U L. */
export const LEFT_TRIGGER: readonly Turn[] = mirrorTurns(RIGHT_TRIGGER)
