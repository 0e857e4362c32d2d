/**
 * What came of each solution that a child has written down in this round: kept on this page, for the server tells only the
 * last and the best one. Pure but for the keeping.
 */

import type { LocalTry } from '../live/bench-live.ts'

export type WrittenTry = {
  readonly number: number
  /** Counted turns. */
  readonly turns: number
  readonly reached: boolean
}

/** @returns the list with this try in it, the first one first; the same list when nothing is new */
export function withWrittenTry(tries: readonly WrittenTry[], mine: LocalTry): readonly WrittenTry[] {
  if (mine.steps.length === 0) return tries
  const made = {
    number: mine.number,
    turns: mine.reached?.turns ?? mine.turns,
    reached: mine.reached !== null || mine.reachedHere,
  }
  const known = tries.find(({ number }) => number === made.number)
  if (known !== undefined && known.turns === made.turns && known.reached === made.reached) return tries
  return [...tries.filter(({ number }) => number !== made.number), made].sort((one, other) => one.number - other.number)
}

/** Reads what was kept; what makes no sense is left out. */
export function readWrittenTries(kept: unknown): readonly WrittenTry[] {
  return Array.isArray(kept) ? kept.filter(isWrittenTry) : []
}

function isWrittenTry(kept: unknown): kept is WrittenTry {
  if (typeof kept !== 'object' || kept === null) return false
  const { number, turns, reached } = kept as Partial<WrittenTry>
  return Number.isInteger(number) && Number.isInteger(turns) && typeof reached === 'boolean'
}

/** Reads a text that was kept, and begins with none. */
export function readKeptText(kept: unknown): string {
  return typeof kept === 'string' ? kept : ''
}

/** Reads the number of the try after which another one is being written; 0 for none. */
export function readKeptNumber(kept: unknown): number {
  return typeof kept === 'number' && Number.isInteger(kept) ? kept : 0
}
