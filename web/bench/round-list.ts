/** How far each round of a take-home room is for one student. Pure. */

import type { BenchView, RoundInList } from '../../engine/wire/views.ts'

/** What a list of rounds says of one: the goal was reached, some turns were made, or none. */
export type RoundState = 'reached' | 'begun' | 'notYet'

/**
 * @returns the rounds with the best try of the one at hand, which the server tells of that round before it tells it of the list
 */
export function withOwnBest({
  rounds,
  round,
  mine,
}: Pick<BenchView, 'rounds' | 'round' | 'mine'>): readonly RoundInList[] {
  const best = mine?.best?.turns ?? null
  return rounds.map((each) => (each.id === round?.id && best !== null ? { ...each, bestTurns: best } : each))
}

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
