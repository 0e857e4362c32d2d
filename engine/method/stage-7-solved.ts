/**
 * Stage 7, all home: the four top edges match the side centres, which leaves nothing unsolved.
 *
 *     the top row of the front side, before      after        the usual slip
 *                                     F L F      F F F        the finished side is not held in front
 *
 * Starts: the corners are home; 12 edge arrangements.
 */

import { type CubePosition, EDGES_AT } from '../cube/cube-position.ts'
import { edgePiece } from '../cube/piece-code.ts'
import { type GoalPart, homePart, TOP_EDGES } from './goal-part.ts'
import { TOP_EDGE_RING } from './top-ring.ts'

/** The four top edges at home. */
export const SOLVED_PARTS: readonly GoalPart[] = TOP_EDGES.map(homePart)

/**
 * Named by the way home: three edges go round clockwise or anticlockwise (seen from above), or two pairs change places,
 * each across the layer or each with its neighbour. Arrangements out of 12: 1, 4, 4, 1, 2.
 */
export const SOLVED_CASES = ['solved', 'three-clockwise', 'three-anticlockwise', 'across', 'beside'] as const

/** A case of this stage. */
export type SolvedCase = (typeof SOLVED_CASES)[number]

/** @param homeHeld a cube held home whose top corners are home */
export function solvedCase(homeHeld: CubePosition): SolvedCase {
  const nEdges = TOP_EDGE_RING.length
  const stepsHome = TOP_EDGE_RING.map((place, index) => {
    const home = TOP_EDGE_RING.indexOf(EDGES_AT + edgePiece(homeHeld[place]))
    return (home - index + nEdges) % nEdges
  })
  switch (stepsHome.filter((nSteps) => nSteps === 0).length) {
    case nEdges:
      return 'solved'
    case 1:
      // Of three edges that go round clockwise two have one step to go; the third passes the one that is home.
      return stepsHome.filter((nSteps) => nSteps === 1).length === 2 ? 'three-clockwise' : 'three-anticlockwise'
    default:
      return stepsHome.every((nSteps) => nSteps === 2) ? 'across' : 'beside'
  }
}
