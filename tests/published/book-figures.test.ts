/**
 * How far our two books lead, stage by stage.
 * Sources: stages 4 to 7 of the lesson's book are common practice, no source, computed independently of the project;
 * the numbers of arrangements are counting (8!, 12! and so on); all other figures are the checker's own, written down so
 * that a change is seen.
 */

import { expect, test } from 'vitest'
import { checkBook } from '../../engine/method/book/check-book.ts'
import { CLASSIC_BOOK } from '../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import { arrangementsOf } from '../../engine/method/last-layer-arrangements.ts'
import { lessonSteps } from '../../engine/method/way/lesson-steps.ts'

const lesson = checkBook(LESSON_BOOK)
const classic = checkBook(CLASSIC_BOOK)

test.each([
  // 12*11*10*9 * 2^4, 8*7*6*5 * 3^4, 8*7*6*5 * 2^4; 2^3, 3^3, 4!, 4!/2.
  [1, 190_080],
  [2, 136_080],
  [3, 26_880],
  [4, 8],
  [5, 27],
  [6, 24],
  [7, 12],
])('[BK9] stage %i is proved over all its %i arrangements', (stage, nArrangements) => {
  expect(lesson.stages[stage - 1].nArrangements).toBe(nArrangements)
  expect(classic.stages[stage - 1].nArrangements).toBe(nArrangements)
})

test.each([
  [4, 3, 11 / 8],
  [5, 3, 60 / 27],
  [6, 2, 1],
  [7, 2, 1.5],
])('[BK9] the lesson at stage %i: at most %i sequences, on average %d', (stage, longest, mean) => {
  const { figures } = lesson.stages[stage - 1]
  expect(figures?.sequences.longest).toBe(longest)
  expect(figures?.sequences.mean).toBeCloseTo(mean, 12)
})

test('[BK9] the lesson at stage 6: 0, 1 and 2 sequences for 4, 16 and 4 arrangements', () => {
  const counts = arrangementsOf(6).map((position) =>
    lessonSteps(position, { from: 6, to: 6 }).reduce((sum, step) => sum + step.do.nTimes, 0),
  )
  expect([0, 1, 2].map((wanted) => counts.filter((count) => count === wanted).length)).toEqual([4, 16, 4])
})

test('[BK9] the trigger brings a corner home in at most five, here three, repeats', () => {
  const [cases] = [lesson.stages[1].cases]
  const begins = cases.flatMap(({ begins }) => begins.map((begin) => begin.do))
  expect(new Set(begins)).toEqual(new Set(['A', 'B', 'A^2', 'B^2', 'A^3', 'B^3']))
  // As it is taught: in front of the corner's place, right hand or left hand.
  expect(cases.find(({ caseId }) => caseId === 'corner-above-facing-up')?.begins).toEqual([
    { hold: { key: 'hold/piece-above-home', at: 'URF', home: 'DFR' }, do: 'A^3' },
    { hold: { key: 'hold/piece-above-home', at: 'UFL', home: 'DLF' }, do: 'B^3' },
  ])
})

// Holds as the trade teaches them: for F A F' dot any, line from left to right, corner shape with its arms back and left; at
// stages 6 and 7 any hold where no side stands out. The hold for neighbours that change places is the checker's own.
test.each([
  [4, 'dot', { key: 'hold/any' }],
  [4, 'line', { key: 'hold/line', along: 'left-to-right' }],
  [4, 'corner-shape', { key: 'hold/arms', at: ['B', 'L'] }],
  [6, 'pair', { key: 'hold/pair', side: 'B' }],
  [6, 'diagonal', { key: 'hold/any' }],
  [7, 'three-clockwise', { key: 'hold/finished-side', side: 'F' }],
  [7, 'three-anticlockwise', { key: 'hold/finished-side', side: 'F' }],
  [7, 'across', { key: 'hold/any' }],
  [7, 'beside', { key: 'hold/exchange', at: ['UF', 'UR'] }],
])('[BK9] the lesson at stage %i holds the case %s so: %j', (stage, caseId, hold) => {
  const found = lesson.stages[stage - 1].cases.find((each) => each.caseId === caseId)
  expect(found?.begins.map((begin) => begin.hold)).toEqual([hold])
})

/** Stages 1 to 7, then the whole cube: sequences, longest and mean; turns, longest and mean. */
const LESSON_FIGURES = [
  [8, 5.4258, 24, 14.9251],
  [12, 5.7582, 52, 25.7217],
  [8, 4.1345, 68, 35.5312],
  [3, 1.375, 18, 8.25],
  [3, 2.2222, 72, 53.3333],
  [2, 1, 57, 28.7083],
  [2, 1.5, 96, 72],
  [38, 21.4158, 387, 238.4696],
]
/** Stages 1 to 7, then the whole cube: sequences, longest and mean; turns, longest and mean. */
const CLASSIC_FIGURES = [
  [8, 5.5671, 28, 15.2249],
  [8, 4.3012, 32, 19.0645],
  [8, 4.1345, 68, 35.5315],
  [2, 1, 12, 6],
  [2, 1.6296, 14, 11.4074],
  [1, 0.8333, 18, 9.5417],
  [2, 1.0833, 22, 11.9167],
  [31, 18.5491, 194, 108.6866],
]

test.each([
  ['Two triggers', lesson, LESSON_FIGURES],
  ['Classic sequences', classic, CLASSIC_FIGURES],
])('[BK9] sequences and turns of %s, longest and mean', (title, report, wanted) => {
  const rows = [...report.stages, report].map(({ figures }) => [
    figures?.sequences.longest,
    Number(figures?.sequences.mean.toFixed(4)),
    figures?.turns.longest,
    Number(figures?.turns.mean.toFixed(4)),
  ])
  expect(rows).toEqual(wanted)
  expect(report.title).toBe(title)
})
