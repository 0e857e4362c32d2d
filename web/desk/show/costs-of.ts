/** What cost most over a lesson: turns over par by case, all students together. Pure. */

import { readSolution } from '../../../engine/coach/read-solution.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { isLastLayerStage } from '../../../engine/method/cases.ts'
import type { StageCaseId } from '../../../engine/method/piece-cases.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import type { ParTables } from '../../../engine/search/par/open-par-tables.ts'
import type { ReviewView } from '../../../engine/wire/views.ts'

/** Of one case; at stages 1 to 3 of the stage as a whole, whose pieces are all alike to a teacher. */
export type CaseCost = {
  readonly stage: Stage
  readonly caseId: StageCaseId | null
  /** Turns over par, summed over everybody who met it. */
  readonly turns: number
  readonly nTimes: number
}

/** @returns the dearest first; cases that cost nothing are left out */
export function costsOf(reviews: readonly ReviewView[], pars: Pick<ParTables, 'parOf'>): CaseCost[] {
  const costs = new Map<string, CaseCost>()
  for (const { round, solutions } of reviews) {
    const start = parseStickers(round.start)
    if (!start.ok) continue
    // A try that never got there says what was hard, not what it cost.
    for (const { turns } of solutions.filter(({ reached }) => reached !== null)) {
      const { episodes } = readSolution({ start: start.value, turns: turns.map(turnOf), span: round.settings, pars })
      for (const { stage, caseId, overPar } of episodes) {
        if (overPar === null) continue
        const shownCase = isLastLayerStage(stage) ? caseId : null
        const key = `${stage} ${shownCase}`
        const before = costs.get(key) ?? { stage, caseId: shownCase, turns: 0, nTimes: 0 }
        costs.set(key, { ...before, turns: before.turns + overPar, nTimes: before.nTimes + 1 })
      }
    }
  }
  return [...costs.values()].filter(({ turns }) => turns > 0).sort((a, b) => b.turns - a.turns || a.stage - b.stage)
}
