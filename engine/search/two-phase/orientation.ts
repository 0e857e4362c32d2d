/**
 * How the pieces are turned in their places, against the vertical axis: a corner counts as untwisted when its top or base
 * sticker looks up or down, an edge as unflipped by the reference stickers of `piece-places.ts`. The turns U, D, R2, L2,
 * F2 and B2 leave both as they are.
 */

import { type CubePosition, EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { cornerCode, cornerTwist, edgeCode, edgeFlip } from '../../cube/piece-code.ts'
import type { Coordinate } from './coordinate.ts'
import { N_CORNERS, N_EDGES } from './position-with-order.ts'

/** Ways to twist seven corners; the eighth follows. */
export const N_TWISTS = 3 ** (N_CORNERS - 1)

/** Ways to flip eleven edges; the twelfth follows. */
export const N_FLIPS = 2 ** (N_EDGES - 1)

/** The corners: 0..2186, the first place the highest digit to base 3, the last place left out. */
export const TWIST: Coordinate = { nRanks: N_TWISTS, rankOf: twistOf, positionWith: positionWithTwist }

/** The edges: 0..2047, the first place the highest bit, the last place left out. */
export const FLIP: Coordinate = { nRanks: N_FLIPS, rankOf: flipOf, positionWith: positionWithFlip }

function twistOf(position: CubePosition): number {
  let twist = 0
  for (let place = 0; place < N_CORNERS - 1; place++) twist = twist * 3 + cornerTwist(position[place])
  return twist
}

function positionWithTwist(twist: number): CubePosition {
  const position = solvedCube()
  let rest = twist
  let sum = 0
  for (let place = N_CORNERS - 2; place >= 0; place--) {
    const digit = rest % 3
    position[place] = cornerCode(place, digit)
    rest = (rest - digit) / 3
    sum += digit
  }
  position[N_CORNERS - 1] = cornerCode(N_CORNERS - 1, (3 - (sum % 3)) % 3)
  return position
}

function flipOf(position: CubePosition): number {
  let flip = 0
  for (let place = 0; place < N_EDGES - 1; place++) flip = flip * 2 + edgeFlip(position[EDGES_AT + place])
  return flip
}

function positionWithFlip(flip: number): CubePosition {
  const position = solvedCube()
  let rest = flip
  let sum = 0
  for (let place = N_EDGES - 2; place >= 0; place--) {
    const digit = rest % 2
    position[EDGES_AT + place] = edgeCode(place, digit)
    rest = (rest - digit) / 2
    sum += digit
  }
  position[EDGES_AT + N_EDGES - 1] = edgeCode(N_EDGES - 1, sum % 2)
  return position
}
