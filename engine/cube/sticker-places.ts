/**
 * Where the 54 stickers sit in space, and the order in which they are read: faces as in `FACES`, each face row by row
 * as seen by someone who looks straight at it.
 */

import { assert } from '../result.ts'
import { FACES, type Face } from './faces.ts'
import { add, cross, FACE_NORMALS, sameVector, scale, type Vector } from './geometry.ts'

/** Stickers on one face; the fifth of them (index 4) is the centre. */
export const STICKERS_PER_FACE = 9

/** Stickers on a cube. */
export const N_STICKERS = FACES.length * STICKERS_PER_FACE

/** One sticker: the cell that carries it and the direction in which it looks. */
export type StickerPlace = { readonly cell: Vector; readonly facing: Vector }

/** Which face is at the top edge of the picture when a face is looked at. */
const FACE_AT_TOP_EDGE: Readonly<Record<Face, Face>> = { U: 'B', R: 'U', F: 'U', D: 'F', L: 'U', B: 'U' }

/** The 54 sticker places in reading order. */
export const STICKER_PLACES: readonly StickerPlace[] = FACES.flatMap(stickersReadOn)

/**
 * @returns index 0..53 of the sticker on `cell` that looks along `facing`
 * Asserts that there is one: a wrong pair is our bug.
 */
export function stickerIndexAt(cell: Vector, facing: Vector): number {
  const index = STICKER_PLACES.findIndex((place) => sameVector(place.cell, cell) && sameVector(place.facing, facing))
  assert(index >= 0, `a sticker on cell ${cell} looks along ${facing}`)
  return index
}

function stickersReadOn(face: Face): StickerPlace[] {
  const facing = FACE_NORMALS[face]
  const down = scale(FACE_NORMALS[FACE_AT_TOP_EDGE[face]], -1)
  const right = cross(facing, down)
  const steps = [-1, 0, 1]
  return steps.flatMap((row) =>
    steps.map((column) => ({ cell: add(facing, add(scale(down, row), scale(right, column))), facing })),
  )
}
