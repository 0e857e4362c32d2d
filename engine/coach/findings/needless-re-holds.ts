/**
 * Re-holds one after the other that lead back to the same hold. They are free; it is said kindly, and last.
 *
 *     y y' F A F'
 */

import { holdOf } from '../../cube/hold.ts'
import { afterReHolds } from '../step-segments.ts'
import type { TurnTrack } from '../turn-track.ts'
import type { Finding } from './finding.ts'

/** @returns one finding for each such row, wherever it stands */
export function needlessReHolds(track: TurnTrack): Finding[] {
  const findings: Finding[] = []
  for (let from = 0; from < track.turns.length; from++) {
    const until = backInHold(track, from)
    if (until === null) continue
    const details = { key: 'coach/needless-re-hold', nReHolds: until - from } as const
    findings.push({ details, from, to: until, since: from, until, costTurns: 0 })
    from = until
  }
  return findings
}

/** @returns the last moment of a row of re-holds at which the hold is that of `from` again; null when there is none */
function backInHold(track: TurnTrack, from: number): number | null {
  const holdAt = (moment: number) => holdOf(track.standings[moment].position)
  for (let moment = afterReHolds(track, from); moment > from; moment--) {
    if (holdAt(moment) === holdAt(from)) return moment
  }
  return null
}
