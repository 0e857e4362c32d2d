/** Where a piece is now: for a pointer that follows it. */

import { assert } from '../result.ts'
import { type CubePosition, EDGES_AT } from './cube-position.ts'
import { cornerPiece, edgePiece } from './piece-code.ts'
import { CORNER_PLACES, EDGE_PLACES } from './piece-places.ts'

/**
 * @param home the piece, by the name of its home place: `DFR`, `UF`
 * @returns indexes 0..53 of the stickers on which the piece is seen now
 * Asserts that there is such a piece.
 */
export function stickersOfPiece(position: CubePosition, home: string): readonly number[] {
  const isCorner = home.length === 3
  const places = isCorner ? CORNER_PLACES : EDGE_PLACES
  const piece = places.findIndex(({ name }) => name === home)
  assert(piece >= 0, `${home} names a piece`)
  const at = places.findIndex((_, index) =>
    isCorner ? cornerPiece(position[index]) === piece : edgePiece(position[EDGES_AT + index]) === piece,
  )
  return places[at].stickers
}

/** @returns the home place of the piece that shows this sticker now; null for a centre, which is no piece to look for */
export function pieceAtSticker(position: CubePosition, sticker: number): string | null {
  const corner = CORNER_PLACES.findIndex(({ stickers }) => stickers.includes(sticker))
  if (corner >= 0) return CORNER_PLACES[cornerPiece(position[corner])].name
  const edge = EDGE_PLACES.findIndex(({ stickers }) => stickers.includes(sticker))
  return edge < 0 ? null : EDGE_PLACES[edgePiece(position[EDGES_AT + edge])].name
}
