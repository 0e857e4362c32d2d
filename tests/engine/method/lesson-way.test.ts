import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns, applyTurns } from '../../../engine/cube/apply-turn.ts'
import { copyCube } from '../../../engine/cube/cube-position.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { asHeldHome, HELD_CUBES, turnsToHold } from '../../../engine/cube/hold.ts'
import { turnKind } from '../../../engine/cube/turns.ts'
import { buildCaseGraph } from '../../../engine/method/case-graph.ts'
import { LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import { lessonWay, nextLessonStep, nextLessonTurns } from '../../../engine/method/lesson-way.ts'
import { LESSON_BOOK } from '../../../engine/method/sequence-book.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { cubeAfter, SEED, turns } from '../cube/arbitraries.ts'
import { anArrangementOf } from './starts.ts'

const aSpan = fc
  .tuple(fc.constantFrom(...LAST_LAYER_STAGES), fc.constantFrom(...LAST_LAYER_STAGES))
  .map((ends) => ends.sort((a, b) => a - b))
  .map(([from, to]) => ({ from, to }))
const aSpanAndStart = aSpan.chain((span) => fc.tuple(fc.constant(span), anArrangementOf(span.from)))
const aHold = fc.nat(HELD_CUBES.length - 1)

test('[LW2] the lesson way reaches the goal from every start of stages 4 to 7, in every hold', () => {
  fc.assert(
    fc.property(aSpanAndStart, aHold, ([span, start], hold) => {
      const held = afterTurns(start, turnsToHold(hold))
      expect(goalMet(afterTurns(held, lessonWay(held, span)), span.to)).toBe(true)
    }),
    { seed: SEED, numRuns: 400 },
  )
})

test('[LW2] at the goal there is nothing to do', () => {
  for (const stage of LAST_LAYER_STAGES) {
    for (const position of arrangementsOf(stage)) {
      expect(nextLessonTurns(position, stage).length === 0).toBe(goalMet(position, stage))
    }
  }
})

test('[LW8] no step of the way breaks a goal that was met before it', () => {
  fc.assert(
    fc.property(aSpanAndStart, aHold, ([{ from: stage }, start], hold) => {
      const position = afterTurns(start, turnsToHold(hold))
      for (let next = nextLessonTurns(position, stage); next.length > 0; next = nextLessonTurns(position, stage)) {
        applyTurns(position, next)
        expect(goalsBeforeMet(position, stage)).toBe(true)
      }
    }),
    { seed: SEED },
  )
})

test('[LW7] a step is a top turn or none, a re-hold or none, and the sequence of the stage or, to align, none', () => {
  for (const stage of LAST_LAYER_STAGES) {
    for (const position of arrangementsOf(stage)) {
      const step = nextLessonStep(position, stage)
      if (step === undefined) continue
      if (step.topTurn !== undefined) expect(formatTurns([step.topTurn])).toMatch(/^U/)
      if (step.reHold !== undefined) expect(formatTurns([step.reHold])).toMatch(/^y/)
      if (step.sequence.length > 0) expect(step.sequence).toEqual(LESSON_BOOK[stage][0])
      else expect(step.topTurn).toBeDefined()
    }
  }
})

test('[LW7] top turns stand only at the end of stage 6, where they align the layer', () => {
  for (const stage of LAST_LAYER_STAGES) {
    for (const start of arrangementsOf(stage)) {
      const position = copyCube(start)
      for (let step = nextLessonStep(position, stage); step !== undefined; step = nextLessonStep(position, stage)) {
        applyTurns(position, nextLessonTurns(position, stage))
        if (step.topTurn === undefined) continue
        expect([stage, step.sequence.length, goalMet(position, stage)]).toEqual([6, 0, true])
      }
    }
  }
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

test('[LW2] the way of another book is made of its sequences', () => {
  const book = [turns("F U R U' R' F'"), turns("F R U R' U' F'")]
  const graph = buildCaseGraph(4, book)
  if (!graph.ok) throw new Error(graph.error.code)
  for (const start of arrangementsOf(4)) {
    const position = copyCube(start)
    while (!goalMet(position, 4)) {
      const step = graph.value.firstStep(asHeldHome(position))
      expect(book).toContainEqual(step?.sequence)
      applyTurns(position, nextLessonTurns(position, 4, graph.value))
    }
  }
})

test.each([
  [{ from: 3, to: 7 }, '', 'stage 4'],
  [{ from: 4, to: 7 }, 'R', 'goals before'],
] satisfies Array<[StageSpan, string, string]>)('[LW2] no way is given for %j after %j', (span, written, why) => {
  expect(() => lessonWay(cubeAfter(written), span)).toThrow(why)
})
