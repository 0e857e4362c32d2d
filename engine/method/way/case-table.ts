/**
 * A stage of the last layer as a small graph: its arrangements as seen, joined by what a student may do next. The
 * shortest way through it is the lesson way, so no hold and no case is ever written down by hand, and a teacher's own
 * book gets its own way.
 *
 * At most 27 arrangements; built in a few milliseconds.
 * Source of the method: Bellman's equation solved by sweeps, R. Bellman, On a routing problem, 1958.
 */

import { EDGES_AT } from '../../cube/cube-position.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from '../../cube/piece-code.ts'
import { turnOf } from '../../cube/turns.ts'
import type { LastLayerStage } from '../cases.ts'
import { TOP_CORNERS, TOP_EDGES } from '../goal-part.ts'
import { goalMet } from '../goals.ts'
import { arrangementsOf } from '../last-layer-arrangements.ts'
import type { BookSequence } from '../sequence-book.ts'
import { choicesOf, isAsMuchToDo, type LessonChoice } from './lesson-choice.ts'
import { applySeen, asSeen, N_SEEN_PLACES, type SeenCube, seenEffectOf } from './seen-cube.ts'
import { answerOf, DONE, STUCK, type StageTable } from './stage-table.ts'

/** The table of a stage. */
export type CaseTable = StageTable & {
  readonly stage: LastLayerStage
  /** @returns cost of the way from here, infinite when there is none */
  costOf(seen: SeenCube): number
  /**
   * Does the hold not matter for this choice? It does not when the choice, done from any of the four sides, leaves as many
   * steps, sequences and re-holds. Turns do not count: another hold may leave the top layer to be aligned at the end.
   */
  isAnyHoldGood(seen: SeenCube, choice: LessonChoice): boolean
}

/** Above every number of `arrangementNumber`. */
const N_NUMBERS = 256
const NOWHERE = -1

/** Here a student looks anew after each sequence: it is another case then. */
const TIMES_IN_A_STEP = 1

const QUARTER_RE_HOLD = seenEffectOf([turnOf('y')])

/**
 * @param sequences the book's list for the stage; those with a fault are not used
 * @returns the table, with infinite costs where the book has no way
 */
export function buildCaseTable(stage: LastLayerStage, sequences: readonly BookSequence[]): CaseTable {
  const arrangements = arrangementsOf(stage)
  const seenCubes = arrangements.map(asSeen)
  const numbers = seenCubes.map((seen) => arrangementNumber(stage, seen))
  const costs = new Float64Array(N_NUMBERS).fill(Number.POSITIVE_INFINITY)
  arrangements.forEach((arrangement, index) => {
    if (goalMet(arrangement, stage)) costs[numbers[index]] = 0
  })
  const isGoal = Uint8Array.from(costs, (cost) => Number(cost === 0))
  const choices = choicesOf(stage, sequences, TIMES_IN_A_STEP)
  const steps = choices.map((choice) => stepsOf(choice, stage, seenCubes, numbers, isGoal))
  findCosts(costs, choices, steps)
  const firsts = findFirsts(costs, choices, steps)

  return {
    stage,
    choices,
    next(seen) {
      const first = firsts[arrangementNumber(stage, seen)]
      return first < 0 ? first : answerOf(0, first)
    },
    costOf: (seen) => costs[arrangementNumber(stage, seen)],
    isAnyHoldGood(seen, { effect }) {
      const after = new Uint8Array(N_SEEN_PLACES)
      // The re-hold of the choice is done too, but from all four sides that is all four sides again.
      const left = heldFromAllSides(seen).map((held) => {
        applySeen(held, effect, after)
        return costs[arrangementNumber(stage, after)]
      })
      return left.every((each) => isAsMuchToDo(each, left[0]))
    },
  }
}

/** @returns the seen cube from all four sides, itself first, each after one more y */
export function heldFromAllSides(seen: SeenCube): SeenCube[] {
  const sides = [seen]
  while (sides.length < 4) {
    const next = new Uint8Array(N_SEEN_PLACES)
    applySeen(sides[sides.length - 1], QUARTER_RE_HOLD, next)
    sides.push(next)
  }
  return sides
}

/** @returns a number that two seen cubes share exactly when the stage sees no difference between them */
function arrangementNumber(stage: LastLayerStage, seen: SeenCube): number {
  let number = 0
  for (let index = 0; index < TOP_EDGES.length; index++) {
    switch (stage) {
      case 4:
        number = 2 * number + edgeFlip(seen[TOP_EDGES[index]])
        break
      case 5:
        number = 3 * number + cornerTwist(seen[TOP_CORNERS[index]])
        break
      case 6:
        number = 4 * number + TOP_CORNERS.indexOf(cornerPiece(seen[TOP_CORNERS[index]]))
        break
      case 7:
        number = 4 * number + TOP_EDGES.indexOf(EDGES_AT + edgePiece(seen[TOP_EDGES[index]]))
        break
    }
  }
  return number
}

/** @returns by arrangement number the number that the choice leads to, or `NOWHERE` when it is no choice there */
function stepsOf(
  { effect, sequenceIndex }: LessonChoice,
  stage: LastLayerStage,
  seenCubes: readonly SeenCube[],
  numbers: readonly number[],
  isGoal: Uint8Array,
): Int16Array {
  const steps = new Int16Array(N_NUMBERS).fill(NOWHERE)
  const after = new Uint8Array(N_SEEN_PLACES)
  seenCubes.forEach((seen, index) => {
    applySeen(seen, effect, after)
    const number = arrangementNumber(stage, after)
    // A top turn alone is for the end: else any way could begin so.
    if (sequenceIndex !== undefined || isGoal[number]) steps[numbers[index]] = number
  })
  return steps
}

/** Sweeps over all arrangements until none finds a cheaper way: at most as many sweeps as the longest way has choices. */
function findCosts(costs: Float64Array, choices: readonly LessonChoice[], steps: readonly Int16Array[]): void {
  for (let hasChanged = true; hasChanged; ) {
    hasChanged = false
    for (let choice = 0; choice < choices.length; choice++) {
      for (let number = 0; number < N_NUMBERS; number++) {
        const after = steps[choice][number]
        if (after === NOWHERE || costs[after] + choices[choice].cost >= costs[number]) continue
        costs[number] = costs[after] + choices[choice].cost
        hasChanged = true
      }
    }
  }
}

/** @returns for each arrangement the first choice, in the order of preference, with which a shortest way begins */
function findFirsts(costs: Float64Array, choices: readonly LessonChoice[], steps: readonly Int16Array[]): Int16Array {
  return Int16Array.from(costs, (cost, number) => {
    if (cost === 0) return DONE
    const first = choices.findIndex((choice, index) => {
      const after = steps[index][number]
      return after !== NOWHERE && cost < Number.POSITIVE_INFINITY && costs[after] + choice.cost === cost
    })
    return first < 0 ? STUCK : first
  })
}
