/** Checks a book at stage 4, 5, 6 or 7, exactly: looks up the way from every arrangement. */

import { afterTurns } from '../../cube/apply-turn.ts'
import { CASES_OF_STAGE, type CaseId, caseOf, type LastLayerStage } from '../cases.ts'
import { goalMet } from '../goals.ts'
import { arrangementsOf } from '../last-layer-arrangements.ts'
import type { BookSequence } from '../sequence-book.ts'
import { buildCaseTable } from '../way/case-table.ts'
import { caseMark } from '../way/hold-mark.ts'
import { asSeen } from '../way/seen-cube.ts'
import { choiceIn } from '../way/stage-table.ts'
import { type CaseDraft, caseReport, newCaseDraft, noteBegin, type StageFindings } from './stage-findings.ts'
import { addCost, newTally } from './tally.ts'

/** @returns what the sequences do with the stage; those with a fault are not used */
export function checkCaseStage(stage: LastLayerStage, sequences: readonly BookSequence[]): StageFindings {
  const table = buildCaseTable(stage, sequences)
  const total = newTally()
  const used = new Set<number>()
  const stuckCases = new Set<CaseId>()
  const drafts = new Map<CaseId, CaseDraft>(CASES_OF_STAGE[stage].map((id) => [id, newCaseDraft()]))
  for (const position of arrangementsOf(stage)) {
    const caseId = caseOf(position, stage)
    const draft = drafts.get(caseId)
    const seen = asSeen(position)
    const cost = table.costOf(seen)
    addCost(total, cost)
    if (cost === Number.POSITIVE_INFINITY) stuckCases.add(caseId)
    if (draft === undefined || goalMet(position, stage)) continue
    addCost(draft.tally, cost)
    const answer = table.next(seen)
    if (answer < 0) continue
    const choice = table.choices[choiceIn(answer)]
    if (choice.sequenceIndex !== undefined) used.add(choice.sequenceIndex)
    const held = asSeen(afterTurns(position, choice.reHold === undefined ? [] : [choice.reHold]))
    noteBegin(draft, caseMark(table, held, choice), choice, sequences)
  }
  const cases = [...drafts].filter(([, { tally }]) => tally.nWays > 0)
  return { total, used, stuckCases, cases: cases.map(([id, draft]) => caseReport(id, draft, total.nWays)) }
}
