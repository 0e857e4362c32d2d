/**
 * Outer block turn metric, in which a round is judged: a turn of one face, or of a face with the layer beside it, is 1
 * whatever its angle; a whole-cube rotation is 0.
 * Source: World Cube Association, Regulations 2024, article 12a5. They know no slice turns; one counts as the two outer
 * turns that make it (Regulations 2009, article 12a17-19).
 */

import { type Turn, type TurnKind, turnKind } from './turns.ts'

const COST: Readonly<Record<TurnKind, 0 | 1 | 2>> = { face: 1, wide: 1, slice: 2, 're-hold': 0 }

/** @returns what this turn adds to the count of a try */
export function outerBlockCost(turn: Turn): 0 | 1 | 2 {
  return COST[turnKind(turn)]
}

/** @returns the count of a whole sequence, as written: nothing is cancelled */
export function countOuterBlockTurns(turns: readonly Turn[]): number {
  return turns.reduce((count, turn) => count + outerBlockCost(turn), 0)
}
