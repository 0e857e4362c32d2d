/**
 * Shows turns one after another. The picture is always ahead: it stands at the end of the turn that is shown, and the
 * layer comes in from where it was. So nothing is late, and a burst of turns ends in the right picture: newer turns cut
 * off those before.
 */

import { useLayoutEffect, useRef, useState } from 'react'
import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../engine/cube/cube-position.ts'
import { type Turn, turnKind, turnQuarters } from '../../engine/cube/turns.ts'
import { wantsStillness } from '../ui/reduced-motion.ts'
import { type CubeInHand, turnsBetween } from './turns-between.ts'

const QUARTER_MS = 180
const HALF_MS = 250
const RE_HOLD_MS = 300
/** In a demonstration. */
const SLOW_RE_HOLD_MS = 700
/** With others waiting behind it, as in a trigger, a turn goes a little faster: the child knows what comes. */
const IN_A_ROW = 0.75
/** More turns at once than this come from a reload or another tab, not from a finger. */
const LONGEST_SHOWN = 8

/** A turn on its way in: drawn at `position`, its layer coming in during `ms`. */
export type ShownTurn = { readonly turn: Turn; readonly ms: number; readonly serial: number }
type Shown = {
  readonly position: CubePosition
  readonly coming: ShownTurn | null
  /** A re-hold of a demonstration that is on its way in or has just come in; with `ms` 0 it is shown without motion. */
  readonly ghost: ShownTurn | null
}

/**
 * @returns what to draw now, what to call when the layer has come in, and what shows all that is on its way at once
 */
export function useShownTurns(
  cube: CubeInHand,
  slowReHolds = false,
): Shown & { readonly onCameIn: () => void; readonly showAll: () => void } {
  const [shown, setShown] = useState<Shown>({ position: cube.position, coming: null, ghost: null })
  const last = useRef<CubeInHand>(cube)
  const waiting = useRef<readonly Turn[]>([])
  const serial = useRef(0)

  const showNext = (from: CubePosition) => {
    const [turn, ...rest] = waiting.current
    if (turn === undefined) return
    const position = copyCube(from)
    applyTurn(position, turn)
    waiting.current = rest
    serial.current += 1
    const ms = timeOf(turn, slowReHolds) * (rest.length > 0 ? IN_A_ROW : 1)
    const coming = { turn, ms, serial: serial.current }
    setShown({ position, coming, ghost: hasGhost(turn) ? coming : null })
  }

  const hasGhost = (turn: Turn) => slowReHolds && turnKind(turn) === 're-hold'

  const showAll = () => {
    waiting.current = []
    setShown({ position: last.current.position, coming: null, ghost: null })
  }

  const showStill = (turns: readonly Turn[]) => {
    showAll()
    const turn = turns[turns.length - 1]
    if (!hasGhost(turn)) return
    serial.current += 1
    setShown({ position: last.current.position, coming: null, ghost: { turn, ms: 0, serial: serial.current } })
  }

  useLayoutEffect(() => {
    const before = last.current
    if (before.position === cube.position && before.standing === cube.standing) return
    last.current = cube
    const between = turnsBetween(before, cube)
    if (between.kind === 'none') return
    if (between.kind === 'other' || between.turns.length > LONGEST_SHOWN) {
      showAll()
      return
    }
    if (wantsStillness()) {
      showStill(between.turns)
      return
    }
    waiting.current = between.turns
    showNext(before.position)
  })

  return { ...shown, onCameIn: () => showNext(shown.position), showAll }
}

function timeOf(turn: Turn, slowReHolds: boolean): number {
  if (turnKind(turn) === 're-hold') return slowReHolds ? SLOW_RE_HOLD_MS : RE_HOLD_MS
  return turnQuarters(turn) === 2 ? HALF_MS : QUARTER_MS
}
