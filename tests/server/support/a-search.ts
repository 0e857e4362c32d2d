/** Searches for tests that are not about searching: pars are looked up, and over several stages the best known way is told. */

import { firstStageToDo } from '../../../engine/method/goals.ts'
import { err, ok } from '../../../engine/result.ts'
import { openParTables } from '../../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../../engine/search/par/open-shortest-solutions.ts'
import { stageByStage } from '../../../engine/search/shortest/stage-by-stage.ts'
import type { AppParts } from '../../../server/app.ts'

export const A_SEARCH: AppParts['search'] = {
  async shortest({ position, to }) {
    const [pars, solutions] = [await openParTables(), await openShortestSolutions()]
    if (!pars.ok || !solutions.ok) throw new Error('the shipped tables open')
    const from = firstStageToDo(position, to)
    const turns = stageByStage(position, to, solutions.value)
    const lowerBound = from === undefined ? 0 : pars.value.parOf(position, from)
    return ok({ turns, lowerBound, proven: turns.length === lowerBound, nNodes: 0 })
  },
  async setup() {
    return err({ code: 'search/failed' })
  },
}
