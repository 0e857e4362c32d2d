import { expect, test } from 'vitest'
import { formatTurns } from '../../../../engine/cube/format-turns.ts'
import { mirrorTurns } from '../../../../engine/cube/mirror-turns.ts'
import { formatWritten } from '../../../../engine/method/book/format-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../../../engine/method/sequence-book.ts'

test('[LW6] the triggers are four turns each and each other in the mirror', () => {
  expect(formatTurns(RIGHT_TRIGGER)).toBe("U R U' R'")
  expect(formatTurns(LEFT_TRIGGER)).toBe("U' L' U L")
  expect(mirrorTurns(LEFT_TRIGGER)).toEqual(RIGHT_TRIGGER)
})

test.each([
  [4, "F U R U' R' F'", 6],
  [5, "U R U' R' U R U' R' U R U' R' y U' L' U L U' L' U L U' L' U L", 25],
  [6, "L' U R U' R' U R U' R' L U R U' R' U R U' R' U R U' R' L' U R U' R' L", 28],
  [
    7,
    "U R U' R' U R U' R' U R U' R' U R U' R' U R U' R' U' L' U L U' L' U L U' L' U L U' L' U L U' L' U L U R U' R' U' L' U L",
    48,
  ],
] as const)('[LW6] stage %i has one sequence: %s', (stage, written, nTurns) => {
  expect(LESSON_BOOK.stages[stage].map((sequence) => formatTurns(sequence.turns))).toEqual([written])
  expect(LESSON_BOOK.stages[stage][0].turns.length).toBe(nTurns)
})

test('[LW6] besides the triggers the sequences hold only the turns that lead in and out', () => {
  const withoutTriggers = LAST_LAYER_STAGES.map((stage) =>
    formatTurns(LESSON_BOOK.stages[stage][0].turns)
      .replaceAll(formatTurns(RIGHT_TRIGGER), 'A')
      .replaceAll(formatTurns(LEFT_TRIGGER), 'B'),
  )
  expect(withoutTriggers).toEqual(["F A F'", 'A A A y B B B', "L' A A L A A A L' A L", 'A A A A A B B B B B A B'])
})

test('[LW6] the lesson teaches a few sequences a stage, spelt with the triggers A and B', () => {
  expect(LESSON_BOOK.parts.map(({ name, turns }) => [name, turns])).toEqual([
    ['A', RIGHT_TRIGGER],
    ['B', LEFT_TRIGGER],
  ])
  const spelt = Object.values(LESSON_BOOK.stages).map((list) => list.map(({ written }) => formatWritten(written)))
  expect(spelt).toEqual([
    ['F2', "R' F R", 'A', 'B'],
    ['A', 'B'],
    ['A y B', "B y' A"],
    ["F A F'"],
    ['A^3 y B^3'],
    ["L' A^2 L A^3 L' A L"],
    ['A^5 B^5 A B'],
  ])
})
