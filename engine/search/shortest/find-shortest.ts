/**
 * The shortest solution from any legal position to any stage goal, with its proof or with how far the proof has come.
 *
 * One stage away it is looked up. Several stages away a good line is found first: all short ways to the goal of the first
 * stage are tried, each followed by the shortest solutions of the stages after it. Then iterative deepening tries every
 * word that is shorter than the best line. Either it meets the goal, and that word is shortest; or no word is left, and
 * the best line is; or it is stopped, and the best line is best known, with the length up to which all words were tried.
 */

import { afterTurns } from '../../cube/apply-turn.ts'
import type { CubePosition } from '../../cube/cube-position.ts'
import { asHeldHome } from '../../cube/hold.ts'
import type { Turn } from '../../cube/turns.ts'
import { stepsBeforeGoal } from '../../method/goal-reached.ts'
import { goalMet } from '../../method/goals.ts'
import type { Stage } from '../../method/stages.ts'
import { assert } from '../../result.ts'
import type { ParTables } from '../par/open-par-tables.ts'
import type { ShortestSolutions } from '../par/shortest-solutions.ts'
import { turnsAsHeld } from '../par/turns-as-held.ts'
import { deepen, NODES_PER_ASKING } from '../tables/deepen.ts'
import type { OpenTables } from '../tables/lower-bounds.ts'
import type { ShortestAnswer } from './shortest-answer.ts'
import { countStageByStage, firstStageToDo, stageByStage } from './stage-by-stage.ts'

/** What a search rests on. */
export type SearchGround = {
  readonly pars: ParTables
  readonly solutions: ShortestSolutions
  /** Those that the goal needs; nothing is asked of them for a goal one stage away. */
  readonly tables: OpenTables
}

export type ShortestWish = {
  /** Any legal position, in any hold. */
  readonly position: CubePosition
  readonly to: Stage
  /** Ways from the position held home that are known to meet the goal somewhere on their course, such as an undone setup. */
  readonly known?: ReadonlyArray<readonly Turn[]>
  /** Asked every few thousand nodes: is the time up, or is the answer no longer wanted? */
  readonly shouldStop: () => boolean
}

/** Spent on a better line before the proof begins: half a second or less. */
const NODES_FOR_BETTER_LINES = 3_000_000

/** Lines shorter than the shortest way to the first goal by deepening are searched at most this far. */
const TURNS_TO_FIRST_GOAL_MAX = 20

/** @returns the shortest solution, or the best known; always some way to the goal */
export function findShortest(wish: ShortestWish, ground: SearchGround): ShortestAnswer {
  const home = asHeldHome(wish.position)
  const answer = shortestFromHome({ ...wish, position: home }, ground)
  return { ...answer, turns: turnsAsHeld(answer.turns, wish.position) }
}

function shortestFromHome({ position, to, known = [], shouldStop }: ShortestWish, ground: SearchGround): ShortestAnswer {
  const from = firstStageToDo(position, to)
  if (from === undefined) return { turns: [], proven: true, lowerBound: 0, nNodes: 0 }
  if (from === to) {
    const turns = ground.solutions.shortestSolutionOf(position, to)
    return { turns, proven: true, lowerBound: turns.length, nNodes: 0 }
  }
  const lines = [stageByStage(position, to, ground.solutions), ...known.map((way) => upToGoal(position, way, to))]
  const better = betterLine(position, from, to, shortestOf(lines), ground, shouldStop)
  const proof = deepen({
    ...ground.tables.boundsFor(position, to),
    isGoal: (turns) => goalMet(afterTurns(position, turns), to),
    atLeast: ground.pars.parOf(position, from),
    turnsMax: better.turns.length - 1,
    shouldStop,
  })
  const nNodes = better.nNodes + proof.nNodes
  if (proof.kind === 'found') return { turns: proof.turns, proven: true, lowerBound: proof.turns.length, nNodes }
  const proven = proof.lowerBound === better.turns.length
  return { turns: better.turns, proven, lowerBound: proof.lowerBound, nNodes }
}

/** Tries the short ways to a goal on the course, each with the shortest solutions of the later stages behind it. */
function betterLine(
  position: CubePosition,
  from: Stage,
  to: Stage,
  best: readonly Turn[],
  ground: SearchGround,
  shouldStop: () => boolean,
): { turns: readonly Turn[]; nNodes: number } {
  // The cross alone has too many short ways; with the first layer to it they are few and say more.
  const first: Stage = from === 1 ? 2 : from
  let turns = best
  let nAsked = 0
  if (first === to) return { turns, nNodes: 0 }
  const { nNodes } = deepen({
    ...ground.tables.boundsFor(position, first),
    atLeast: ground.pars.parOf(position, from),
    turnsMax: Math.min(TURNS_TO_FIRST_GOAL_MAX, best.length - 1),
    isGoal: (way) => {
      const reached = afterTurns(position, way)
      if (!goalMet(reached, first)) return false
      const left = turns.length - 1 - way.length
      if (left < 0) return true
      if (countStageByStage(reached, to, left, ground.pars, ground.solutions) <= left) {
        turns = [...way, ...stageByStage(reached, to, ground.solutions)]
      }
      return false
    },
    shouldStop: () => {
      nAsked++
      return nAsked * NODES_PER_ASKING > NODES_FOR_BETTER_LINES || shouldStop()
    },
  })
  return { turns, nNodes }
}

function upToGoal(position: CubePosition, way: readonly Turn[], to: Stage): readonly Turn[] {
  const nTurns = stepsBeforeGoal(position, way, to)
  assert(nTurns !== null, 'a known way meets the goal')
  return way.slice(0, nTurns)
}

function shortestOf(lines: ReadonlyArray<readonly Turn[]>): readonly Turn[] {
  return lines.reduce((best, line) => (line.length < best.length ? line : best))
}
