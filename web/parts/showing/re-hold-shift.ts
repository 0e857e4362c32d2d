/**
 * Where the token of a re-hold stands in a ribbon: on the seam before the turn it comes before. Several in a row stand beside
 * each other with the seam in their middle, so that each can be read and the next seam is left free. Pure.
 */

import { type Turn, turnKind } from '../../../engine/cube/turns.ts'

/** From one token to the next, in squares: their width and a hair. */
const TOKEN_SQUARES = 0.64

/** @param at index of an entry of the row @returns squares from the seam to the middle of its token; 0 for a turn */
export function reHoldShift(turns: readonly Turn[], at: number): number {
  if (!isReHold(turns[at])) return 0
  let first = at
  while (first > 0 && isReHold(turns[first - 1])) first--
  let end = at + 1
  while (end < turns.length && isReHold(turns[end])) end++
  // At the margin there is room on one side only.
  const firstShift = first === 0 ? 0 : (-(end - first - 1) / 2) * TOKEN_SQUARES
  return firstShift + (at - first) * TOKEN_SQUARES
}

function isReHold(turn: Turn): boolean {
  return turnKind(turn) === 're-hold'
}
