/** When a row of turns first reaches a goal. */

import { applyTurn } from '../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../cube/cube-position.ts'
import type { Turn } from '../cube/turns.ts'
import { goalMet } from './goals.ts'
import type { Stage } from './stages.ts'

/**
 * @param start stays as it is
 * @returns how many of the turns (re-holds counted as entries of the row) lead to the goal for the first time: 0 when the
 *   start meets it already, null when it is never met
 */
export function stepsBeforeGoal(start: CubePosition, turns: readonly Turn[], to: Stage): number | null {
  const position = copyCube(start)
  if (goalMet(position, to)) return 0
  for (const [index, turn] of turns.entries()) {
    applyTurn(position, turn)
    if (goalMet(position, to)) return index + 1
  }
  return null
}
