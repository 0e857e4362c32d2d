/**
 * Which layer a finger drags, and how far. A finger on a sticker can push it along two directions of its face; the one
 * that points where the finger goes on the screen is meant, from wherever the eye looks.
 */

import type { Turn } from '../../engine/cube/turns.ts'
import { AXES, type Axis, cross, FACE_FRAMES, STICKER_PLACES, type Vector } from './cube-space.ts'
import { turnOfLayer } from './layer-rotation.ts'
import { directionOnScreen, type Look } from './look-around.ts'

export type Drag = { readonly x: number; readonly y: number }

/** A layer in the hand: fixed at the first clear movement, so that a wobbling finger does not change layers. */
export type HeldLayer = {
  readonly axis: Axis
  readonly layer: number
  /** The way of the finger that turns the layer on, in screen directions of length 1. */
  readonly along: readonly [x: number, y: number]
  /** Degrees that one pixel along that way turns. */
  readonly degreesPerPx: number
}

/** Less than this is a tremor or a tap. */
export const DRAG_STARTS_PX = 7

/** Seen at a grazing angle a sticker is short on the screen; no finger is so exact. */
const SHORTEST_SEEN = 0.45

export function holdLayer(stickerIndex: number, drag: Drag, look: Look, halfSidePx: number): HeldLayer {
  const place = STICKER_PLACES[stickerIndex]
  const { right, down, out } = FACE_FRAMES[place.face]
  const [byRight, byDown] = [right, down].map((direction) => alongDirection(direction, drag, look))
  const chosen = Math.abs(byRight.px) >= Math.abs(byDown.px) ? byRight : byDown
  // A rotation about `out x direction` carries what lies outside into the direction.
  const turnsAbout = cross(out, chosen.direction)
  const along = turnsAbout.findIndex((coordinate) => coordinate !== 0)
  // The sticker lies half a side away from the axis, so a way of half a side is one radian.
  const seenHalfSidePx = Math.max(chosen.length, SHORTEST_SEEN) * halfSidePx
  return {
    axis: AXES[along],
    layer: place.piece[along],
    along: chosen.unit,
    degreesPerPx: (turnsAbout[along] * 180) / (Math.PI * seenHalfSidePx),
  }
}

/** How far the layer has turned: at most half a turn either way. */
export function draggedDegrees(held: HeldLayer, drag: Drag): number {
  const degrees = (drag.x * held.along[0] + drag.y * held.along[1]) * held.degreesPerPx
  return Math.max(-180, Math.min(180, degrees))
}

/** The turn at which the layer snaps in, or null when it falls back: so releasing at the origin does nothing. */
export function turnAtRelease(held: HeldLayer, degrees: number): Turn | null {
  return turnOfLayer(held.axis, held.layer, Math.round(degrees / 90) * 90)
}

function alongDirection(direction: Vector, drag: Drag, look: Look) {
  const [x, y] = directionOnScreen(direction, look)
  const length = Math.hypot(x, y)
  // Pointing straight at the eye: no way on the screen goes along it.
  const unit = length < 0.05 ? ([0, 0] as const) : ([x / length, y / length] as const)
  return { direction, length, unit, px: drag.x * unit[0] + drag.y * unit[1] }
}
