/** What the teacher is doing in the room just now, which decides what the desk shows. */

import type { TFunction } from 'i18next'
import type { SeatId } from '../../engine/contest/ids.ts'
import { isOpen } from '../../engine/contest/round-clock.ts'
import type { DeskView } from '../../engine/wire/views.ts'

export type RoomPhase =
  /** Before the first round, or between two when the settings are opened. */
  'planning' | 'playing' | 'ended'

/** @param opensSettings whether the teacher has opened the settings after a round */
export function roomPhase({ round }: Pick<DeskView, 'round'>, opensSettings: boolean): RoomPhase {
  if (round === null) return 'planning'
  if (isOpen(round.clock)) return 'playing'
  return opensSettings ? 'planning' : 'ended'
}

/** @returns what the plan has now instead of a round; null for a round, and without a plan */
export function nextPart({ plan, rounds }: Pick<DeskView, 'plan' | 'rounds'>): 'demonstrate' | 'review' | null {
  const kind = plan?.plan.parts[plan.at]?.kind
  if (kind === 'example') return 'demonstrate'
  return kind === 'review' && rounds.some(({ phase }) => phase === 'ended') ? 'review' : null
}

/** Whether par stands on the class's board now: it does when the round has ended, or when the teacher shows it before. */
export function classSeesPar({ round, parShown }: Pick<DeskView, 'round' | 'parShown'>): boolean {
  return round !== null && (round.clock.phase === 'ended' || parShown)
}

/**
 * Whether simulated students play a round, or played it: they are in the room, but may have come later.
 *
 * @param players lanes or solutions of the round
 */
export function hasPretenders(
  { seats }: Pick<DeskView, 'seats'>,
  players: readonly { readonly seatId: SeatId }[],
): boolean {
  const pretenders = new Set(seats.filter((seat) => seat.pretend).map(({ seatId }) => seatId))
  return players.some(({ seatId }) => pretenders.has(seatId))
}

export function roomTitle(t: TFunction, { round, nRounds }: DeskView, phase: RoomPhase): string {
  if (phase === 'planning' || round === null) return t('desk:room.roundNext', { number: nRounds + 1 })
  if (phase === 'playing') return t('board:round', { number: round.number })
  return t(round.clock.phase === 'void' ? 'desk:room.roundVoid' : 'desk:room.roundOver', { number: round.number })
}
