/**
 * A shortest solution of any start of a single stage, at once. For stage 1 the par table is followed downhill; for the
 * others one word is stored for each class of arrangements and seen through the symmetry of the class.
 *
 * Of all shortest solutions of a class the stored one is kindest to fingers: it has the fewest half turns, of these it
 * turns the fewest faces, of these it is the first in the order of turns. That of stage 1 is the first in that order.
 */

import { applyTurn } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../cube/cube-position.ts'
import { asHeldHome } from '../../cube/hold.ts'
import { conjugateTurn, inverseSymmetry } from '../../cube/symmetry.ts'
import { FACE_TURNS, inverseTurn, type Turn } from '../../cube/turns.ts'
import { goalsBeforeMet } from '../../method/goals.ts'
import { STAGES, type Stage } from '../../method/stages.ts'
import { assert, ok, type Result } from '../../result.ts'
import { rankArrangement } from './arrangement-rank.ts'
import { type PackedTable, type ParTableFault, unpackTable } from './packed-table.ts'
import type { StagePars } from './stage-pars.ts'
import { turnsAsHeld } from './turns-as-held.ts'
import { readWord, wordBeginnings } from './word-bytes.ts'

/** Shortest solutions of all seven stages. */
export type ShortestSolutions = {
  /**
   * @param position in any hold; meets the goals before `stage`, which is asserted
   * @returns face turns for this hold, as many as par says, that bring it to the goal of the stage; none at the goal
   */
  readonly shortestSolutionOf: (position: CubePosition, stage: Stage) => Turn[]
}

/** Stages whose words are stored. */
export const STAGES_WITH_WORDS: readonly Stage[] = STAGES.slice(1)

/** @returns the solutions, from a generated module and the pars that tell how long they are */
export function readShortestSolutions(
  packed: PackedTable,
  stagePars: readonly StagePars[],
): Result<ShortestSolutions, ParTableFault> {
  const bytes = unpackTable(packed, 'solutions')
  if (!bytes.ok) return bytes
  const parsOf = (stage: Stage) => stagePars[stage - STAGES[0]]
  const beginnings = wordBeginnings(joined(STAGES_WITH_WORDS.map((stage) => parsOf(stage).ofClasses)))
  const firstWordOf = (stage: Stage) =>
    STAGES_WITH_WORDS.filter((other) => other < stage).reduce((sum, other) => sum + parsOf(other).classes.nClasses, 0)
  const firstWords = STAGES.map(firstWordOf)

  const storedSolution = (homeHeld: CubePosition, stage: Stage) => {
    const { classes, ofClasses } = parsOf(stage)
    const rank = rankArrangement(homeHeld, stage)
    const ofStage = classes.classOf[rank]
    const beginning = beginnings[firstWords[stage - STAGES[0]] + ofStage]
    const fromFirst = inverseSymmetry(classes.toFirst[rank])
    return readWord(bytes.value, beginning, ofClasses[ofStage]).map((turn) => conjugateTurn(turn, fromFirst))
  }

  return ok({
    shortestSolutionOf: (position, stage) => {
      assert(goalsBeforeMet(position, stage), `a start of stage ${stage} meets the goals before it`)
      const homeHeld = asHeldHome(position)
      const solution =
        stage === STAGES[0] ? downhill(homeHeld, parsOf(stage).ofArrangements) : storedSolution(homeHeld, stage)
      return turnsAsHeld(solution, position)
    },
  })
}

/** From each arrangement of stage 1 some turn leads to one of par one less: the first such turn is taken, again and again. */
function downhill(start: CubePosition, pars: Uint8Array): Turn[] {
  const position = copyCube(start)
  const solution: Turn[] = []
  for (let par = pars[rankArrangement(position, 1)]; par > 0; par--) {
    const next = FACE_TURNS.find((turn) => {
      applyTurn(position, turn)
      const isLess = pars[rankArrangement(position, 1)] < par
      if (!isLess) applyTurn(position, inverseTurn(turn))
      return isLess
    })
    assert(next !== undefined, 'a turn leads from every par to the one below')
    solution.push(next)
  }
  return solution
}

/** Words of all stages stand one behind the other, so their lengths are needed as one list. */
function joined(lists: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(lists.flatMap((list) => [...list]))
}
