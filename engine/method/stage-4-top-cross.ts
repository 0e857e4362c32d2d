/**
 * Stage 4, the top cross: the four top edges show the top colour on top, in any order.
 *
 *     the top:  dot      line     corner shape    cross (the goal)
 *              . . .     . . .       . U .           . U .
 *              . U .     U U U       U U .           U U U
 *              . . .     . . .       . . .           . U .
 *
 * The usual slip: the corner shape is held with its arms elsewhere than back and left.
 * Starts: two layers are done; 8 edge patterns.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import { edgeFlip } from '../cube/piece-code.ts'
import { type GoalPart, TOP_EDGES, topColourUpPart } from './goal-part.ts'
import { TOP_EDGE_RING } from './top-ring.ts'

/** Any top edge at each top place, the top colour up. */
export const TOP_CROSS_PARTS: readonly GoalPart[] = TOP_EDGES.map(topColourUpPart)

/** Named by what the top colour draws on top. Patterns out of 8: cross 1, dot 1, line 2, corner shape 4. */
export const TOP_CROSS_CASES = ['cross', 'dot', 'line', 'corner-shape'] as const

/** A case of this stage. */
export type TopCrossCase = (typeof TOP_CROSS_CASES)[number]

/** @param homeHeld a cube held home whose two lower layers are done */
export function topCrossCase(homeHeld: CubePosition): TopCrossCase {
  const isUp = TOP_EDGE_RING.map((place) => edgeFlip(homeHeld[place]) === 0)
  const nUp = isUp.filter(Boolean).length
  if (nUp === TOP_EDGE_RING.length) return 'cross'
  if (nUp === 0) return 'dot'
  return isUp[0] === isUp[2] ? 'line' : 'corner-shape'
}
