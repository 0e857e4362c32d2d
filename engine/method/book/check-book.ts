/**
 * Proves whether a book can be taught: that no sequence undoes earlier work, and that from every start of every stage
 * its sequences lead to the goal; and says how long the ways are. Everything is counted out, nothing is estimated.
 */

import { assert } from '../../result.ts'
import { isLastLayerStage } from '../cases.ts'
import { isPieceStage } from '../piece-cases.ts'
import type { BookSequence, SequenceBook } from '../sequence-book.ts'
import { STAGES, type Stage } from '../stages.ts'
import { type BookFault, sequenceFault } from './book-fault.ts'
import type { BookRemark, BookReport, StageReport } from './book-report.ts'
import { checkCaseStage } from './check-case-stage.ts'
import { checkPieceStage } from './check-piece-stage.ts'
import { formatWritten } from './format-book.ts'
import type { StageFindings } from './stage-findings.ts'
import { figuresOf, sumOfFigures } from './tally.ts'

/**
 * @param book as `parseBook` reads it
 * @returns the report, stage by stage. Takes about a second, most of it for the 352,000 starts of stages 1 to 3.
 */
export function checkBook(book: SequenceBook): BookReport {
  const stages = STAGES.map((stage) => checkStage(book, stage))
  return {
    title: book.title,
    isSound: stages.every(({ faults }) => faults.length === 0),
    stages,
    figures: sumOfFigures(stages.map(({ figures }) => figures)),
  }
}

/** @returns the report on one stage alone, for a screen that checks while a teacher writes */
export function checkStage(book: SequenceBook, stage: Stage): StageReport {
  const sequences = book.stages[stage]
  const findings = findingsOf(stage, sequences)
  const faults: BookFault[] = sequences.flatMap(({ turns, written }, index) => {
    const fault = sequenceFault(turns, stage, index)
    return fault === undefined ? [] : [{ ...fault, written: formatWritten(written) }]
  })
  const cases = [...findings.stuckCases]
  if (sequences.length === 0) faults.push({ code: 'method/stage-left-out', stage })
  else if (cases.length > 0) faults.push({ code: 'method/cannot-finish', stage, cases })
  const faulty = new Set(faults.flatMap((fault) => ('sequenceIndex' in fault ? [fault.sequenceIndex] : [])))
  const remarks = [...sequences.keys()]
    .filter((index) => !findings.used.has(index) && !faulty.has(index))
    .map((sequenceIndex): BookRemark => ({ code: 'method/unused-sequence', stage, sequenceIndex }))
  const { cases: caseReports, total } = findings
  return { stage, faults, remarks, cases: caseReports, nArrangements: total.nWays, figures: figuresOf(total) }
}

function findingsOf(stage: Stage, sequences: readonly BookSequence[]): StageFindings {
  if (isPieceStage(stage)) return checkPieceStage(stage, sequences)
  assert(isLastLayerStage(stage), `stage ${stage} is taught by cases`)
  return checkCaseStage(stage, sequences)
}
