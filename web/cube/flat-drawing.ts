/**
 * The flat drawing of a cube: yaw 36, pitch 30 degrees, no perspective. It agrees with the turning cube near enough for
 * the two to be compared side by side. Everything is in units of one small cube.
 *
 * A goal that lies at the bottom could not be seen at all, so there the cube stands over a mirror that shows its bottom.
 * Seen from below instead, a cube reads as the inside of a box.
 */

import type { Face } from '../../engine/cube/faces.ts'
import { add, FACE_FRAMES, type StickerPlace, scale, type Vector } from './cube-space.ts'
import { directionOnScreen, type Look } from './look-around.ts'

export type FlatView = 'plain' | 'over-mirror'

const LOOK: Look = { pitch: -30, yaw: -36 }

/** The faces that each view shows; the one in the mirror comes first, for it lies behind. */
export const SEEN_FACES = {
  plain: ['U', 'F', 'R'],
  'over-mirror': ['D', 'U', 'F', 'R'],
} as const satisfies Record<FlatView, Face[]>

/** The silhouette with its stroke. Both boxes have one shape, so that pictures of either view stand in one row. */
export const FLAT_VIEW_BOXES: Readonly<Record<FlatView, string>> = {
  plain: '-2.195 -2.447 4.39 4.893',
  'over-mirror': '-3.095 -2.447 6.19 6.9',
}

/** How far below the bottom its picture in the mirror lies: just enough for all of it to be seen. */
const MIRROR_DROP: Vector = [0, 2.3, 0]

/** Side of a sticker; one that does not matter is grey AND smaller, so that a white goal is safe too. */
const STICKER_SIDE = 0.82
const STICKER_SIDE_NOT_MATTERING = 0.57
/** A round stroke of this width in the same colour gives the soft corners; the polygon is smaller by as much. */
const STICKER_STROKE = 0.13

function flatPoint(place: Vector): readonly [number, number] {
  return directionOnScreen(place, LOOK)
}

/** A whole face, to lay the body under it or the light over it. */
export function flatFace(face: Face): string {
  const { right, down, out } = FACE_FRAMES[face]
  return points(corners(mirrored(face, scale(out, 1.5)), right, down, 1.5))
}

/** The outline of a face where it is, whether it can be seen or not, as path data. */
export function flatFrame(face: Face): string {
  const { right, down, out } = FACE_FRAMES[face]
  return flatPath(corners(scale(out, 1.5), right, down, 1.5), true)
}

export function flatSticker(place: StickerPlace, matters: boolean): string {
  const { right, down } = FACE_FRAMES[place.face]
  const side = (matters ? STICKER_SIDE : STICKER_SIDE_NOT_MATTERING) - STICKER_STROKE
  return points(corners(mirrored(place.face, place.centre), right, down, side / 2))
}

/** Puts a mark that is drawn in a unit square into the plane of the sticker. */
export function flatMatrix(place: StickerPlace): string {
  const { right, down } = FACE_FRAMES[place.face]
  // A mirror would turn letters round; they are there to be read.
  const readableDown = place.face === 'D' ? scale(down, -1) : down
  const vectors = [right, readableDown, mirrored(place.face, place.centre)]
  return `matrix(${vectors.flatMap((vector) => flatPoint(vector).map(short)).join(' ')})`
}

/** Thin lines from three corners of the bottom to the same corners in the mirror. */
export function flatMirrorLines(): string {
  const bottom = [
    [-1.5, 1.5, 1.5],
    [1.5, 1.5, 1.5],
    [1.5, 1.5, -1.5],
  ] as const
  return bottom.map((corner) => flatPath([corner, add(corner, MIRROR_DROP)])).join('')
}

/** The bottom is only ever seen in the mirror; every other face stands where it is. */
function mirrored(face: Face, place: Vector): Vector {
  return face === 'D' ? add(place, MIRROR_DROP) : place
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
