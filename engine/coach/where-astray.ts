/** Where a solution that does not reach the goal went astray: for solutions written by hand, and for whoever is stuck. */

import { LESSON_BOOK } from '../method/book/lesson-book.ts'
import { mendOneTurn, type OneTurnMend } from './mend-one-turn.ts'
import type { Note } from './note.ts'
import { type ReadingWish, readSolution } from './read-solution.ts'
import { type TurnTrack, trackTurns } from './turn-track.ts'

/** Where it went astray. */
export type Astray = {
  /** After so many turns everything stood for the last time that had been reached; re-holds count as entries of the row. */
  readonly turnIndex: number
  /** What happened there; null when the turns just end too early, or nothing explains it. */
  readonly note: Note | null
  /** The one turn that makes the solution reach the goal when it is written otherwise; null when there is none. */
  readonly mend: OneTurnMend | null
}

/** @returns null when the goal is reached */
export function whereAstray(wish: ReadingWish): Astray | null {
  const { start, turns, span, book = LESSON_BOOK } = wish
  const track = trackTurns(start, turns, span, book)
  if (track.standings[track.turns.length].stage === null) return null
  const turnIndex = lastSound(track)
  const { notes } = readSolution(wish)
  const here = notes.filter(({ isOpen, toTurn }) => isOpen && turnIndex <= toTurn)
  const [note = null] = [...here].sort((a, b) => a.fromTurn - b.fromTurn)
  return { turnIndex, note, mend: mendOneTurn(start, turns, span.to) }
}

/** @returns the last moment at which nothing was lost that had been reached before */
function lastSound({ standings }: TurnTrack): number {
  let reached = 0
  let last = 0
  for (const [moment, { level }] of standings.entries()) {
    if (level < reached) continue
    reached = level
    last = moment
  }
  return last
}
