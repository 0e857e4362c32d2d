/**
 * Stage 6, the corners home: the four top corners match the side centres.
 *
 *     the top row of the front side:  matching pair    no pair     home (the goal)
 *                                         R . R         R . L          F . F
 *
 * The usual slip: the matching pair is held in front instead of behind.
 * Starts: the top face is done; 24 corner arrangements, the offset of the top layer included.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import { cornerPiece } from '../cube/piece-code.ts'
import { type GoalPart, homePart, TOP_CORNERS } from './goal-part.ts'
import { TOP_CORNER_RING } from './top-ring.ts'

/** The four top corners at home. */
export const TOP_CORNERS_PARTS: readonly GoalPart[] = TOP_CORNERS.map(homePart)

/**
 * Named by the sides whose two corners match each other: all four (the layer may still have to be turned), one, or
 * none, when two corners diagonally across are exchanged. Arrangements out of 24: aligned 4, pair 16, diagonal 4.
 */
export const TOP_CORNERS_CASES = ['aligned', 'pair', 'diagonal'] as const

/** A case of this stage. */
export type TopCornersCase = (typeof TOP_CORNERS_CASES)[number]

/** @param homeHeld a cube held home whose top face is done */
export function topCornersCase(homeHeld: CubePosition): TopCornersCase {
  const homes = TOP_CORNER_RING.map((place) => TOP_CORNER_RING.indexOf(cornerPiece(homeHeld[place])))
  const nMatching = homes.filter(
    (home, index) => homes[(index + 1) % homes.length] === (home + 1) % homes.length,
  ).length
  if (nMatching === homes.length) return 'aligned'
  return nMatching === 0 ? 'diagonal' : 'pair'
}
