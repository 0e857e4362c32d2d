/** What a reading holds, on rows that can be checked by hand. Rules CC: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { inverseTurns, turnOf } from '../../../engine/cube/turns.ts'
import { CLASSIC_BOOK } from '../../../engine/method/book/classic-book.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { openParTables } from '../../../engine/search/par/open-par-tables.ts'
import { cubeAfter, SEED, someTurns, turns } from '../cube/arbitraries.ts'
import { aNearbyPosition, anArrangementOf, aSpan } from '../method/starts.ts'

const A = "U R U' R'"
const B = "U' L' U L"
const CROSS = `F ${A} F'`
/** A dot whose lesson way is the sequence of stage 4 three times: dot, line, corner shape, cross. */
const DOT = cubeAfter(formatTurns(inverseTurns(turns(`${CROSS} y ${CROSS} ${CROSS}`))))
const AT_4 = { from: 4, to: 4 } as const

// Origin: each row was turned on a cube by hand; costs by counting what the lesson does before and after.
test.each([
  ['a turn undone', `U U' ${CROSS} y ${CROSS} ${CROSS}`, 'coach/undone', [0, 2], 2],
  ['four quarters', `${CROSS} R R R R y ${CROSS} ${CROSS}`, 'coach/undone', [6, 10], 4],
  [
    'the wrong arms',
    `${CROSS} y ${CROSS} y2 ${CROSS} y2 ${CROSS} y ${CROSS} ${CROSS}`,
    'coach/wrong-hold',
    [14, 20],
    18,
  ],
  ['a top turn', `${CROSS} U ${CROSS} ${CROSS}`, 'coach/needless-top-turn', [6, 7], 1],
  ['re-holds', `${CROSS} y y y' ${CROSS} ${CROSS}`, 'coach/needless-re-hold', [7, 9], 0],
  ['round and round', `${A} ${A} ${A} ${A} ${A} ${A} ${CROSS} y ${CROSS} ${CROSS}`, 'coach/led-nowhere', [0, 24], 24],
  ['the other trigger', `${CROSS} y F ${B} F'`, 'coach/wrong-trigger', [8, 12], null],
] as const)('[CC3] %s', (_, solution, key, range, costTurns) => {
  const { notes } = readSolution({ start: DOT, turns: turns(solution), span: AT_4 })
  expect(notes[0].key).toBe(key)
  expect([notes[0].fromTurn, notes[0].toTurn]).toEqual(range)
  if (costTurns !== null) expect(notes[0].costTurns).toBe(costTurns)
})

test('[CC3] a wrong hold is told by how the arms lay, and by the case that came of it', () => {
  const { notes } = readSolution({ start: DOT, turns: turns(`${CROSS} y ${CROSS} y2 ${CROSS}`), span: AT_4 })
  expect(notes).toHaveLength(1)
  expect(notes[0]).toMatchObject({
    key: 'coach/wrong-hold',
    caseId: 'corner-shape',
    becomes: 'dot',
    held: { key: 'hold/arms', at: ['F', 'R'] },
    advised: { key: 'hold/arms', at: ['B', 'L'] },
    sequence: "F A F'",
  })
})

// Origin: turned on a cube by hand; what each way does to the corner and to the rest, too.
test.each([
  [
    'two turns of one sequence',
    `${CROSS} y F U R' U' R' F`,
    [
      { kind: 'instead', turn: "R'", shouldBe: 'R', atTurn: 9 },
      { kind: 'instead', turn: 'F', shouldBe: "F'", atTurn: 12 },
    ],
  ],
  [
    'one left out, one made twice',
    `${CROSS} y F R U' U' R' F'`,
    [
      { kind: 'leftOut', turn: null, shouldBe: 'U', atTurn: 8 },
      { kind: 'twice', turn: "U'", shouldBe: "U'", atTurn: 10 },
    ],
  ],
] as const)('[CC11] %s that went otherwise are both named, each in its place', (_, solution, slips) => {
  const behind = lessonWay(afterTurns(DOT, turns(solution)), AT_4)
  const { notes } = readSolution({ start: DOT, turns: [...turns(solution), ...behind], span: AT_4 })
  expect(notes[0]).toMatchObject({
    key: 'coach/two-slips',
    sequence: "F A F'",
    slips: slips.map((slip) => ({
      ...slip,
      turn: slip.turn === null ? null : turnOf(slip.turn),
      shouldBe: turnOf(slip.shouldBe),
    })),
  })
})

test('[CC11] three of them are not: what is left would be the beginning of anything', () => {
  const solution = turns(`${CROSS} y F U' R' U' R' F`)
  const behind = lessonWay(afterTurns(DOT, solution), AT_4)
  const { notes } = readSolution({ start: DOT, turns: [...solution, ...behind], span: AT_4 })
  expect(notes.map(({ key }) => key)).not.toContain('coach/two-slips')
})

