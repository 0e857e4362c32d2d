/**
 * A way to a goal that is no worse than solving each stage for itself as short as can be: a first best known line for goals
 * several stages away.
 */

import { applyTurns } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../cube/cube-position.ts'
import type { Turn } from '../../cube/turns.ts'
import { firstStageToDo } from '../../method/goals.ts'
import type { Stage } from '../../method/stages.ts'
import type { ShortestSolutions } from '../par/shortest-solutions.ts'

/** @returns face turns from a position held home to the goal of `to`: each stage's shortest solution after the other */
export function stageByStage(position: CubePosition, to: Stage, { shortestSolutionOf }: ShortestSolutions): Turn[] {
  const reached = copyCube(position)
  const way: Turn[] = []
  for (let stage = firstStageToDo(reached, to); stage !== undefined; stage = firstStageToDo(reached, to)) {
    const turns = shortestSolutionOf(reached, stage)
    applyTurns(reached, turns)
    way.push(...turns)
  }
  return way
}
