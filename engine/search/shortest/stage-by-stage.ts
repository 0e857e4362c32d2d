/**
 * A way to a goal that is no worse than solving each stage for itself as short as can be: a first best known line for goals
 * several stages away.
 */

import { afterTurns, applyTurns } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../cube/cube-position.ts'
import type { Turn } from '../../cube/turns.ts'
import { goalMet } from '../../method/goals.ts'
import { STAGES, type Stage } from '../../method/stages.ts'
import type { ParTables } from '../par/open-par-tables.ts'
import type { ShortestSolutions } from '../par/shortest-solutions.ts'

/** @returns the first stage whose goal is not met, at most `to`; undefined when the goal of `to` is met */
export function firstStageToDo(position: CubePosition, to: Stage): Stage | undefined {
  return STAGES.find((stage) => stage <= to && !goalMet(position, stage))
}

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

/**
 * @param turnsMax is given up beyond so many
 * @returns how many turns `stageByStage` takes; `turnsMax + 1` when it takes more
 */
export function countStageByStage(
  position: CubePosition,
  to: Stage,
  turnsMax: number,
  { parOf }: ParTables,
  { shortestSolutionOf }: ShortestSolutions,
): number {
  let reached = position
  let nTurns = 0
  for (let stage = firstStageToDo(reached, to); stage !== undefined; stage = firstStageToDo(reached, to)) {
    nTurns += parOf(reached, stage)
    if (nTurns > turnsMax) return turnsMax + 1
    if (stage === to) return nTurns
    reached = afterTurns(reached, shortestSolutionOf(reached, stage))
  }
  return nTurns
}
