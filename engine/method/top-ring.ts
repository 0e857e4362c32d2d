/**
 * The top layer as it is seen from above: its corner places and edge places in clockwise order. Derived from what the
 * turn U does, so that "clockwise" is said in one place only.
 */

import { afterTurns } from '../cube/apply-turn.ts'
import { EDGES_AT, solvedCube } from '../cube/cube-position.ts'
import { cornerPiece, edgePiece } from '../cube/piece-code.ts'
import { turnOf } from '../cube/turns.ts'
import { TOP_CORNERS, TOP_EDGES } from './goal-part.ts'

/** Indexes into a position, each followed by the place that U carries its piece to. */
export const TOP_CORNER_RING: readonly number[] = ringFrom(TOP_CORNERS[0])
export const TOP_EDGE_RING: readonly number[] = ringFrom(TOP_EDGES[0])

function ringFrom(first: number): number[] {
  const turned = afterTurns(solvedCube(), [turnOf('U')])
  const homeOf = (place: number) =>
    place < EDGES_AT ? cornerPiece(turned[place]) : EDGES_AT + edgePiece(turned[place])
  const ring = [first]
  while (ring.length < TOP_EDGES.length) {
    const last = ring[ring.length - 1]
    ring.push([...TOP_CORNERS, ...TOP_EDGES].find((place) => homeOf(place) === last) ?? first)
  }
  return ring
}
