import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { formatTurns } from '../../../../engine/cube/format-turns.ts'
import { centreAt, HELD_CUBES, turnsToHold } from '../../../../engine/cube/hold.ts'
import { turnLetters } from '../../../../engine/cube/turns.ts'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import { STAGES, type StageSpan } from '../../../../engine/method/stages.ts'
import { turnsOfStep } from '../../../../engine/method/way/lesson-step.ts'
import { brokenStage, lessonSteps, nextLessonStep, writeStep } from '../../../../engine/method/way/lesson-steps.ts'
import { aPosition, cubeAfter, SEED, turns } from '../../cube/arbitraries.ts'
import { anArrangementOf, aSpan } from '../starts.ts'
import { colourAt, nSequencesLeft, SIDE_HOLDS, walk } from './walk-steps.ts'

const aBook = fc.constantFrom(LESSON_BOOK, CLASSIC_BOOK)
const someRuns = { seed: SEED, numRuns: 150 }

test('[LW11] the steps are the lesson way', () => {
  fc.assert(
    fc.property(aPosition, aSpan, aBook, (position, span, book) => {
      const steps = lessonSteps(position, span, book)
      expect(steps.flatMap(turnsOfStep)).toEqual(lessonWay(position, span, book))
      expect(JSON.parse(JSON.stringify(steps))).toEqual(steps)
    }),
    someRuns,
  )
})

test('[LW11] wherever a student stops on the way, the way from there is what was left of it', () => {
  fc.assert(
    fc.property(aPosition, fc.constantFrom(...STAGES), aBook, (position, to, book) => {
      const span: StageSpan = { from: to, to }
      const steps = lessonSteps(position, span, book)
      let nDone = 0
      walk(position, steps, (_, __, after) => {
        nDone++
        expect(nextLessonStep(after, span, book)).toEqual(steps[nDone])
      })
    }),
    someRuns,
  )
})

test('[LW7] a step is a re-hold or none, a top turn or none, and one sequence of the book, repeated only at stage 2', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      const steps = lessonSteps(position, { from: 1, to: 7 }, book)
      steps.forEach((step, index) => {
        const { key, topTurn, sequenceIndex, nTimes } = step.do
        if (step.lookFor.key === 'look/base-not-down') {
          expect([index, step.hold.turns.length, key]).toEqual([0, 1, 'do/nothing-more'])
          return
        }
        expect(formatTurns(step.hold.turns)).toMatch(/^(y['2]?)?$/u)
        if (topTurn !== null) expect(formatTurns([topTurn])).toMatch(/^U/u)
        expect(nTimes).toBeLessThanOrEqual(step.stage === 2 ? 5 : 1)
        const sequence = sequenceIndex === null ? [] : book.stages[step.stage][sequenceIndex].turns
        const repeated = Array.from({ length: nTimes }, () => sequence).flat()
        expect(step.do.turns).toEqual([...(topTurn === null ? [] : [topTurn]), ...repeated])
        expect(key).toBe(nTimes === 0 ? 'do/top-turn' : nTimes === 1 ? 'do/sequence' : 'do/sequence-again')
      })
    }),
    someRuns,
  )
})

test('[LW7] with the lesson book top turns of the last layer stand only at the end of stage 6, to align', () => {
  fc.assert(
    fc.property(anArrangementOf(4), (start) => {
      walk(start, lessonSteps(start, { from: 4, to: 7 }), (step, _, after) => {
        if (step.do.topTurn === null) return
        expect([step.stage, step.do.sequenceIndex, step.hold.mark.key]).toEqual([6, null, 'hold/any'])
        expect(goalMet(after, 6)).toBe(true)
      })
    }),
    someRuns,
  )
})

test('[LW8] no step breaks a goal that was met before it', () => {
  fc.assert(
    fc.property(aPosition, aBook, (position, book) => {
      walk(position, lessonSteps(position, { from: 1, to: 7 }, book), (step, before, after) => {
        expect(goalsBeforeMet(before, step.stage)).toBe(true)
        expect(goalsBeforeMet(after, step.stage)).toBe(true)
        expect(goalMet(before, step.stage)).toBe(false)
      })
    }),
    someRuns,
  )
})

