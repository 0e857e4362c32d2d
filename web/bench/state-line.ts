/** The one line about what holds just now, the most pressing first. Null while all is as usual. */

import type { TFunction } from 'i18next'
import type { BenchLive } from '../live/bench-live.ts'
import type { PlayPhase } from './bench-face.ts'

type HoldsNow = {
  readonly live: Pick<BenchLive, 'status' | 'view' | 'mine'>
  readonly play: PlayPhase
  /** The server has been asked for a while and has not answered yet. */
  readonly checksLong: boolean
  /** Milliseconds to the server and back; null while that is not known. */
  readonly delayMs: number | null
  /** On a real cube: the turns are written down. */
  readonly isWriting?: boolean
}

/** From here on a child feels it, and wonders. */
const SLOW_MS = 400

export function stateLine(
  t: TFunction,
  { live, play, checksLong, delayMs, isWriting = false }: HoldsNow,
): string | null {
  const { status, view, mine } = live
  const isAway = status === 'away' || status === 'connecting'
  if (play.phase === 'time-up') return t(isAway ? 'bench:timeUpAway' : 'bench:timeUp')
  if (play.phase === 'checking' && isAway) return t('bench:checkingAway')
  if (play.phase === 'checking') return checksLong ? t('bench:checking') : null
  if (isAway) return t(isWriting ? 'bench:written.away' : 'bench:away')
  if (play.phase === 'paused') return t('bench:paused')
  if (play.phase === 'countdown') return t(isWriting ? 'bench:written.countdown' : 'bench:countdown.sentence')
  // Said until the first turn; then the child has other things to read.
  const isLate = view?.me.late === true && mine?.number === 1 && mine.steps.length === 0
  if (isLate) return t('bench:late')
  if (view?.me.asksForHelp === true && play.phase === 'turning') return t('bench:stuck')
  return delayMs !== null && delayMs > SLOW_MS ? t('bench:slow') : null
}
