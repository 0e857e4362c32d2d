/** The clock of a round in each of its phases: what is left, or without a limit what has been played. */

import type { TFunction } from 'i18next'
import { countdownMs, leftMs, playedMs } from '../../engine/contest/round-clock.ts'
import type { RoundView } from '../../engine/wire/views.ts'
import { LongClock } from './long-clock.tsx'

export function RoundClockFace({
  round,
  nowMs,
  className,
}: {
  round: RoundView
  nowMs: number
  className?: string | undefined
}) {
  const { clock, settings } = round
  // Before the signal it shows what there will be.
  const left = clock.phase === 'ready' ? settings.timeLimitMs : leftMs(clock, nowMs)
  // Ended early, the clock shows what was played: nought left would be no news.
  const runsDown =
    settings.timeLimitMs !== null && left !== null && !(clock.phase === 'ended' && clock.reason === 'teacher')
  const ms = runsDown ? left : playedMs(clock, nowMs)
  return <LongClock ms={ms} direction={runsDown ? 'down' : 'up'} className={className} />
}

export function roundClockWords(t: TFunction, round: RoundView, nowMs: number): string {
  const { clock, settings } = round
  switch (clock.phase) {
    case 'ready':
      return t('board:beforeTheSignal')
    case 'paused':
      return t('board:paused')
    case 'ended':
      // What the clock shows then: nought left, or else what was played.
      return t(clock.reason === 'teacher' || settings.timeLimitMs === null ? 'board:overPlayed' : 'board:over')
    case 'void':
      return t('board:void')
    default:
      if (countdownMs(clock, nowMs) > 0) return t('board:beforeTheSignal')
      return t(settings.timeLimitMs === null ? 'board:played' : 'board:left')
  }
}
