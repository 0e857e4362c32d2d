/**
 * Half-turn metric, in which distances between positions are usually given: an outer turn is 1 whatever its angle, a
 * slice turn 2, a whole-cube rotation 0.
 * Source: World Cube Association, Regulations 2009, articles 12a17 to 12a19. On a cube of three layers it agrees with
 * the outer block turn metric of `outer-block-turns.ts`; the two are kept apart because their sources may part.
 */

import { type Turn, type TurnKind, turnKind } from './turns.ts'

const COST: Readonly<Record<TurnKind, number>> = { face: 1, wide: 1, slice: 2, 're-hold': 0 }

/** @returns the count of a whole sequence, as written: nothing is cancelled */
export function countHalfTurnMetric(turns: readonly Turn[]): number {
  return turns.reduce((count, turn) => count + COST[turnKind(turn)], 0)
}
