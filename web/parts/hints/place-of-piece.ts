/** Where a piece is now, by the name of the place: for saying it beside a ring around the piece. Pure. */

import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { stickersOfPiece } from '../../../engine/cube/find-piece.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../../engine/cube/piece-places.ts'
import { assert } from '../../../engine/result.ts'

/** @param home the piece, by its home place: `DFR` @returns the place at which it is now, as the cube is held: `UFL` */
export function placeOfPiece(position: CubePosition, home: string): string {
  const [first] = stickersOfPiece(position, home)
  const place = [...CORNER_PLACES, ...EDGE_PLACES].find(({ stickers }) => stickers.includes(first))
  assert(place !== undefined, 'a piece is always in a place')
  return place.name
}