test('[LW12] where an earlier layer is broken the way starts there and says so', () => {
  fc.assert(
    fc.property(aPosition, aSpan, (position, span) => {
      const broken = brokenStage(position, span.from)
      expect(broken === null).toBe(goalsBeforeMet(position, span.from))
      const steps = lessonSteps(position, span)
      if (broken !== null) expect([steps[0].stage, steps[0].isRepair]).toEqual([broken, true])
      for (const step of steps) expect(step.isRepair).toBe(step.stage < span.from)
    }),
    someRuns,
  )
  // A corner was lost on the way to the top cross.
  const lost = cubeAfter("F U R U' R' F' R U R' U'")
  expect(brokenStage(lost, 4)).toBe(2)
  expect(lessonSteps(lost, { from: 4, to: 4 }).map(({ stage, isRepair }) => [stage, isRepair])[0]).toEqual([2, true])
})

test('[LW7] held in any of the 24 holds the way is the same after the base has been brought down', () => {
  fc.assert(
    fc.property(aPosition, fc.nat(HELD_CUBES.length - 1), aSpan, aBook, (start, hold, span, book) => {
      const held = afterTurns(start, turnsToHold(hold))
      fc.pre(!goalMet(held, span.to))
      const [first, ...others] = lessonSteps(held, span, book)
      const isBaseDown = centreAt(held, 'D') === 'D'
      expect(first.lookFor.key === 'look/base-not-down').toBe(!isBaseDown)
      if (!isBaseDown) expect(others).toEqual(lessonSteps(afterTurns(held, turnsOfStep(first)), span, book))
    }),
    someRuns,
  )
})

test.each(LAST_LAYER_STAGES)('[LW7] at stage %i the four holds with the base down need as many sequences', (stage) => {
  for (const book of [LESSON_BOOK, CLASSIC_BOOK]) {
    for (const position of arrangementsOf(stage)) {
      const counts = SIDE_HOLDS.map((reHold) => nSequencesLeft(afterTurns(position, turns(reHold)), stage, book))
      expect(new Set(counts).size).toBe(1)
    }
  }
})

test('[LW17] at stages 1 and 4 to 7 no step of the lesson turns one layer twice in a row', () => {
  fc.assert(
    fc.property(fc.oneof(aPosition, anArrangementOf(4)), (start) => {
      walk(start, lessonSteps(start, { from: 1, to: 7 }), (step) => {
        const letters = step.do.turns.map(turnLetters)
        // At stages 2 and 3 the layer is first aligned, and a trigger begins with a turn of the same layer.
        const from = (step.stage === 2 || step.stage === 3) && step.do.topTurn !== null ? 1 : 0
        const isTwice = letters.slice(from).some((letter, index, row) => letter === row[index + 1])
        expect([step.stage, formatTurns(step.do.turns), isTwice]).toEqual([
          step.stage,
          formatTurns(step.do.turns),
          false,
        ])
      })
    }),
    someRuns,
  )
})

test('[LW18] an edge in the middle layer is brought up in one way on each side, whatever else is done', () => {
  const seen = new Set<string>()
  fc.assert(
    fc.property(aPosition, (start) => {
      walk(start, lessonSteps(start, { from: 1, to: 1 }), (step, before) => {
        const { lookFor, hold } = step
        if (lookFor.key !== 'look/edge-between' || lookFor.piece === null) return
        const at = 'at' in hold.mark ? hold.mark.at : ''
        expect(colourAt(afterTurns(before, hold.turns), String(at), 'F')).toBe('D')
        seen.add(`${at} ${writeStep(step).do}`)
      })
    }),
    { seed: SEED, numRuns: 600 },
  )
  expect([...seen].sort()).toEqual(['FL B', 'FR A'])
})

test.each([
  ["R U R' U' R U R' U' R U R' U'", 2, '', 'A^3'],
  ["R U R' U' R U R' U' R U R' U' U2 y", 2, '', 'U2 B^3'],
  ["F' U' F U R U R' U'", 3, '', 'A y B'],
  ["F R U R' U' F' y2", 4, 'y2', "F A F'"],
  ['U', 6, '', "U'"],
] as const)(
  '[LW11] after %s the step of stage %i is written as the book does: hold "%s", do "%s"',
  (setup, stage, hold, done) => {
    const step = nextLessonStep(cubeAfter(setup), { from: stage, to: stage })
    expect(step && writeStep(step)).toEqual({ hold, do: done })
  },
)

test('[LW11] a step of another book is written in its spelling', () => {
  const step = nextLessonStep(cubeAfter('F2'), { from: 1, to: 1 }, CLASSIC_BOOK)
  expect(step && writeStep(step, CLASSIC_BOOK)).toEqual({ hold: '', do: 'F2' })
})
