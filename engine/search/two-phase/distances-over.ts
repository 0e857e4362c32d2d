/** Exact distances over one numbered set, small enough for a byte an entry. */

import { assert } from '../../result.ts'

/** No distance yet. */
const UNKNOWN = 255

/**
 * Breadth first.
 *
 * @param home the rank at distance 0
 * @param rankAfter the rank after the turn with this index, 0..nTurns-1
 * @returns the distances by rank; asserts that turns lead to every rank
 */
export function distancesOver(
  nRanks: number,
  home: number,
  nTurns: number,
  rankAfter: (rank: number, turnIndex: number) => number,
): Uint8Array {
  const distances = new Uint8Array(nRanks).fill(UNKNOWN)
  const queue = new Uint32Array(nRanks)
  queue[0] = home
  distances[home] = 0
  let nQueued = 1
  for (let at = 0; at < nQueued; at++) {
    const distance = distances[queue[at]] + 1
    for (let turnIndex = 0; turnIndex < nTurns; turnIndex++) {
      const next = rankAfter(queue[at], turnIndex)
      if (distances[next] !== UNKNOWN) continue
      distances[next] = distance
      queue[nQueued++] = next
    }
  }
  assert(nQueued === nRanks, 'turns lead to every rank')
  return distances
}
