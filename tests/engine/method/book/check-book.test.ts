import fc from 'fast-check'
import { expect, test } from 'vitest'
import { outerBlockCost } from '../../../../engine/cube/outer-block-turns.ts'
import type { SequenceFault } from '../../../../engine/method/book/book-fault.ts'
import { checkBook, checkStage } from '../../../../engine/method/book/check-book.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { CASES_OF_STAGE, caseOf, LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import { PIECE_CASES_OF_STAGE, PIECE_STAGES, type StageCaseId } from '../../../../engine/method/piece-cases.ts'
import { STAGES, type Stage } from '../../../../engine/method/stages.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'
import { SEED } from '../../cube/arbitraries.ts'
import { anArrangementOf } from '../starts.ts'
import { aBookText, bookOf } from './books.ts'

const TRIGGERS = "book T\npart A = U R U' R'\npart B = U' L' U L\n"
const REPORTS = [LESSON_BOOK, CLASSIC_BOOK].map((book) => ({ book, report: checkBook(book) }))

function aBook(stage: Stage, ...sequences: string[]) {
  return bookOf(`${TRIGGERS}stage ${stage}\n${sequences.join('\n')}`)
}

test.each([
  // A quarter turn of the right layer, with F's turn of the front around it: the front below is spared.
  [
    5,
    ["F R F'"],
    {
      code: 'method/breaks-earlier-stage',
      stage: 5,
      sequenceIndex: 0,
      broken: [
        { stage: 1, places: ['DR'] },
        { stage: 2, places: ['DRB'] },
        { stage: 3, places: ['BR'] },
        { stage: 4, places: ['UR', 'UF'] },
      ],
    },
  ],
  [
    4,
    ['R'],
    {
      code: 'method/breaks-earlier-stage',
      stage: 4,
      sequenceIndex: 0,
      broken: [
        { stage: 1, places: ['DR'] },
        { stage: 2, places: ['DFR', 'DRB'] },
        { stage: 3, places: ['FR', 'BR'] },
      ],
    },
  ],
  // It keeps two layers and would serve for stage 4, but flips edges of the finished top cross.
  [
    5,
    ["R U2 R' U' R U' R'", "F R U R' U' F'"],
    {
      code: 'method/breaks-earlier-stage',
      stage: 5,
      sequenceIndex: 1,
      broken: [{ stage: 4, places: ['UR', 'UF'] }],
    },
  ],
  // A trigger in the wrong stage: the corner comes out again.
  [
    3,
    ['A'],
    { code: 'method/breaks-earlier-stage', stage: 3, sequenceIndex: 0, broken: [{ stage: 2, places: ['DFR'] }] },
  ],
  [
    7,
    ['U'],
    {
      code: 'method/breaks-earlier-stage',
      stage: 7,
      sequenceIndex: 0,
      broken: [{ stage: 6, places: ['ULB', 'UBR', 'UFL', 'URF'] }],
    },
  ],
  [
    2,
    ['A', 'D'],
    {
      code: 'method/breaks-earlier-stage',
      stage: 2,
      sequenceIndex: 1,
      broken: [{ stage: 1, places: ['DR', 'DF', 'DL', 'DB'] }],
    },
  ],
  [4, ["F R U R' U' F' x2"], { code: 'method/base-not-down', stage: 4, sequenceIndex: 0 }],
  [1, ['F2', 'z'], { code: 'method/base-not-down', stage: 1, sequenceIndex: 1 }],
] satisfies Array<[Stage, string[], SequenceFault]>)(
  '[LW5] at stage %i of %j the sequence that breaks earlier work is rejected, and it is said what it breaks',
  (stage, sequences, fault) => {
    const { faults } = checkStage(aBook(stage, ...sequences), stage)
    // The book's own spelling says which sequence it is.
    expect(faults[0]).toEqual({ ...fault, written: sequences[fault.sequenceIndex] })
  },
)

test('[BK4] a faulty sequence is never used, and the others go on', () => {
  const book = aBook(4, 'R', "F A F'")
  const report = checkStage(book, 4)
  expect(report.faults.map(({ code }) => code)).toEqual(['method/breaks-earlier-stage'])
  expect(report.figures?.sequences).toEqual({ longest: 3, mean: 11 / 8 })
  for (const position of arrangementsOf(4)) {
    const steps = lessonSteps(position, { from: 4, to: 4 }, book)
    expect(steps.every((step) => step.do.sequenceIndex === 1)).toBe(true)
  }
})

test.each([
  [4, ["R R'"], ['dot', 'line', 'corner-shape']],
  [6, ["U U'"], ['pair', 'diagonal']],
  // The pairs across change places, and no others.
  [7, ['M2 U M2 U2 M2 U M2'], ['three-clockwise', 'three-anticlockwise', 'beside']],
  // Nothing turns a middle edge over, or gets it out.
  [3, ["U U'"], [...PIECE_CASES_OF_STAGE[3]]],
  // F2 neither reaches the middle layer nor turns anything over.
  [1, ['F2'], ['edge-above-facing-side', 'edge-between', 'edge-below-turned', 'edge-below-elsewhere']],
] satisfies Array<[Stage, string[], StageCaseId[]]>)(
  '[LW5] at stage %i of %j some cases are never finished: %j',
  (stage, sequences, cases) => {
    const { faults, figures } = checkStage(aBook(stage, ...sequences), stage)
    expect(figures).toBe(null)
    expect(faults.map((fault) => fault.code)).toEqual(['method/cannot-finish'])
    const [fault] = faults
    expect('cases' in fault ? [...fault.cases].sort() : []).toEqual([...cases].sort())
  },
)

