/** Turns as squares in a row. A running try is in pencil; a solution is inked over from the margin, square by square. */

import { useState } from 'react'
import { classNames } from '../../ui/class-names.ts'
import styles from './turn-bar.module.css'

type TurnBarProps = {
  nTurns: number
  /** Squares that are drawn; fewer than `nTurns` when the lane is torn off at the edge. */
  nDrawn: number
  isInked: boolean
}

export function TurnBar({ nTurns, nDrawn, isInked }: TurnBarProps) {
  // Only what happens before the reader's eyes is inked slowly; a board that has just been opened shows it done.
  const [wasInked] = useState(isInked)
  const isTorn = nDrawn < nTurns
  return (
    <i className={classNames(styles.bar, isTorn && styles.torn)} style={{ '--n': nDrawn } as React.CSSProperties}>
      {isInked && <i className={classNames(styles.ink, !wasInked && styles.inking)} />}
    </i>
  )
}

/** A further try of a student who has a place: a thin row under the inked one. */
export function FurtherTry({ nDrawn }: { nDrawn: number }) {
  return <i className={styles.further} style={{ '--n': nDrawn } as React.CSSProperties} />
}
