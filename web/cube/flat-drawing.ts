/**
 * The flat drawing of a cube: yaw 36, pitch 30 degrees, no perspective. It agrees with the turning cube near enough for
 * the two to be compared side by side. Everything is in units of one small cube.
 */

import { add, FACE_FRAMES, type StickerPlace, scale, type Vector } from './cube-space.ts'
import { directionOnScreen, type Look } from './look-around.ts'

const FLAT_LOOK: Look = { pitch: -30, yaw: -36 }

/** The faces that the drawing shows. */
export const SEEN_FACES = ['U', 'F', 'R'] as const

/** Half the side of what is drawn: the cube's silhouette with its stroke. */
export const FLAT_VIEW_BOX = '-2.195 -2.447 4.39 4.893'

/** Side of a sticker; one that does not matter is grey AND smaller, so that a white goal is safe too. */
const STICKER_SIDE = 0.82
const STICKER_SIDE_NOT_MATTERING = 0.57
/** A round stroke of this width in the same colour gives the soft corners; the polygon is smaller by as much. */
export const STICKER_STROKE = 0.13

export function flatPoint(place: Vector): readonly [number, number] {
  return directionOnScreen(place, FLAT_LOOK)
}

/** The corners of the three faces that are seen, as `points` of one polygon: the body. */
export const FLAT_BODY = points([
  [-1.5, -1.5, -1.5],
  [1.5, -1.5, -1.5],
  [1.5, 1.5, -1.5],
  [1.5, 1.5, 1.5],
  [-1.5, 1.5, 1.5],
  [-1.5, -1.5, 1.5],
])

/** A whole face, to lay the light over it. */
export function flatFace(face: (typeof SEEN_FACES)[number]): string {
  const { right, down, out } = FACE_FRAMES[face]
  return points(corners(scale(out, 1.5), right, down, 1.5))
}

export function flatSticker(place: StickerPlace, matters: boolean): string {
  const { right, down } = FACE_FRAMES[place.face]
  const side = (matters ? STICKER_SIDE : STICKER_SIDE_NOT_MATTERING) - STICKER_STROKE
  return points(corners(place.centre, right, down, side / 2))
}

/** Puts a mark that is drawn in a unit square into the plane of the sticker. */
export function flatMatrix(place: StickerPlace): string {
  const { right, down } = FACE_FRAMES[place.face]
  return `matrix(${[...flatPoint(right), ...flatPoint(down), ...flatPoint(place.centre)].map(short).join(' ')})`
}

/** A line through places in space, as path data. */
export function flatPath(places: readonly Vector[], closed = false): string {
  return `M${places.map((place) => flatPoint(place).map(short).join(' ')).join('L')}${closed ? 'z' : ''}`
}

function corners(centre: Vector, right: Vector, down: Vector, half: number): Vector[] {
  return [
    add(centre, add(scale(right, -half), scale(down, -half))),
    add(centre, add(scale(right, half), scale(down, -half))),
    add(centre, add(scale(right, half), scale(down, half))),
    add(centre, add(scale(right, -half), scale(down, half))),
  ]
}

function points(places: readonly Vector[]): string {
  return places.map((place) => flatPoint(place).map(short).join(',')).join(' ')
}

/** Three places are a hundredth of a pixel at the largest size; more only make the page longer. */
function short(value: number): string {
  return String(Math.round(value * 1000) / 1000)
}
