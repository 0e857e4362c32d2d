/** A clock that may run for seconds or for days: figures below a day, days and hours from there on. */

import { useTranslation } from 'react-i18next'
import { type ClockDirection, ClockFace } from '../ui/clock-face.tsx'
import { daysWords } from './days-words.ts'

type LongClockProps = {
  readonly ms: number
  readonly direction: ClockDirection
  readonly className?: string | undefined
}

const HOUR_MS = 3_600_000

export function LongClock({ ms, direction, className }: LongClockProps) {
  const { t } = useTranslation()
  return (
    <ClockFace ms={ms} direction={direction} isLong={ms >= HOUR_MS} words={daysWords(t, ms)} className={className} />
  )
}
