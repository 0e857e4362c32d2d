/**
 * Stage 5, the top face: the four top corners show the top colour on top as well, in any order.
 *
 *     the top, before      after       the usual slip
 *         . U .            U U U       the re-hold in the middle of the sequence is
 *         U U U            U U U       left out, and the lower layers stay broken
 *         . U .            U U U
 *
 * Starts: the top cross is done; 27 corner patterns.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import { cornerTwist } from '../cube/piece-code.ts'
import { CORNER_PLACES } from '../cube/piece-places.ts'
import { type GoalPart, TOP_CORNERS, topColourUpPart } from './goal-part.ts'
import { TOP_CORNER_RING } from './top-ring.ts'

/** Any top corner at each top place, the top colour up. */
export const TOP_FACE_PARTS: readonly GoalPart[] = TOP_CORNERS.map(topColourUpPart)

/**
 * Named by how many corners show the top colour on top, and then by what tells the pattern from its like: the way in
 * which the other three have to be turned, whether the two lie across from each other, or on how many sides of the
 * layer the top colour is seen. Patterns out of 27: all up 1, none up on two sides 2, the six others 4 each.
 */
export const TOP_FACE_CASES = [
  'all-up',
  'one-up-clockwise',
  'one-up-anticlockwise',
  'two-up-across',
  'two-up-one-side',
  'two-up-two-sides',
  'none-up-two-sides',
  'none-up-three-sides',
] as const

/** A case of this stage. */
export type TopFaceCase = (typeof TOP_FACE_CASES)[number]

/** @param homeHeld a cube held home whose top cross is done */
export function topFaceCase(homeHeld: CubePosition): TopFaceCase {
  const twists = TOP_CORNER_RING.map((place) => cornerTwist(homeHeld[place]))
  const turned = TOP_CORNER_RING.filter((_, index) => twists[index] !== 0)
  const nSides = new Set(turned.map((place) => CORNER_PLACES[place].faces[cornerTwist(homeHeld[place])])).size
  switch (TOP_CORNER_RING.length - turned.length) {
    case 4:
      return 'all-up'
    case 1:
      // Twisted two thirds clockwise: one more third clockwise and the colour is on top.
      return twists.includes(2) ? 'one-up-clockwise' : 'one-up-anticlockwise'
    case 2:
      if (twists[0] === twists[2] || twists[1] === twists[3]) return 'two-up-across'
      return nSides === 1 ? 'two-up-one-side' : 'two-up-two-sides'
    default:
      return nSides === 2 ? 'none-up-two-sides' : 'none-up-three-sides'
  }
}
