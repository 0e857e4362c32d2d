/** Who has a part in a round: everybody who came before its end. */

import type { Round } from '../../engine/contest/round-state.ts'
import type { Seat } from './room-seats.ts'

/** Whether the round was or is for this seat. */
export function tookPart(round: Round, seat: Seat): boolean {
  return round.clock.phase !== 'ended' || seat.joinedAtMs <= round.clock.endedAtMs
}