/** One corner of the first layer is out, above its place; the right trigger brings it home at once. */
const CORNER_OUT = cubeAfter(formatTurns(inverseTurns(turns(A))))
const AT_2 = { from: 2, to: 2 } as const

test.each([
  // Its last turn is of the top layer, and comes after the goal.
  ['the trigger run backwards', "R U R' U' ".repeat(5), 19, 4],
  ['the other trigger, held for it', `y ${`${B} `.repeat(5)}`, 20, 4],
] as const)('[CC12] %s brings the corner home, and is only called long', (_, solution, nTurns, nLessonTurns) => {
  const { notes, isReached } = readSolution({ start: CORNER_OUT, turns: turns(solution), span: AT_2 })
  expect(isReached).toBe(true)
  expect(notes).toHaveLength(1)
  expect(notes[0]).toMatchObject({ key: 'coach/long-way', nTurns, nLessonTurns, costTurns: nTurns - nLessonTurns })
})

test('[CC4] of a try that stops inside a trigger the last note is open and says what is missing', () => {
  const { isReached, notes, episodes } = readSolution({
    start: DOT,
    turns: turns(`${CROSS} y ${CROSS} F U R U'`),
    span: AT_4,
  })
  expect(isReached).toBe(false)
  expect(notes).toHaveLength(1)
  expect(notes[0]).toMatchObject({ key: 'coach/unfinished', side: 'right', isOpen: true, missing: turns("R'") })
  expect(episodes.map(({ isOpen }) => isOpen)).toEqual([false, false, true])
})

test('[CC5] moments are the cases passed; while something is broken there is none', () => {
  const { moments } = readSolution({ start: DOT, turns: turns(`${CROSS} y ${CROSS} y2 ${CROSS}`), span: AT_4 })
  expect(moments.map(({ key, turnIndex }) => [key, turnIndex])).toEqual([
    ['4/dot', 0],
    ['4/line', 6],
    ['4/corner-shape', 13],
    ['4/dot', 20],
  ])
})

test('[CC6] episodes follow each other without gaps, count every turn, and each has its par before and after', async () => {
  const pars = await openParTables()
  if (!pars.ok) throw new Error('the shipped pars can be read')
  fc.assert(
    fc.property(
      aSpan.chain((span) => fc.tuple(fc.constant(span), anArrangementOf(span.from))),
      someTurns,
      ([span, start], more) => {
        const solution = [...more, ...lessonWay(start, span)]
        const { episodes, nRead, nTurns } = readSolution({ start, turns: solution, span, pars: pars.value })
        expect(nTurns).toBe(countOuterBlockTurns(solution.slice(0, nRead)))
        expect(episodes.reduce((sum, episode) => sum + episode.nTurns, 0)).toBe(nTurns)
        episodes.forEach(({ fromTurn, toTurn, isOpen, overPar, nWasted, nTurns: nOwn }, index) => {
          expect(fromTurn).toBe(index === 0 ? 0 : episodes[index - 1].toTurn)
          expect(toTurn).toBeGreaterThan(fromTurn)
          if (isOpen) expect(index).toBe(episodes.length - 1)
          // No episode is under par: par is the fewest.
          if (overPar !== null) expect(overPar).toBeGreaterThanOrEqual(0)
          expect(nWasted).toBeLessThanOrEqual(nOwn)
        })
      },
    ),
    { seed: SEED, numRuns: 150 },
  )
})

test('[CC7] any turns from any position can be read, in any book, and notes come dearest first', () => {
  fc.assert(
    fc.property(aNearbyPosition, someTurns, aSpan, fc.boolean(), (start, made, span, isClassic) => {
      const before = start.slice()
      const reading = readSolution({ start, turns: made, span, ...(isClassic ? { book: CLASSIC_BOOK } : {}) })
      expect([...start]).toEqual([...before])
      const costs = reading.notes.map(({ costTurns }) => costTurns)
      expect(costs).toEqual([...costs].sort((a, b) => b - a))
      for (const { fromTurn, toTurn, costTurns } of reading.notes) {
        expect(costTurns).toBeGreaterThanOrEqual(0)
        expect(fromTurn).toBeLessThan(toTurn)
        expect(toTurn).toBeLessThanOrEqual(reading.nRead)
      }
    }),
    { seed: SEED, numRuns: 400 },
  )
})

test('[CC2] the classic book has a lesson way of its own, about which there is nothing to say', () => {
  fc.assert(
    fc.property(
      aSpan.chain((span) => fc.tuple(fc.constant(span), anArrangementOf(span.from))),
      ([span, start]) => {
        const { notes } = readSolution({ start, turns: lessonWay(start, span, CLASSIC_BOOK), span, book: CLASSIC_BOOK })
        expect(notes).toEqual([])
      },
    ),
    { seed: SEED, numRuns: 300 },
  )
})
