/**
 * What a turn does on the screen: which layers rotate about which axis of CSS, and by how much.
 * In CSS's axes a clockwise quarter, seen from outside a face, is +90 degrees about the direction in which the face looks.
 */

import { FACES, type Face } from '../../engine/cube/faces.ts'
import { ALL_TURNS, type Turn, turnAxis, turnKind, turnLayers, turnQuarters } from '../../engine/cube/turns.ts'
import { assert } from '../../engine/result.ts'
import { AXES, type Axis, cross, FACE_FRAMES, type StickerPlace, type Vector } from './cube-space.ts'

export type LayerRotation = {
  readonly axis: Axis
  /** Coordinates along the axis: -1, 0, 1. */
  readonly layers: readonly number[]
  readonly degrees: number
}

/** The layers that a hand holds, without a rotation: to outline them, or to drag them. */
export type Layers = Pick<LayerRotation, 'axis' | 'layers'>

const ROTATIONS: readonly LayerRotation[] = ALL_TURNS.map((turn) => {
  const { out } = FACE_FRAMES[turnAxis(turn)]
  const along = out.findIndex((coordinate) => coordinate !== 0)
  const sign = out[along]
  const quarters = turnQuarters(turn)
  return {
    axis: AXES[along],
    layers: turnLayers(turn).map((layer) => layer * sign),
    degrees: sign * (quarters === 3 ? -90 : quarters * 90),
  }
})

export function rotationOf(turn: Turn): LayerRotation {
  return ROTATIONS[turn]
}

/** @returns the face to which the front goes in a re-hold, which is the front itself for `z` */
export function frontGoesTo(turn: Turn): Face {
  const { axis, degrees } = rotationOf(turn)
  const about = AXES.map((each) => (each === axis ? 1 : 0)) as unknown as Vector
  const { out } = FACE_FRAMES.F
  const quarters = (degrees / 90 + 4) % 4
  let place: Vector = out
  // What lies along the axis stays.
  if (out[AXES.indexOf(axis)] === 0) for (let quarter = 0; quarter < quarters; quarter++) place = cross(about, place)
  const found = FACES.find((face) => FACE_FRAMES[face].out.every((value, index) => value === place[index]))
  assert(found !== undefined, 'a quarter turn brings a face to a face')
  return found
}

/** The turn of one layer by so many degrees, or null when it comes back to where it was. */
export function turnOfLayer(axis: Axis, layer: number, degrees: number): Turn | null {
  const quarters = (((Math.round(degrees / 90) % 4) + 4) % 4) as 0 | 1 | 2 | 3
  if (quarters === 0) return null
  const found = ALL_TURNS.find((turn) => {
    const rotation = ROTATIONS[turn]
    if (turnKind(turn) !== 'face' && turnKind(turn) !== 'slice') return false
    if (rotation.axis !== axis || rotation.layers[0] !== layer) return false
    return (rotation.degrees / 90 + 4) % 4 === quarters
  })
  return found ?? null
}

export function isInLayers(piece: Vector, { axis, layers }: Layers): boolean {
  return layers.includes(piece[AXES.indexOf(axis)])
}

/**
 * On which sides of a sticker the outline of a layer runs: where the sticker beside it is on another face or outside it.
 *
 * @returns top, right, bottom, left, as in CSS; null when the sticker lies outside the layer
 */
export function outlineSides(
  place: StickerPlace,
  layers: Layers,
): readonly [boolean, boolean, boolean, boolean] | null {
  if (!isInLayers(place.piece, layers)) return null
  const isOutside = (rows: number, columns: number) => {
    const row = place.row + rows
    const column = place.column + columns
    if (row < 0 || 2 < row || column < 0 || 2 < column) return true
    const { right, down } = FACE_FRAMES[place.face]
    const beside = place.piece.map((value, i) => value + right[i] * columns + down[i] * rows) as unknown as Vector
    return !isInLayers(beside, layers)
  }
  return [isOutside(-1, 0), isOutside(0, 1), isOutside(1, 0), isOutside(0, -1)]
}
