/**
 * Where each of the 54 stickers lies in space, in the axes that CSS uses: x to the right, y DOWN, z towards the eye.
 * One unit is the side of one small cube, so the whole cube reaches from -1.5 to 1.5.
 * Both drawings, the flat one and the turning one, and the reading of a drag start from this table.
 */

import { FACES, type Face } from '../../engine/cube/faces.ts'

export type Axis = 'x' | 'y' | 'z'
export const AXES = ['x', 'y', 'z'] as const
export type Vector = readonly [x: number, y: number, z: number]

/** How a face lies: where its right, its lower side and its outside point, seen straight on as `stickersOf` orders it. */
export type FaceFrame = { readonly right: Vector; readonly down: Vector; readonly out: Vector }

export const FACE_FRAMES: Readonly<Record<Face, FaceFrame>> = {
  U: { right: [1, 0, 0], down: [0, 0, 1], out: [0, -1, 0] },
  R: { right: [0, 0, -1], down: [0, 1, 0], out: [1, 0, 0] },
  F: { right: [1, 0, 0], down: [0, 1, 0], out: [0, 0, 1] },
  D: { right: [1, 0, 0], down: [0, 0, -1], out: [0, 1, 0] },
  L: { right: [0, 0, 1], down: [0, 1, 0], out: [-1, 0, 0] },
  B: { right: [-1, 0, 0], down: [0, 1, 0], out: [0, 0, -1] },
}

/** Brings a square that looks at the eye to where the face lies, in the words of CSS. */
export const FACE_ROTATIONS: Readonly<Record<Face, string>> = {
  U: 'rotateX(90deg)',
  R: 'rotateY(90deg)',
  F: 'rotateY(0deg)',
  D: 'rotateX(-90deg)',
  L: 'rotateY(-90deg)',
  B: 'rotateY(180deg)',
}

export type StickerPlace = {
  readonly index: number
  readonly face: Face
  /** 0 to 2 from the top, 0 to 2 from the left. */
  readonly row: number
  readonly column: number
  /** The small cube that carries the sticker; each coordinate is -1, 0 or 1. */
  readonly piece: Vector
  /** The middle of the sticker, on the surface. */
  readonly centre: Vector
}

/** In the order of `stickersOf`: U R F D L B, each row by row. */
export const STICKER_PLACES: readonly StickerPlace[] = FACES.flatMap((face, faceIndex) =>
  [0, 1, 2, 3, 4, 5, 6, 7, 8].map((within) => {
    const row = Math.floor(within / 3)
    const column = within % 3
    const { right, down, out } = FACE_FRAMES[face]
    const onFace = add(scale(right, column - 1), scale(down, row - 1))
    return {
      index: faceIndex * 9 + within,
      face,
      row,
      column,
      piece: add(onFace, out),
      centre: add(onFace, scale(out, 1.5)),
    }
  }),
)

export function add(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

export function scale(a: Vector, by: number): Vector {
  return [a[0] * by, a[1] * by, a[2] * by]
}

/** By components, as in any book; in these axes `cross(axis, place)` is where a CSS rotation about the axis carries the place. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}
