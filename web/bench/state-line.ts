/** The one line about what holds just now, the most pressing first. Null while all is as usual. */

import type { TFunction } from 'i18next'
import type { BenchLive } from '../live/bench-live.ts'
import type { PlayPhase } from './bench-face.ts'

export function stateLine(t: TFunction, { status }: Pick<BenchLive, 'status'>, play: PlayPhase): string | null {
  const isAway = status === 'away' || status === 'connecting'
  if (play.phase === 'time-up') return t(isAway ? 'bench:timeUpAway' : 'bench:timeUp')
  if (play.phase === 'checking') return t(isAway ? 'bench:checkingAway' : 'bench:checking')
  if (isAway) return t('bench:away')
  if (play.phase === 'paused') return t('bench:paused')
  return play.phase === 'countdown' ? t('bench:countdown.sentence') : null
}
