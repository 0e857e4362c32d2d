/** The clock of the round: what is left, or what has passed where nothing limits it. Smaller than the cube, and it never pulses. */

import { useTranslation } from 'react-i18next'
import { leftMs, playedMs, type RoundClock as RoundClockState } from '../../engine/contest/round-clock.ts'
import { ClockFace } from '../ui/clock-face.tsx'
import styles from './round-clock.module.css'

const HOUR_MS = 3_600_000

export function RoundClock({ clock, nowMs }: { clock: RoundClockState; nowMs: number }) {
  const { t } = useTranslation()
  const left = leftMs(clock, nowMs)
  const ms = left ?? playedMs(clock, nowMs)
  return (
    <div className={styles.clock}>
      <ClockFace ms={ms} direction={left === null ? 'up' : 'down'} isLong={ms >= HOUR_MS} className={styles.face} />
      <span className={styles.word}>{t(left === null ? 'bench:clock.soFar' : 'bench:clock.left')}</span>
    </div>
  )
}
