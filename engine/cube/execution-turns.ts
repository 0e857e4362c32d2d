/**
 * Execution turn metric, which limits how long a written solution may be: a face turn, a wide turn and a whole-cube
 * rotation are 1 each, whatever their angle.
 * Source: World Cube Association, Regulations 2024, article 12a6. They know no slice turns; one counts as the two outer
 * turns that make it.
 */

import { type Turn, type TurnKind, turnKind } from './turns.ts'

const COST: Readonly<Record<TurnKind, number>> = { face: 1, wide: 1, slice: 2, 're-hold': 1 }

/** @returns the count of a whole sequence, as written: nothing is cancelled */
export function countExecutionTurns(turns: readonly Turn[]): number {
  return turns.reduce((count, turn) => count + COST[turnKind(turn)], 0)
}
