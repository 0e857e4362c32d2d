/** How far each round of a take-home room is for one student. Pure. */

import type { RoundInList } from '../../engine/wire/views.ts'

/** What a list of rounds says of one: the goal was reached, some turns were made, or none. */
export type RoundState = 'reached' | 'begun' | 'notYet'

/** @param begun whether turns of it are known here */
export function roundState({ bestTurns }: Pick<RoundInList, 'bestTurns'>, begun: boolean): RoundState {
  if (bestTurns !== null) return 'reached'
  return begun ? 'begun' : 'notYet'
}

/** @returns whether the round can no longer be played */
export function roundIsOver({ phase }: Pick<RoundInList, 'phase'>): boolean {
  return phase === 'ended' || phase === 'void'
}

/** @returns the first round whose goal is not reached; null when all are */
export function nextToPlay<Round extends Pick<RoundInList, 'bestTurns' | 'phase'>>(
  rounds: readonly Round[],
): Round | null {
  return rounds.find((round) => round.bestTurns === null && !roundIsOver(round)) ?? null
}