test.each(STAGES)('[LW5] stage %i, for which the book has nothing, is said to be left out', (stage) => {
  const { faults, figures } = checkStage(aBook(stage), stage)
  expect([faults, figures]).toEqual([[{ code: 'method/stage-left-out', stage }], null])
})

test('[BK5] one trigger alone finishes stage 2', () => {
  const report = checkStage(aBook(2, 'A'), 2)
  expect(report.faults).toEqual([])
  expect(report.figures?.sequences.longest).toBeGreaterThan(12)
})

test.each(REPORTS)('[BK5] $book.title can be taught: every case of every stage is finished', ({ report }) => {
  expect(report.isSound).toBe(true)
  expect(report.stages.map(({ stage, faults, remarks }) => [stage, faults, remarks])).toEqual(
    STAGES.map((stage) => [stage, [], []]),
  )
})

test.each(REPORTS)(
  '[BK6] the report on $book.title has every case but those at the goal, with hold and figures',
  ({ report }) => {
    expect(JSON.parse(JSON.stringify(report))).toEqual(report)
    for (const { stage, cases } of report.stages) {
      const isLast = stage >= 4
      const wanted = isLast ? CASES_OF_STAGE[stage as 4].slice(stage === 6 ? 0 : 1) : PIECE_CASES_OF_STAGE[stage as 1]
      expect(cases.map(({ caseId }) => caseId)).toEqual(wanted)
      for (const { begins, figures, share } of cases) {
        expect(begins.length).toBeGreaterThan(0)
        expect(begins.every((begin) => begin.do !== '' && begin.hold.key.startsWith('hold/'))).toBe(true)
        expect(figures).not.toBe(null)
        expect(share).toBeGreaterThan(0)
        expect(share).toBeLessThan(1)
      }
      if (!isLast) expect(cases.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
    }
  },
)

test.each(REPORTS)(
  '[BK6] at stages 4 to 7 the figures of $book.title are those of the ways, counted one by one',
  ({ book, report }) => {
    for (const stage of LAST_LAYER_STAGES) {
      const { cases, figures, nArrangements } = report.stages[stage - 1]
      const positions = arrangementsOf(stage)
      expect(nArrangements).toBe(positions.length)
      const nTurns = positions.map((position) => countTurns(lessonWay(position, { from: stage, to: stage }, book)))
      expect(figures?.turns).toEqual({ longest: Math.max(...nTurns), mean: meanOf(nTurns) })
      for (const { caseId, figures: ofCase, share } of cases) {
        const isOfCase = positions.map((position) => caseOf(position, stage) === caseId && !goalMet(position, stage))
        const counts = nTurns.filter((_, index) => isOfCase[index])
        expect(share).toBe(counts.length / positions.length)
        expect(ofCase?.turns).toEqual({ longest: Math.max(...counts), mean: meanOf(counts) })
      }
    }
  },
)

test.each(PIECE_STAGES)('[BK6] at stage %i the figures are those of the ways from drawn starts', (stage) => {
  for (const { book, report } of REPORTS) {
    const { figures } = report.stages[stage - 1]
    const nTurns: number[] = []
    const nSequences: number[] = []
    fc.assert(
      fc.property(anArrangementOf(stage), (start) => {
        nTurns.push(countTurns(lessonWay(start, { from: stage, to: stage }, book)))
        const steps = lessonSteps(start, { from: stage, to: stage }, book)
        nSequences.push(steps.reduce((sum, step) => sum + step.do.nTimes, 0))
      }),
      { seed: SEED, numRuns: 2000 },
    )
    expect(Math.max(...nTurns)).toBeLessThanOrEqual(figures?.turns.longest ?? 0)
    expect(Math.max(...nSequences)).toBeLessThanOrEqual(figures?.sequences.longest ?? 0)
    // Standard errors: less than 0.25 turns and 0.04 sequences.
    expect(Math.abs(meanOf(nTurns) - (figures?.turns.mean ?? 0))).toBeLessThan(1.2)
    expect(Math.abs(meanOf(nSequences) - (figures?.sequences.mean ?? 0))).toBeLessThan(0.2)
  }
})

test('[BK7] a sequence that no shortest way needs is remarked on', () => {
  expect(checkStage(aBook(4, "F A F'", "F A F' F A F'", "R R'"), 4).remarks).toEqual([
    { code: 'method/unused-sequence', stage: 4, sequenceIndex: 2 },
  ])
  expect(checkStage(aBook(3, 'A y B', "B y' A", 'y2'), 3).remarks).toEqual([
    { code: 'method/unused-sequence', stage: 3, sequenceIndex: 2 },
  ])
})

test('[BK5] a teacher with more sequences has a shorter way', () => {
  const { figures } = checkStage(aBook(5, "R U R' U R U2 R'", "L' U' L U' L' U2 L"), 5)
  expect(figures?.sequences.longest).toBe(2)
})

test('[BK8] a book that leads nowhere is reported, never walked: any well-formed book gets its report', () => {
  fc.assert(
    fc.property(aBookText, fc.constantFrom(2, 3, 4, 5, 6, 7), (text, stage) => {
      const book = bookOf(text)
      const { faults, figures } = checkStage(book, stage as Stage)
      expect(figures === null).toBe(
        faults.some(({ code }) => code === 'method/cannot-finish' || code === 'method/stage-left-out'),
      )
      expect(faults.length).toBeLessThanOrEqual(book.stages[stage as Stage].length + 1)
    }),
    { seed: SEED, numRuns: 25 },
  )
})

function countTurns(turns: ReturnType<typeof lessonWay>): number {
  return turns.reduce((count, turn) => count + outerBlockCost(turn), 0)
}

function meanOf(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0) / counts.length
}
