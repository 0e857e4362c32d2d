/** Builders for tests of the contest. */

import { type ClockEvent, changeClock } from '../../../engine/contest/change-clock.ts'
import type { RoundId, SeatId } from '../../../engine/contest/ids.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../engine/contest/round-settings.ts'
import { aNewRound, type Round } from '../../../engine/contest/round-state.ts'
import { type Step, type StepName, stepOf } from '../../../engine/contest/steps.ts'
import { type TurnsSent, takeTurns } from '../../../engine/contest/take-turns.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'

export const ADA = 'ada' as SeatId
export const BO = 'bo' as SeatId

/** Six turns that lead from the default start to a yellow cross; found by undoing the setup, so true by construction. */
const SETUP = "F U R U' R' F'"
export const SOLUTION: StepName[] = ['F', 'R', 'U', "R'", "U'", "F'"]

/** A round of stage 4 whose signal fell at moment 0, unless said otherwise. */
export function aRound(wishes: { settings?: Partial<RoundSettings>; phase?: 'ready' | 'running' } = {}): Round {
  const setup = parseTurns(SETUP)
  if (!setup.ok) throw new Error('the setup is not notation')
  const ready = aNewRound({
    id: 'round' as RoundId,
    number: 1,
    settings: { ...DEFAULT_ROUND_SETTINGS, timeLimitMs: 60_000, ...wishes.settings },
    start: afterTurns(solvedCube(), setup.value),
  })
  if (wishes.phase === 'ready') return ready
  const running = changeClock(ready, { kind: 'started', startsAtMs: 0 })
  if (!running.ok) throw new Error('a new round can start')
  return running.value
}

export function sent(steps: readonly StepName[], wishes: Partial<TurnsSent> = {}): TurnsSent {
  const how = { kept: false, written: false }
  return {
    seatId: ADA,
    late: false,
    how,
    tryNumber: 1,
    from: 0,
    atMs: 1_000,
    ...wishes,
    steps: steps.map(stepOf) as Step[],
  }
}

/** The round after these messages, none of which it refuses. */
export function taken(round: Round, ...events: TurnsSent[]): Round {
  return events.reduce((now, event) => {
    const result = takeTurns(now, event)
    if (!result.ok) throw new Error(result.error.code)
    return result.value.round
  }, round)
}

/** The round after these events of its clock, all of which its phase allows. */
export function clocked(round: Round, ...events: ClockEvent[]): Round {
  return events.reduce((now, event) => {
    const changed = changeClock(now, event)
    if (!changed.ok) throw new Error(changed.error.code)
    return changed.value
  }, round)
}
