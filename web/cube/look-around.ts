/** From where the eye looks at the cube. Looking around is not a turn: it changes nothing but this. */

import type { Vector } from './cube-space.ts'

/** Degrees, as CSS takes them: `rotateX(pitch) rotateY(yaw)`. */
export type Look = { readonly pitch: number; readonly yaw: number }

/** From above right: top, front and right are seen, and the front is the larger side. */
export const LOOK_FROM_FRONT: Look = { pitch: -31, yaw: -35 }

/** Degrees that one press of an arrow key looks further. */
export const LOOK_STEP_DEGREES = 15

/** Degrees that one press of a button looks further: the far side is four presses away. */
const LOOK_PRESS_DEGREES = 45

/** From where the eye looks, one press further. */
export const LOOK_SIDES = ['left', 'right', 'above', 'below'] as const
export type LookSide = (typeof LOOK_SIDES)[number]

const PRESSES: Readonly<Record<LookSide, Look>> = {
  left: { pitch: 0, yaw: LOOK_PRESS_DEGREES },
  right: { pitch: 0, yaw: -LOOK_PRESS_DEGREES },
  above: { pitch: -LOOK_PRESS_DEGREES, yaw: 0 },
  below: { pitch: LOOK_PRESS_DEGREES, yaw: 0 },
}

/** Straight from above or below is the limit; beyond it left and right would change sides. */
const PITCH_DEGREES_MAX = 90

export function lookFurther(look: Look, by: Look): Look {
  const pitch = Math.max(-PITCH_DEGREES_MAX, Math.min(PITCH_DEGREES_MAX, look.pitch + by.pitch))
  return { pitch, yaw: withinHalfCircle(look.yaw + by.yaw) }
}

/** @returns the look after one press; the same where there is nothing further, straight above and below */
export function lookFromSide(look: Look, side: LookSide): Look {
  return lookFurther(look, PRESSES[side])
}

export function isFromFront(look: Look): boolean {
  return look.pitch === LOOK_FROM_FRONT.pitch && look.yaw === LOOK_FROM_FRONT.yaw
}

/** Where a direction of the cube points on the screen, perspective left aside: it is weak and only bends a drag by a few degrees. */
export function directionOnScreen([x, y, z]: Vector, look: Look): readonly [x: number, y: number] {
  const yaw = radians(look.yaw)
  const pitch = radians(look.pitch)
  const turnedX = x * Math.cos(yaw) + z * Math.sin(yaw)
  const turnedZ = z * Math.cos(yaw) - x * Math.sin(yaw)
  return [turnedX, y * Math.cos(pitch) - turnedZ * Math.sin(pitch)]
}

function withinHalfCircle(degrees: number): number {
  const turned = degrees % 360
  if (turned > 180) return turned - 360
  return turned <= -180 ? turned + 360 : turned
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}
