/** Which hint stands, and which rung is the next. Rules HT: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, cubesEqual } from '../../../engine/cube/cube-position.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { STAGES, type Stage } from '../../../engine/method/stages.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import { turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../engine/method/way/lesson-steps.ts'
import { nextHintLevel, type ShownHint, shownHint, toldAt } from '../../../web/parts/hints/shown-hint.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'

const lessonOf = (stage: Stage) => ({ span: { from: stage, to: stage }, book: LESSON_BOOK })
const startOf = (stage: Stage, number: number) =>
  drawStart({ span: { from: stage, to: stage }, random: sourceNumbered(number) })
const aStart = fc.tuple(fc.constantFrom(...STAGES), fc.integer({ min: 0, max: 9_999 }))

/** The position after each turn, the first turn's first. */
const along = (from: CubePosition, turns: ReturnType<typeof turnsOfStep>) =>
  turns.map((_, index) => afterTurns(from, turns.slice(0, index + 1)))

test('[HT1] a hint stands through every turn of the step that it tells of, and goes with its last one', () => {
  fc.assert(
    fc.property(aStart, fc.constantFrom<HintLevel>(1, 2, 3), ([stage, number], level) => {
      const start = startOf(stage, number)
      const lesson = lessonOf(stage)
      const [step] = lessonSteps(start, lesson.span)
      const asked = shownHint(null, start, [level], lesson)
      let shown: ShownHint | null = asked
      const way = along(start, turnsOfStep(step))
      for (const position of way.slice(0, -1)) {
        shown = shownHint(shown, position, [], lesson)
        expect(shown).toBe(asked)
      }
      expect(shownHint(shown, way[way.length - 1], [], lesson)).toBeNull()
    }),
    { seed: SEED, numRuns: 120 },
  )
})

test('[HT1] no hint stands that was not asked for, and none at the goal', () => {
  const start = startOf(4, 1)
  const lesson = lessonOf(4)
  expect(shownHint(null, start, [], lesson)).toBeNull()
  const goal = afterTurns(start, lessonSteps(start, lesson.span).flatMap(turnsOfStep))
  expect(shownHint({ position: start, level: 3 }, goal, [], lesson)).toBeNull()
  expect(nextHintLevel(null, goal, 3, lesson)).toBeNull()
})

test('[HT1] a hint goes when its step was done in another way', () => {
  // Another corner is brought home instead of the one that was told of.
  const lesson = lessonOf(2)
  const start = startOf(2, 3)
  const [first, second] = lessonSteps(start, lesson.span)
  const other = afterTurns(start, [...turnsOfStep(first), ...turnsOfStep(second)])
  expect(shownHint({ position: start, level: 1 }, other, [], lesson)).toBeNull()
})

test('[HT2] each press gives the next rung, up to the highest that is allowed', () => {
  fc.assert(
    fc.property(aStart, fc.constantFrom<HintLevel>(1, 2, 3), ([stage, number], levelMax) => {
      const start = startOf(stage, number)
      const lesson = lessonOf(stage)
      const given: HintLevel[] = []
      let shown: ShownHint | null = null
      for (;;) {
        const next = nextHintLevel(shown, start, levelMax, lesson)
        if (next === null) break
        given.push(next)
        shown = shownHint(shown, start, given, lesson)
        expect(shown?.level).toBe(next)
      }
      expect(given).toEqual([1, 2, 3].slice(0, levelMax))
    }),
    { seed: SEED, numRuns: 60 },
  )
  expect(nextHintLevel(null, startOf(4, 1), 0, lessonOf(4))).toBeNull()
})

test('[HT2] holding the cube otherwise leaves the step the same: the next rung follows, and the words follow the cube', () => {
  fc.assert(
    fc.property(aStart, fc.constantFrom('y', "y'", 'y2'), ([stage, number], reHold) => {
      const start = startOf(stage, number)
      const lesson = lessonOf(stage)
      // At stages 1 to 3 another hold may make another piece the nearest one; that is another step, and another first rung.
      fc.pre(stage >= 4)
      const held = afterTurns(start, [turnOf(reHold as 'y')])
      const shown = shownHint({ position: start, level: 1 }, held, [], lesson)
      expect(shown).not.toBeNull()
      expect(nextHintLevel(shown, held, 3, lesson)).toBe(2)
      expect(shown !== null && cubesEqual(toldAt(shown, held, lesson), held)).toBe(true)
    }),
    { seed: SEED, numRuns: 60 },
  )
})

test('[HT2] amid a sequence the words stay those of the position where the hint was asked for', () => {
  const start = startOf(4, 1)
  const lesson = lessonOf(4)
  const shown: ShownHint = { position: start, level: 2 }
  const amid = afterTurns(start, [turnOf('F'), turnOf('U'), turnOf('R')])
  expect(toldAt(shown, amid, lesson)).toBe(start)
  // A hint asked for there is another one, and begins with the first rung.
  expect(nextHintLevel(shown, amid, 3, lesson)).toBe(1)
})
