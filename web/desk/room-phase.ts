/** What the teacher is doing in the room just now, which decides what the desk shows. */

import type { TFunction } from 'i18next'
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

/** Whether par stands on the class's board now: it does when the round has ended, or when the teacher shows it before. */
export function classSeesPar({ round, parShown }: Pick<DeskView, 'round' | 'parShown'>): boolean {
  return round !== null && (round.clock.phase === 'ended' || parShown)
}

export function roomTitle(t: TFunction, { round, nRounds }: DeskView, phase: RoomPhase): string {
  if (phase === 'planning' || round === null) return t('desk:room.roundNext', { number: nRounds + 1 })
  if (phase === 'playing') return t('board:round', { number: round.number })
  return t(round.clock.phase === 'void' ? 'desk:room.roundVoid' : 'desk:room.roundOver', { number: round.number })
}
