/**
 * What is easy and what is hard at a stage, computed instead of written down: at stages 4 to 7 by how many sequences the
 * lesson way of a case needs, at stages 1 to 3 by par.
 */

import type { CaseReport } from '../../method/book/book-report.ts'
import { checkCaseStage } from '../../method/book/check-case-stage.ts'
import { LESSON_BOOK } from '../../method/book/lesson-book.ts'
import { type CaseId, isCaseOf, type LastLayerStage } from '../../method/cases.ts'
import { assert } from '../../result.ts'

/** How much of the starts of a stage a range of hard pars takes in, at most. */
const HARD_SHARE = 1 / 3

/** @returns the cases of a stage that need a sequence, the fewest first; a case that is only turned into line is left out */
export function casesByLength(stage: LastLayerStage): readonly CaseId[] {
  return checkCaseStage(stage, LESSON_BOOK.stages[stage])
    .cases.filter(({ figures }) => figures !== null && figures.sequences.mean > 0)
    .sort((one, other) => lengthOf(one) - lengthOf(other))
    .map(({ caseId }) => {
      assert(isCaseOf(caseId, stage), `${caseId} is a case of stage ${stage}`)
      return caseId
    })
}

/** The longest way counts first, then the mean one, in sequences and then in turns. */
function lengthOf({ figures }: CaseReport): number {
  assert(figures !== null, 'the lesson book finishes every case')
  const { sequences, turns } = figures
  return sequences.longest * 1e6 + sequences.mean * 1e4 + turns.mean
}

/**
 * @param distribution how many starts have par 0, 1, 2, ...; those of par 0 are never dealt
 * @returns the least par from which on at most a third of the starts remain; the greatest par where it alone is more
 */
export function hardParFrom(distribution: readonly number[]): number {
  const nDealt = distribution.slice(1).reduce((sum, n) => sum + n, 0)
  let nRemaining = 0
  for (let par = distribution.length - 1; par > 1; par--) {
    nRemaining += distribution[par]
    if (nRemaining + distribution[par - 1] > nDealt * HARD_SHARE) return par
  }
  return 1
}
