import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns, applyTurns } from '../../../engine/cube/apply-turn.ts'
import { copyCube } from '../../../engine/cube/cube-position.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { HELD_CUBES, turnsToHold } from '../../../engine/cube/hold.ts'
import { turnKind } from '../../../engine/cube/turns.ts'
import { CLASSIC_BOOK } from '../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import { lessonWay, nextLessonTurns } from '../../../engine/method/lesson-way.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { aPosition, cubeAfter, SEED } from '../cube/arbitraries.ts'
import { bookOf } from './book/books.ts'
import { anArrangementOf, aSpan } from './starts.ts'

const aSpanAndStart = aSpan.chain((span) => fc.tuple(fc.constant(span), anArrangementOf(span.from)))
const aHold = fc.nat(HELD_CUBES.length - 1)
const aBook = fc.constantFrom(LESSON_BOOK, CLASSIC_BOOK)

test('[LW2] the lesson way reaches the goal from every start of every span, in every hold, with either book', () => {
  fc.assert(
    fc.property(aSpanAndStart, aHold, aBook, ([span, start], hold, book) => {
      const held = afterTurns(start, turnsToHold(hold))
      expect(goalMet(afterTurns(held, lessonWay(held, span, book)), span.to)).toBe(true)
    }),
    { seed: SEED, numRuns: 600 },
  )
})

test('[LW2] it reaches the goal from positions that turns of any kind lead to, where earlier layers are broken too', () => {
  fc.assert(
    fc.property(aPosition, aSpan, aBook, (position, span, book) => {
      expect(goalMet(afterTurns(position, lessonWay(position, span, book)), span.to)).toBe(true)
    }),
    { seed: SEED, numRuns: 600 },
  )
})

test('[LW2] at the goal there is nothing to do', () => {
  for (const stage of LAST_LAYER_STAGES) {
    for (const position of arrangementsOf(stage)) {
      expect(nextLessonTurns(position, stage).length === 0).toBe(goalMet(position, stage))
    }
  }
  for (const held of HELD_CUBES) expect(lessonWay(held, { from: 1, to: 7 })).toEqual([])
  fc.assert(
    fc.property(aPosition, fc.constantFrom(...STAGES), (position, stage) => {
      expect(nextLessonTurns(position, stage).length === 0).toBe(goalMet(position, stage))
    }),
    { seed: SEED },
  )
})

test('[LW8] no step of the way breaks a goal that was met before it', () => {
  fc.assert(
    fc.property(fc.constantFrom(...STAGES).chain(anArrangementOf), aHold, aBook, (start, hold, book) => {
      const position = afterTurns(start, turnsToHold(hold))
      for (let next = nextLessonTurns(position, 7, book); next.length > 0; next = nextLessonTurns(position, 7, book)) {
        const isMet = STAGES.map((stage) => goalMet(position, stage))
        applyTurns(position, next)
        for (const stage of STAGES) if (isMet[stage - 1]) expect(goalMet(position, stage)).toBe(true)
      }
    }),
    { seed: SEED },
  )
})

test('[LW2] the way is its steps, one after the other', () => {
  fc.assert(
    fc.property(aPosition, fc.constantFrom(...STAGES), aBook, (start, to, book) => {
      const position = copyCube(start)
      const way = lessonWay(start, { from: 1, to }, book)
      const bySteps = []
      while (!goalMet(position, to)) {
        const next = nextLessonTurns(position, to, book)
        applyTurns(position, next)
        bySteps.push(...next)
      }
      expect(bySteps).toEqual(way)
    }),
    { seed: SEED },
  )
})

test('[LW7] a cube held with the base elsewhere is first held right', () => {
  const position = cubeAfter("F R U R' U' F' z")
  const [first] = nextLessonTurns(position, 4)
  expect(turnKind(first)).toBe('re-hold')
  expect(goalMet(afterTurns(position, nextLessonTurns(position, 4)), 4)).toBe(true)
})

// Holds as the trade teaches them: the finished cross's corner shape with its arms back and left.
test.each([
  ["F R U R' U' F'", "F U R U' R' F'"],
  ["F R U R' U' F' y", "y' F U R U' R' F'"],
  ["F R U R' U' F' y2", "y2 F U R U' R' F'"],
  ["F R U R' U' F' y'", "y F U R U' R' F'"],
])('[LW7] at stage 4 after %s the next step is %s', (written, step) => {
  expect(formatTurns(nextLessonTurns(cubeAfter(written), 4))).toBe(step)
})

test('[LW8] at stages 4 to 7 every step keeps the layers below', () => {
  for (const stage of LAST_LAYER_STAGES) {
    for (const start of arrangementsOf(stage)) {
      const position = copyCube(start)
      for (let next = nextLessonTurns(position, stage); next.length > 0; next = nextLessonTurns(position, stage)) {
        applyTurns(position, next)
        expect(goalsBeforeMet(position, stage)).toBe(true)
      }
    }
  }
})

test('[LW2] a book that cannot finish a stage has no way through it, and says so', () => {
  const book = bookOf('book Unfinished\nstage 1\nF2')
  expect(() => lessonWay(cubeAfter("U' R' F R"), { from: 1, to: 1 }, book)).toThrow('leads to the goal of stage 1')
  expect(lessonWay(cubeAfter('F2'), { from: 1, to: 1 }, book).length).toBe(1)
})
