/** Legal positions whose pieces of one kind stand in a given order, for coordinates that look at this kind only. */

import { CENTRES_AT, type CubePosition, EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { isOddPermutation } from '../../cube/legality.ts'
import { cornerCode, edgeCode } from '../../cube/piece-code.ts'

/** The corners of a cube. */
export const N_CORNERS = EDGES_AT

/** The edges of a cube. */
export const N_EDGES = CENTRES_AT - EDGES_AT

/** @param corners the corner 0..7 at each place @returns a position with them untwisted, and no edge flipped */
export function positionWithCorners(corners: ArrayLike<number>): CubePosition {
  const position = solvedCube()
  for (let place = 0; place < N_CORNERS; place++) position[place] = cornerCode(corners[place], 0)
  if (isOddPermutation(Array.from(corners))) exchangeWithNext(position, EDGES_AT)
  return position
}

/** @param edges the edge 0..11 at each place @returns a position with them unflipped, and no corner twisted */
export function positionWithEdges(edges: ArrayLike<number>): CubePosition {
  const position = solvedCube()
  for (let place = 0; place < N_EDGES; place++) position[EDGES_AT + place] = edgeCode(edges[place], 0)
  if (isOddPermutation(Array.from(edges))) exchangeWithNext(position, 0)
  return position
}

/** An odd order is legal only beside an odd order of the other kind. */
function exchangeWithNext(position: CubePosition, place: number): void {
  ;[position[place], position[place + 1]] = [position[place + 1], position[place]]
}
