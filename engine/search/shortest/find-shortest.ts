/**
 * The shortest solution from any legal position to any stage goal, with its proof or with how far the proof has come.
 *
 * One stage away it is looked up. Several stages away a good line is found first: each stage's shortest solution after the
 * other, then by searches that look only where the way seems straight. Then iterative deepening tries every word that is
 * shorter than the best line. Either it meets the goal, and that word is shortest; or no word is left, and
 * the best line is; or it is stopped, and the best line is best known, with the length up to which all words were tried.
 */

import { afterTurns } from '../../cube/apply-turn.ts'
import type { CubePosition } from '../../cube/cube-position.ts'
import { asHeldHome } from '../../cube/hold.ts'
import { type Turn, turnKind } from '../../cube/turns.ts'
import { stepsBeforeGoal } from '../../method/goal-reached.ts'
import { firstStageToDo, goalMet } from '../../method/goals.ts'
import type { Stage } from '../../method/stages.ts'
import { assert } from '../../result.ts'
import type { ParTables } from '../par/open-par-tables.ts'
import type { ShortestSolutions } from '../par/shortest-solutions.ts'
import { turnsAsHeld } from '../par/turns-as-held.ts'
import { deepen } from '../tables/deepen.ts'
import type { OpenTables } from '../tables/lower-bounds.ts'
import { NODES_PER_ASKING } from '../two-phase/node-budget.ts'
import type { ShortestAnswer } from './shortest-answer.ts'
import { stageByStage } from './stage-by-stage.ts'

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
  /** Face turns from the position held home that are known to meet the goal somewhere on their course: an undone setup. */
  readonly known?: ReadonlyArray<readonly Turn[]>
  /** Asked every few thousand nodes: is the time up, or is the answer no longer wanted? */
  readonly shouldStop: () => boolean
}

/** How bold the searches for a better line are, one after the other. */
const BOLDNESSES = [4, 3, 2.25, 1.75]
/** Given up after so many nodes: a quarter of a second. */
const NODES_A_BOLD_SEARCH = 2_000_000

/** @returns the shortest solution, or the best known; always some way to the goal */
export function findShortest(wish: ShortestWish, ground: SearchGround): ShortestAnswer {
  const home = asHeldHome(wish.position)
  const answer = shortestFromHome({ ...wish, position: home }, ground)
  return { ...answer, turns: turnsAsHeld(answer.turns, wish.position) }
}

function shortestFromHome(
  { position, to, known = [], shouldStop }: ShortestWish,
  ground: SearchGround,
): ShortestAnswer {
  const from = firstStageToDo(position, to)
  if (from === undefined) return { turns: [], proven: true, lowerBound: 0, nNodes: 0 }
  if (from === to) {
    const turns = ground.solutions.shortestSolutionOf(position, to)
    return { turns, proven: true, lowerBound: turns.length, nNodes: 0 }
  }
  const lines = [stageByStage(position, to, ground.solutions), ...known].map((way) => upToGoal(position, way, to))
  const better = betterLine(position, to, shortestOf(lines), ground, shouldStop)
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

/**
 * Bold searches, the boldest first: each finds a word of a few turns more than the shortest in a fraction of the time that
 * the proof takes, or gives up. The next one has only to be shorter.
 */
function betterLine(
  position: CubePosition,
  to: Stage,
  best: readonly Turn[],
  { tables }: SearchGround,
  shouldStop: () => boolean,
): { turns: readonly Turn[]; nNodes: number } {
  let turns = best
  let nNodes = 0
  for (const boldness of BOLDNESSES) {
    let nAsked = 0
    const answer = deepen({
      ...tables.boundsFor(position, to),
      isGoal: (word) => goalMet(afterTurns(position, word), to),
      atLeast: 0,
      turnsMax: turns.length - 1,
      boldness,
      shouldStop: () => {
        nAsked++
        return nAsked * NODES_PER_ASKING > NODES_A_BOLD_SEARCH || shouldStop()
      },
    })
    nNodes += answer.nNodes
    // A bold search may pass the goal on a word that it did not believe in when it was shorter.
    if (answer.kind === 'found') turns = upToGoal(position, answer.turns, to)
  }
  return { turns, nNodes }
}

function upToGoal(position: CubePosition, way: readonly Turn[], to: Stage): readonly Turn[] {
  assert(
    way.every((turn) => turnKind(turn) === 'face'),
    'a known way is of face turns, which count one each',
  )
  const nTurns = stepsBeforeGoal(position, way, to)
  assert(nTurns !== null, 'a known way meets the goal')
  return way.slice(0, nTurns)
}

function shortestOf(lines: ReadonlyArray<readonly Turn[]>): readonly Turn[] {
  return lines.reduce((best, line) => (line.length < best.length ? line : best))
}
