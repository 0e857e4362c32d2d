/** The clock of the round: what is left, or what has passed where nothing limits it. Smaller than the cube, and it never pulses. */

import { useTranslation } from 'react-i18next'
import { leftMs, playedMs, type RoundClock as RoundClockState } from '../../engine/contest/round-clock.ts'
import { LongClock } from '../parts/long-clock.tsx'
import styles from './round-clock.module.css'

export function RoundClock({ clock, nowMs }: { clock: RoundClockState; nowMs: number }) {
  const { t } = useTranslation()
  const left = leftMs(clock, nowMs)
  const ms = left ?? playedMs(clock, nowMs)
  return (
    <div className={styles.clock}>
      <LongClock ms={ms} direction={left === null ? 'up' : 'down'} className={styles.face} />
      <span className={styles.word}>{t(left === null ? 'bench:clock.soFar' : 'bench:clock.left')}</span>
    </div>
  )
}
