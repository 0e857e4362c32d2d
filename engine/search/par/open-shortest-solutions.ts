/** Loads the shortest solutions on demand, apart from the pars: they take four times the space and are asked for seldom. */

import type { Result } from '../../result.ts'
import { openedOnce, type ParTableFault } from './packed-table.ts'
import { readShortestSolutions, type ShortestSolutions } from './shortest-solutions.ts'
import { openStagePars } from './stage-pars.ts'

/** @returns the shipped solutions, loaded and read at the first call, the same ones at every later call */
export const openShortestSolutions: () => Promise<Result<ShortestSolutions, ParTableFault>> = openedOnce(
  'solutions',
  async () => (await import('./shortest-solution-data.ts')).SHORTEST_SOLUTION_DATA,
  async (packed) => {
    const stagePars = await openStagePars()
    return stagePars.ok ? readShortestSolutions(packed, stagePars.value) : stagePars
  },
)
