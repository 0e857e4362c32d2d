/**
 * Reads a solution, or a try that is still under way, and says why it took the turns that it took. Nothing is believed that
 * the turns do not show: the whole try is explained at once, by sequences of the book, ways of one's own and single slips,
 * and the cheapest explanation is the one that is told (`explain-turns.ts`).
 */

import type { CubePosition } from '../cube/cube-position.ts'
import type { Turn } from '../cube/turns.ts'
import { LESSON_BOOK } from '../method/book/lesson-book.ts'
import type { SequenceBook } from '../method/sequence-book.ts'
import type { StageSpan } from '../method/stages.ts'
import { episodesOf, type Pars } from './episodes-of.ts'
import { explainTurns } from './explain-turns.ts'
import { momentsOf } from './moments-of.ts'
import { notesOf } from './notes-of.ts'
import type { Reading } from './reading.ts'
import { trackTurns } from './turn-track.ts'

/** What is to be read. */
export type ReadingWish = {
  /** In any hold; stays as it is. */
  readonly start: CubePosition
  /** Re-holds included. What comes after the goal is not read. */
  readonly turns: readonly Turn[]
  /** The stages of the round. */
  readonly span: StageSpan
  /** Proved by `checkBook`; asserts that it leads to the goal. The lesson's when left out. */
  readonly book?: SequenceBook
  /** Without them nothing is said of par. */
  readonly pars?: Pars
}

/**
 * @returns what was done, turn by turn. A try that does not reach the goal is read as far as it goes; what is wrong now is
 *   its last note that is open.
 */
export function readSolution({ start, turns, span, book = LESSON_BOOK, pars }: ReadingWish): Reading {
  const track = trackTurns(start, turns, span, book)
  const explained = { track, segments: explainTurns(track) }
  const notes = notesOf(explained)
  const episodes = episodesOf(explained, notes, pars)
  return {
    isReached: track.standings[track.turns.length].stage === null,
    nRead: track.turns.length,
    nTurns: track.nCounted[track.turns.length],
    overPar: episodes.reduce<number | null>(
      (sum, { overPar }) => (sum === null || overPar === null ? null : sum + overPar),
      pars === undefined ? null : 0,
    ),
    episodes,
    moments: momentsOf(track),
    notes,
  }
}
