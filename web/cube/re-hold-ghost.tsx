/**
 * Where the front goes in a re-hold, for a class that is to do it along: a faint frame that leaves with the old front, lies
 * where that has gone to, and stays for a moment. Seen through the cube when that is a hidden side, and dashed there.
 *
 * It is a drawing of its own over the cube, so that nothing of the cube is drawn differently for it.
 */

import { useLayoutEffect, useRef } from 'react'
import { FACE_ROTATIONS } from './cube-space.ts'
import { frontGoesTo, rotationOf } from './layer-rotation.ts'
import styles from './re-hold-ghost.module.css'
import { COME_IN_EASING, rotateBy } from './rotate-layers.ts'
import type { ShownTurn } from './show-turns.ts'

/** How long the frame lies there when the cube has come in, and how long it takes to go. */
const STAYS_MS = 900
const GOES_MS = 300
const FAINT = 0.75

/** @param ghost.ms how long the re-hold takes; 0 for who asks for stillness: then the frame lies there at once, and goes at once */
export function ReHoldGhost({ ghost }: { readonly ghost: ShownTurn }) {
  const seen = useRef<HTMLElement>(null)
  const through = useRef<HTMLElement>(null)
  useLayoutEffect(() => {
    const frames = [seen.current, through.current].filter((frame) => frame !== null)
    const running = frames.flatMap((frame) => show(frame, ghost))
    return () => {
      for (const animation of running) animation.cancel()
    }
  }, [ghost])
  const place = `${FACE_ROTATIONS[frontGoesTo(ghost.turn)]} translateZ(calc(var(--half-side) * 1.02))`
  return (
    <>
      <i className={styles.frame} style={{ transform: place }} ref={seen} data-ghost="" />
      <i
        className={`${styles.frame} ${styles.through}`}
        style={{ transform: `${place} rotateY(180deg)` }}
        ref={through}
      />
    </>
  )
}

function show(frame: HTMLElement, { turn, ms }: ShownTurn): Animation[] {
  if (ms === 0) return [frame.animate({ opacity: [FAINT, FAINT] }, { duration: STAYS_MS + GOES_MS })]
  const { axis, degrees } = rotationOf(turn)
  const total = ms + STAYS_MS + GOES_MS
  return [
    frame.animate({ rotate: [rotateBy(axis, -degrees), rotateBy(axis, 0)] }, { duration: ms, easing: COME_IN_EASING }),
    frame.animate({ opacity: [FAINT, FAINT, 0], offset: [0, (total - GOES_MS) / total, 1] }, { duration: total }),
  ]
}
