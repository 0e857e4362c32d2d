/**
 * The sequences that a lesson teaches for the last layer. All of the lesson's own are built from two four-turn triggers,
 * each the mirror of the other in the plane between left and right.
 * Source: common practice of the trade. What each sequence does is checked in `tests/published/`.
 */

import { mirrorTurns } from '../cube/mirror-turns.ts'
import { type Turn, type TurnName, turnOf } from '../cube/turns.ts'
import type { LastLayerStage } from './cases.ts'

/** For each stage of the last layer the sequences that may be used there, as they are done from the right hold. */
export type SequenceBook = Readonly<Record<LastLayerStage, ReadonlyArray<readonly Turn[]>>>

/**
 * U R U' R'. Order 6, so that five of them undo one. Undone, it reads R U R' U': the same trigger run backwards, which
 * cannot stand in for it, since it does not keep the middle layer in the sequence of stage 7.
 */
export const RIGHT_TRIGGER: readonly Turn[] = written('U', 'R', "U'", "R'")

/** U' L' U L. */
export const LEFT_TRIGGER: readonly Turn[] = mirrorTurns(RIGHT_TRIGGER)

/** The lesson's own book: one sequence a stage. With A and B for the right and the left trigger: */
export const LESSON_BOOK: SequenceBook = {
  // F A F'
  4: [[...written('F'), ...RIGHT_TRIGGER, ...written("F'")]],
  // A^3 y B^3
  5: [[...times(3, RIGHT_TRIGGER), ...written('y'), ...times(3, LEFT_TRIGGER)]],
  // L' A^2 L A^3 L' A L
  6: [
    [
      ...written("L'"),
      ...times(2, RIGHT_TRIGGER),
      ...written('L'),
      ...times(3, RIGHT_TRIGGER),
      ...written("L'"),
      ...RIGHT_TRIGGER,
      ...written('L'),
    ],
  ],
  // A^5 B^5 A B
  7: [[...times(5, RIGHT_TRIGGER), ...times(5, LEFT_TRIGGER), ...RIGHT_TRIGGER, ...LEFT_TRIGGER]],
}

function written(...names: TurnName[]): Turn[] {
  return names.map(turnOf)
}

function times(count: number, turns: readonly Turn[]): Turn[] {
  return Array.from({ length: count }, () => turns).flat()
}
