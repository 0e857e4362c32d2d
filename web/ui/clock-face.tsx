/** Figures of a clock. Knows nothing of lessons: it is given milliseconds and says them as m:ss or h:mm:ss. */

import { classNames } from './class-names.ts'
import styles from './clock-face.module.css'

/** A clock that runs down shows the second that has begun, so that 0:00 means over; one that runs up shows full seconds. */
export type ClockDirection = 'down' | 'up'

type ClockFaceProps = {
  ms: number
  direction: ClockDirection
  /** The clock may have to show hours: a hint for the size of type. */
  isLong?: boolean
  /** In place of the figures, where they would be too many to read. */
  words?: string | null
  className?: string | undefined
}

export function ClockFace({ ms, direction, isLong = false, words = null, className }: ClockFaceProps) {
  const lastTen = direction === 'down' && 0 < ms && ms <= 10_000
  return (
    <time
      className={classNames(styles.clock, lastTen && styles.lastTen, className)}
      data-length={isLong ? 'long' : undefined}
      role="timer"
    >
      {words === null ? formatClock(ms, direction) : <span className={styles.words}>{words}</span>}
    </time>
  )
}

export function formatClock(ms: number, direction: ClockDirection): string {
  const inSeconds = Math.max(0, ms) / 1000
  const seconds = direction === 'down' ? Math.ceil(inSeconds) : Math.floor(inSeconds)
  const hours = Math.floor(seconds / 3600)
  const minutes = Math.floor(seconds / 60) % 60
  const rest = twoFigures(seconds % 60)
  return hours === 0 ? `${minutes}:${rest}` : `${hours}:${twoFigures(minutes)}:${rest}`
}

function twoFigures(value: number): string {
  return String(value).padStart(2, '0')
}
