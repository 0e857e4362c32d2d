/** Which mistakes of a way are marked beneath its ribbon, so that no mark runs into another. Pure. */

import type { Note } from '../../../engine/coach/note.ts'

/** A note under its turns. */
export type Bracket = { readonly note: Note; readonly left: number; readonly width: number }

/** Two at most: the dearest mistakes. More would be a wall of red ink. */
const BRACKETS_MAX = 2

/**
 * @param notes the dearest first; those that cost nothing have no mark
 * @param leftOf pixels from the margin to a turn @param square pixels; no mark is narrower @param labelPx room for its words
 */
export function bracketsOf(
  notes: readonly Note[],
  leftOf: (turnIndex: number) => number,
  square: number,
  labelPx: number,
): Bracket[] {
  const brackets: Bracket[] = []
  for (const note of notes) {
    if (note.costTurns === 0 || brackets.length === BRACKETS_MAX) break
    const left = leftOf(note.fromTurn)
    const width = Math.max(square, leftOf(note.toTurn) - left)
    const isFree = brackets.every(
      (other) => left + width + labelPx <= other.left || other.left + other.width + labelPx <= left,
    )
    if (isFree) brackets.push({ note, left, width })
  }
  return brackets
}
