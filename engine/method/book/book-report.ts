/** What the checker says about a book: plain data, for a screen, a file or the command line. */

import type { StageCaseId } from '../piece-cases.ts'
import type { Stage } from '../stages.ts'
import type { HoldMark } from '../way/hold-mark.ts'
import type { BookFault } from './book-fault.ts'

/** The longest of several ways, and their mean. */
export type Figures = { readonly longest: number; readonly mean: number }

/** Ways counted in sequences and in turns (outer block turns, the top turns between the sequences included). */
export type WayFigures = { readonly sequences: Figures; readonly turns: Figures }

/** How a case is begun: how the cube is held, and then the top turn and the sequence in the book's own spelling. */
export type CaseBegin = { readonly hold: HoldMark; readonly do: string }

/** What the book does with one case. */
export type CaseReport = {
  readonly caseId: StageCaseId
  /**
   * 0..1, of the stage. At stages 4 to 7 among its arrangements; at stages 1 to 3 among the situations of one piece that
   * is not home: every place and twist, with every set of other pieces of the stage done, each counted once.
   */
  readonly share: number
  /** The different ways to begin, as told from the four sides; for one piece also with other pieces done. */
  readonly begins: readonly CaseBegin[]
  /** To the goal of the stage (4 to 7), or until the piece is home (1 to 3). Null while some of the case never ends. */
  readonly figures: WayFigures | null
}

/** What might be a slip but does no harm. */
export type BookRemark =
  /** No shortest way needs the sequence. */
  { readonly code: 'method/unused-sequence'; readonly stage: Stage; readonly sequenceIndex: number }

/** What the book does with one stage. */
export type StageReport = {
  readonly stage: Stage
  /** Empty for a stage that can be taught. The figures of a faulty stage are those without its faulty sequences. */
  readonly faults: readonly BookFault[]
  readonly remarks: readonly BookRemark[]
  /** Without the case of the goal, where there is nothing to do. */
  readonly cases: readonly CaseReport[]
  /** Starts of the stage as far as its own four pieces go: 190,080, 136,080, 26,880, 8, 27, 24, 12. */
  readonly nArrangements: number
  /** Exact over all of them, each equally likely, those at the goal included. Null while one is never finished. */
  readonly figures: WayFigures | null
}

/** What the checker says about a book. */
export type BookReport = {
  readonly title: string
  /** No stage has a fault: the book leads from every legal position to the solved cube. */
  readonly isSound: boolean
  readonly stages: readonly StageReport[]
  /**
   * From any legal position to the solved cube, each equally likely; null while some stage is not finished. Exact sums of
   * the stages: the way of a stage looks at the stage's pieces alone, so it leaves all that comes later equally likely.
   */
  readonly figures: WayFigures | null
}
