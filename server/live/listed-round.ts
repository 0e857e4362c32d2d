/** A round as the list of its room has it: the same of one that is held and of one that only the record has. */

import type { RoundId } from '../../engine/contest/ids.ts'
import type { RoundClock } from '../../engine/contest/round-clock.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Round } from '../../engine/contest/round-state.ts'
import type { RoundOnRecord } from '../store/record.ts'

export type ListedRound = {
  readonly id: RoundId
  readonly number: number
  readonly settings: RoundSettings
  readonly phase: RoundClock['phase']
}

export function listed({ id, number, settings, clock }: Round): ListedRound {
  return { id, number, settings, phase: clock.phase }
}

/** Of a round that another one has followed: it has ended, or it was struck out. */
export function listedFromRecord({ roundId: id, number, settings, isVoid }: RoundOnRecord): ListedRound {
  return { id, number, settings, phase: isVoid ? 'void' : 'ended' }
}
