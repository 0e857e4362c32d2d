/**
 * The places of the eight corners and twelve edges, derived from the sticker places.
 *
 * A piece has the number of its home place. Its first sticker is the reference that says how it is turned: the one on
 * U or D, for the four edges without such a sticker the one on F or B. A corner's stickers follow clockwise, seen from
 * outside the corner. Places are numbered from the upper layer down; within a layer as reading the 54 stickers first
 * meets them.
 */

import { FACES, type FaceIndex, faceIndex } from './faces.ts'
import { cross, dot, FACE_NORMALS, sameVector, type Vector } from './geometry.ts'
import { STICKER_PLACES, stickerIndexAt } from './sticker-places.ts'

/** A place for a corner (three stickers) or an edge (two stickers), and the piece whose home it is. */
export type PiecePlace = {
  /** The faces that meet there, reference first: `URF`, `FR`. */
  readonly name: string
  /** The same faces as indexes into `FACES`. */
  readonly faces: readonly FaceIndex[]
  /** Index 0..53 of the sticker on each of these faces. */
  readonly stickers: readonly number[]
}

/** The 8 corner places. */
export const CORNER_PLACES: readonly PiecePlace[] = placesWithStickers(3)

/** The 12 edge places. */
export const EDGE_PLACES: readonly PiecePlace[] = placesWithStickers(2)

/** Index 0..53 of each face's centre sticker, in the order of `FACES`. */
export const CENTRE_STICKERS: readonly number[] = FACES.map((face) =>
  stickerIndexAt(FACE_NORMALS[face], FACE_NORMALS[face]),
)

function placesWithStickers(nStickers: number): PiecePlace[] {
  const cells: Vector[] = []
  for (const { cell } of STICKER_PLACES) {
    if (dot(cell, cell) === nStickers && !cells.some((known) => sameVector(known, cell))) cells.push(cell)
  }
  return cells.sort((a, b) => b[1] - a[1]).map(placeAt) // The sort is stable: reading order stays within a layer.
}

function placeAt(cell: Vector): PiecePlace {
  const facings = (['U', 'D', 'F', 'B', 'R', 'L'] as const).filter((face) => dot(FACE_NORMALS[face], cell) === 1)
  const [first, second, third] = facings
  // Seen from outside a corner, a to b to c is clockwise when the triple product (a x b) . c is negative.
  const isClockwise =
    third === undefined || dot(cross(FACE_NORMALS[first], FACE_NORMALS[second]), FACE_NORMALS[third]) < 0
  const faces = isClockwise ? facings : [first, third, second]
  return {
    name: faces.join(''),
    faces: faces.map(faceIndex),
    stickers: faces.map((face) => stickerIndexAt(cell, FACE_NORMALS[face])),
  }
}
