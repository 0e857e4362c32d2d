/** What is found out about a stage, whichever way it is taught, and how a case's line of the report is gathered. */

import { formatTurns } from '../../cube/format-turns.ts'
import type { StageCaseId } from '../piece-cases.ts'
import type { BookSequence } from '../sequence-book.ts'
import type { HoldMark } from '../way/hold-mark.ts'
import type { LessonChoice } from '../way/lesson-choice.ts'
import type { CaseBegin, CaseReport } from './book-report.ts'
import { formatRepeated } from './format-book.ts'
import { figuresOf, newTally, type Tally } from './tally.ts'

/** Findings about a stage. */
export type StageFindings = {
  /** Over all arrangements. */
  readonly total: Tally
  /** Places, in the list of the stage, of the sequences that some way uses. */
  readonly used: ReadonlySet<number>
  /** Cases that an arrangement shows from which no way leads on. */
  readonly stuckCases: ReadonlySet<StageCaseId>
  readonly cases: readonly CaseReport[]
}

/** A case's line while it is gathered. */
export type CaseDraft = { readonly tally: Tally; readonly begins: Map<string, CaseBegin> }

/** @returns an empty line */
export function newCaseDraft(): CaseDraft {
  return { tally: newTally(), begins: new Map() }
}

/** Notes a way to begin, once. */
export function noteBegin(
  draft: CaseDraft,
  hold: HoldMark,
  { topTurn, sequenceIndex, nTimes }: LessonChoice,
  sequences: readonly BookSequence[],
): void {
  const written = sequenceIndex === undefined ? '' : formatRepeated(sequences[sequenceIndex].written, nTimes)
  // At stages 1 to 3 the top turn brings the piece to the place that the mark names, from wherever it is.
  const isInMark = 'at' in hold && 'home' in hold
  const begin = { hold, do: `${topTurn === undefined || isInMark ? '' : formatTurns([topTurn])} ${written}`.trim() }
  draft.begins.set(JSON.stringify(begin), begin)
}

/** @param nAll situations of the whole stage */
export function caseReport(caseId: StageCaseId, { tally, begins }: CaseDraft, nAll: number): CaseReport {
  return { caseId, share: tally.nWays / nAll, begins: [...begins.values()], figures: figuresOf(tally) }
}
