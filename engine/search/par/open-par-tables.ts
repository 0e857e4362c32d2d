/**
 * Par of any start of a single stage, looked up: the fewest face turns from which the goal of the stage can be reached. A
 * wide turn is a face turn and a re-hold, and a slice turn counts two, so no other turns reach it sooner.
 *
 * The values are exact: `making/` shows how they are found. They are shipped one for each class of arrangements and
 * unpacked to a byte for each arrangement, 0.35 MB, when they are opened.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import { asHeldHome, holdOf } from '../../cube/hold.ts'
import { goalsBeforeMet } from '../../method/goals.ts'
import { STAGES, type Stage } from '../../method/stages.ts'
import { assert, ok, type Result } from '../../result.ts'
import { rankArrangement } from './arrangement-rank.ts'
import type { ParTableFault } from './packed-table.ts'
import { openStagePars, type StagePars } from './stage-pars.ts'

/** The pars of all seven stages. */
export type ParTables = {
  /**
   * @param position in any hold; meets the goals before `stage`, which is asserted
   * @returns par in turns, 0 at the goal; in well under 2 microseconds
   */
  readonly parOf: (position: CubePosition, stage: Stage) => number
  /** @returns how many arrangements of the stage have par 0, 1, 2, ... up to the greatest; a new list */
  readonly distributionOf: (stage: Stage) => number[]
  /** @returns the mean par over all arrangements: of a start that was drawn, those at the goal included */
  readonly meanPar: (stage: Stage) => number
}

/** @returns the shipped tables, loaded and unpacked at the first call (some 100 ms), the same ones at every later call */
export async function openParTables(): Promise<Result<ParTables, ParTableFault>> {
  const stagePars = await openStagePars()
  return stagePars.ok ? ok(parTablesFrom(stagePars.value)) : stagePars
}

function parTablesFrom(stagePars: readonly StagePars[]): ParTables {
  const parsOf = (stage: Stage) => stagePars[stage - STAGES[0]].ofArrangements
  const distributionOf = (stage: Stage) => {
    const pars = parsOf(stage)
    const counts = new Array<number>(Math.max(...stagePars[stage - STAGES[0]].ofClasses) + 1).fill(0)
    for (const par of pars) counts[par]++
    return counts
  }
  return {
    parOf: (position, stage) => {
      assert(goalsBeforeMet(position, stage), `a start of stage ${stage} meets the goals before it`)
      return parsOf(stage)[rankArrangement(holdOf(position) === 0 ? position : asHeldHome(position), stage)]
    },
    distributionOf,
    meanPar: (stage) => distributionOf(stage).reduce((sum, n, par) => sum + n * par, 0) / parsOf(stage).length,
  }
}
