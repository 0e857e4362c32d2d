/** Dots of the crowd, piled over their number of turns. A dot is a student, a square is a turn. */

import type { RankedLane } from '../../../engine/contest/rank-board.ts'

export type Dot = { readonly column: number; readonly level: number; readonly reached: boolean }
export type Crowd = {
  /** Dots side by side within one square. */
  readonly nAcross: number
  readonly dots: readonly (Dot & { readonly turns: number })[]
}

/** Rows that piles have in the most crowded page; see board-rows.ts. */
const ROWS_FOR_PILES = 7
const ACROSS_MAX = 8
/** Dots start out so small that a quarter of the crowd fits over one square. */
const PILE_SHARE = 4

/**
 * @param nSquares squares of the ruling; whoever has more turns is piled over the last one
 * @param nSquaresHigh height of the place for the piles, in squares
 */
export function pileCrowd(crowd: readonly RankedLane[], nSquares: number, nSquaresHigh: number): Crowd {
  const piles = new Map<number, boolean[]>()
  for (const lane of crowd) {
    const turns = Math.min(lane.best?.turns ?? lane.turns, nSquares - 1)
    const pile = piles.get(turns) ?? []
    pile.push(lane.best !== null)
    piles.set(turns, pile)
  }
  const largest = Math.max(0, ...[...piles.values()].map((pile) => pile.length))
  let nAcross = Math.max(2, Math.ceil(Math.sqrt(crowd.length / PILE_SHARE / ROWS_FOR_PILES)))
  while (nAcross < ACROSS_MAX && nAcross * Math.floor(nSquaresHigh * nAcross) < largest) nAcross += 1
  const dots = [...piles].flatMap(([turns, pile]) =>
    // Who has reached the goal lies at the bottom of the pile.
    pile
      .sort((a, b) => Number(b) - Number(a))
      .map((reached, index) => ({ turns, column: index % nAcross, level: Math.floor(index / nAcross), reached })),
  )
  return { nAcross, dots }
}
