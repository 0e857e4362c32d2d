/**
 * The flat drawing of a cube: yaw 36, pitch 30 degrees, no perspective. It agrees with the turning cube near enough for
 * the two to be compared side by side. Everything is in units of one small cube.
 *
 * A goal that lies at the bottom is seen from below, or it could not be seen at all.
 */

import type { Face } from '../../engine/cube/faces.ts'
import { add, FACE_FRAMES, type StickerPlace, scale, type Vector } from './cube-space.ts'
import { directionOnScreen, type Look } from './look-around.ts'

export type FlatView = 'above' | 'below'

const LOOKS: Readonly<Record<FlatView, Look>> = { above: { pitch: -30, yaw: -36 }, below: { pitch: 30, yaw: -36 } }

/** The faces that each view shows. */
export const SEEN_FACES = { above: ['U', 'F', 'R'], below: ['D', 'F', 'R'] } as const satisfies Record<FlatView, Face[]>

/** The silhouette with its stroke; it is the same from above and from below. */
export const FLAT_VIEW_BOX = '-2.195 -2.447 4.39 4.893'

/** Side of a sticker; one that does not matter is grey AND smaller, so that a white goal is safe too. */
const STICKER_SIDE = 0.82
const STICKER_SIDE_NOT_MATTERING = 0.57
/** A round stroke of this width in the same colour gives the soft corners; the polygon is smaller by as much. */
const STICKER_STROKE = 0.13

function flatPoint(place: Vector, view: FlatView = 'above'): readonly [number, number] {
  return directionOnScreen(place, LOOKS[view])
}

/** A whole face, to lay the body under it or the light over it. */
export function flatFace(face: Face, view: FlatView): string {
  const { right, down, out } = FACE_FRAMES[face]
  return points(corners(scale(out, 1.5), right, down, 1.5), view)
}

export function flatSticker(place: StickerPlace, matters: boolean, view: FlatView): string {
  const { right, down } = FACE_FRAMES[place.face]
  const side = (matters ? STICKER_SIDE : STICKER_SIDE_NOT_MATTERING) - STICKER_STROKE
  return points(corners(place.centre, right, down, side / 2), view)
}

/** Puts a mark that is drawn in a unit square into the plane of the sticker. */
export function flatMatrix(place: StickerPlace, view: FlatView): string {
  const { right, down } = FACE_FRAMES[place.face]
  return `matrix(${[right, down, place.centre].flatMap((vector) => flatPoint(vector, view).map(short)).join(' ')})`
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

function points(places: readonly Vector[], view: FlatView): string {
  return places.map((place) => flatPoint(place, view).map(short).join(',')).join(' ')
}

/** Three places are a hundredth of a pixel at the largest size; more only make the page longer. */
function short(value: number): string {
  return String(Math.round(value * 1000) / 1000)
}
