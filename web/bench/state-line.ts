/** The one line about what holds just now, the most pressing first. Null while all is as usual. */

import type { TFunction } from 'i18next'
import type { BenchLive } from '../live/bench-live.ts'
import type { PlayPhase } from './bench-face.ts'

export function stateLine(
  t: TFunction,
  { status, view, mine }: BenchLive,
  play: PlayPhase,
  checksLong: boolean,
): string | null {
  const isAway = status === 'away' || status === 'connecting'
  if (play.phase === 'time-up') return t(isAway ? 'bench:timeUpAway' : 'bench:timeUp')
  if (play.phase === 'checking' && isAway) return t('bench:checkingAway')
  if (play.phase === 'checking') return checksLong ? t('bench:checking') : null
  if (isAway) return t('bench:away')
  if (play.phase === 'paused') return t('bench:paused')
  if (play.phase === 'countdown') return t('bench:countdown.sentence')
  // Said until the first turn; then the child has other things to read.
  const isLate = view?.me.late === true && mine?.number === 1 && mine.steps.length === 0
  if (isLate) return t('bench:late')
  return view?.me.asksForHelp === true && play.phase === 'turning' ? t('bench:stuck') : null
}
