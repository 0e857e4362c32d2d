/** The shortest way to a goal one stage away, which needs no search: it is looked up. */

import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { firstStageToDo } from '../../engine/method/goals.ts'
import type { Stage } from '../../engine/method/stages.ts'
import type { ShortestSolutions } from '../../engine/search/par/shortest-solutions.ts'
import type { ShortestAnswer } from '../../engine/search/shortest/shortest-answer.ts'

/** @returns whether the goal is one stage away at most */
export function isLookedUp(position: CubePosition, to: Stage): boolean {
  const from = firstStageToDo(position, to)
  return from === undefined || from === to
}

/** @param position in any hold, for which `isLookedUp` @returns the answer, which is always proven */
export function lookUpShortest(
  position: CubePosition,
  to: Stage,
  { shortestSolutionOf }: ShortestSolutions,
): ShortestAnswer {
  const turns = firstStageToDo(position, to) === undefined ? [] : shortestSolutionOf(position, to)
  return { turns, proven: true, lowerBound: turns.length, nNodes: 0 }
}
