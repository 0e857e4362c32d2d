/**
 * Quarter-turn metric: every quarter of an outer turn is 1, so a half turn is 2; a slice is two outer turns; a
 * whole-cube rotation is 0.
 * Source: usual definition; OEIS A080602 counts the positions of the cube by it.
 */

import { type Turn, type TurnKind, turnKind, turnQuarters } from './turns.ts'

const COST_OF_A_QUARTER: Readonly<Record<TurnKind, number>> = { face: 1, wide: 1, slice: 2, 're-hold': 0 }

/** @returns the count of a whole sequence, as written: nothing is cancelled */
export function countQuarterTurnMetric(turns: readonly Turn[]): number {
  return turns.reduce((count, turn) => count + nQuarters(turn) * COST_OF_A_QUARTER[turnKind(turn)], 0)
}

/** A quarter turn back is one quarter too. */
function nQuarters(turn: Turn): 1 | 2 {
  return turnQuarters(turn) === 2 ? 2 : 1
}
