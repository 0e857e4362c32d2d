/** The bench, wired to the live state of its seat. */

import { useLocation } from 'wouter'
import { countdownMs } from '../../engine/contest/round-clock.ts'
import { benchActs, useBench } from '../live/bench-live.ts'
import { useDelayMs, useServerNow } from '../live/server-clock.ts'
import { BenchScreen } from './bench-screen.tsx'
import { forgetKept } from './kept-value.ts'

/** The signal must fall for all at the same moment, so the countdown is followed closely; a clock of seconds need not be. */
const COUNTDOWN_EVERY_MS = 50
const CLOCK_EVERY_MS = 250

export default function Bench() {
  const live = useBench()
  const { delayMs } = useDelayMs()
  const [, goTo] = useLocation()
  const clock = live.view?.round?.clock ?? null
  const roughNowMs = useServerNow(CLOCK_EVERY_MS)
  const isCountingDown = clock !== null && countdownMs(clock, roughNowMs) > 0
  const nowMs = useServerNow(isCountingDown ? COUNTDOWN_EVERY_MS : CLOCK_EVERY_MS)
  const leave = () => {
    benchActs.leave()
    forgetKept()
    goTo('/')
  }
  return <BenchScreen live={live} acts={benchActs} serverNowMs={nowMs} delayMs={delayMs} onLeave={leave} />
}
