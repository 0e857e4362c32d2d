/** One finger on the cube: on a sticker it turns a layer that follows and snaps in; beside the cube it looks around. */

import { type PointerEvent, useRef } from 'react'
import type { Turn } from '../../engine/cube/turns.ts'
import { wantsStillness } from '../ui/reduced-motion.ts'
import { DRAG_STARTS_PX, draggedDegrees, type HeldLayer, holdLayer, turnAtRelease } from './drag-layer.ts'
import { type Look, lookFurther } from './look-around.ts'
import type { LayerMotion } from './rotate-layers.ts'

/** Degrees that the eye goes around for one pixel: a thumb's way across a phone shows the other side. */
const LOOK_DEGREES_PER_PX = 0.6
/** How long a layer takes to fall back when it is let go too early. */
const FALL_BACK_MS = 120

type Finger = {
  readonly pointerId: number
  readonly fromX: number
  readonly fromY: number
  /** Null beside the cube. */
  readonly sticker: number | null
  readonly fromLook: Look
  held: HeldLayer | null
  degrees: number
}

type CubeDragParts = {
  readonly motion: LayerMotion
  readonly look: Look
  readonly onLook: (look: Look) => void
  readonly turnable: boolean
  readonly onTurn: (turn: Turn) => void
  /** Shows all turns that are still on their way, so that the finger takes hold of a cube in line. */
  readonly showAll: () => void
}

export function useCubeDrag({ motion, look, onLook, turnable, onTurn, showAll }: CubeDragParts) {
  const finger = useRef<Finger | null>(null)
  /** A layer that was let go at its turn but has not come in yet: the turn comes in from there. */
  const released = useRef<{ turn: Turn; fromDegrees: number } | null>(null)

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    // A second finger is a palm.
    if (finger.current !== null || event.button !== 0) return
    const onSticker = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-sticker]') : null
    const sticker = onSticker === null ? null : Number(onSticker.dataset.sticker)
    event.currentTarget.setPointerCapture(event.pointerId)
    if (sticker !== null && turnable) showAll()
    finger.current = {
      pointerId: event.pointerId,
      fromX: event.clientX,
      fromY: event.clientY,
      sticker,
      fromLook: look,
      held: null,
      degrees: 0,
    }
  }

  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const now = finger.current
    if (now === null || now.pointerId !== event.pointerId) return
    const drag = { x: event.clientX - now.fromX, y: event.clientY - now.fromY }
    if (now.sticker === null) {
      onLook(lookFurther(now.fromLook, { pitch: -drag.y * LOOK_DEGREES_PER_PX, yaw: drag.x * LOOK_DEGREES_PER_PX }))
      return
    }
    if (!turnable) return
    if (now.held === null) {
      if (Math.hypot(drag.x, drag.y) < DRAG_STARTS_PX) return
      now.held = holdLayer(now.sticker, drag, now.fromLook, halfSidePx(event.currentTarget))
    }
    now.degrees = draggedDegrees(now.held, drag)
    motion.hold(heldLayers(now.held), now.degrees)
  }

  const onPointerUp = (event: PointerEvent<HTMLElement>) => {
    const now = finger.current
    if (now === null || now.pointerId !== event.pointerId) return
    finger.current = null
    if (now.held === null) return
    const turn = turnable ? turnAtRelease(now.held, now.degrees) : null
    if (turn === null) {
      fallBack(now.held, now.degrees)
      return
    }
    const target = Math.round(now.degrees / 90) * 90
    released.current = { turn, fromDegrees: now.degrees - target }
    onTurn(turn)
    // The turn may be refused, or motion may be off: then nothing takes the layer over, and it must not hang in the air.
    requestAnimationFrame(() => {
      if (released.current === null) return
      released.current = null
      motion.stop()
    })
  }

  const onPointerCancel = (event: PointerEvent<HTMLElement>) => {
    const now = finger.current
    if (now === null || now.pointerId !== event.pointerId) return
    finger.current = null
    if (now.held !== null) fallBack(now.held, now.degrees)
  }

  const fallBack = (held: HeldLayer, degrees: number) => {
    if (wantsStillness()) motion.stop()
    else motion.comeIn(heldLayers(held), degrees, FALL_BACK_MS, () => {})
  }

  /** From where a turn that a finger has just let go comes in; null for a turn that came otherwise. */
  const takeReleased = (turn: Turn): number | null => {
    const from = released.current
    released.current = null
    return from !== null && from.turn === turn ? from.fromDegrees : null
  }

  return { handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel }, takeReleased }
}

function heldLayers({ axis, layer }: HeldLayer) {
  return { axis, layers: [layer] }
}

/** The layout alone knows how many pixels that is; the perspective is 14 half sides. */
function halfSidePx(around: HTMLElement): number {
  return Number.parseFloat(getComputedStyle(around).perspective) / 14 || HALF_SIDE_PX_GUESSED
}

const HALF_SIDE_PX_GUESSED = 90
