/**
 * Slice-turn metric: a turn of any one layer, outer or middle, is 1 whatever its angle. A wide turn is 1 as well, since
 * turning the far layer the other way does the same; a whole-cube rotation is 0.
 * Source: usual definition.
 */

import { type Turn, type TurnKind, turnKind } from './turns.ts'

const COST: Readonly<Record<TurnKind, number>> = { face: 1, wide: 1, slice: 1, 're-hold': 0 }

/** @returns the count of a whole sequence, as written: nothing is cancelled */
export function countSliceTurnMetric(turns: readonly Turn[]): number {
  return turns.reduce((count, turn) => count + COST[turnKind(turn)], 0)
}
