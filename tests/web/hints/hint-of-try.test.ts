/** Which hint stands in a try, found from its steps. Rules HT: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hintStep, type Step, type StepName, stepOf, TAKE_BACK } from '../../../engine/contest/steps.ts'
import { type CubePosition, cubesEqual } from '../../../engine/cube/cube-position.ts'
import { inverseTurns, TURN_NAMES } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../engine/method/way/lesson-steps.ts'
import { type HintWalk, hintAtTheEnd, type TaughtHint, walkHints } from '../../../web/parts/hints/hint-of-try.ts'
import { nextHintLevel } from '../../../web/parts/hints/shown-hint.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'

const SPAN = { from: 4, to: 4 } as const
const LESSON = { span: SPAN, book: LESSON_BOOK }
const DOT = drawStart({ span: SPAN, cases: ['dot'], random: sourceNumbered(1) })
const WAY = lessonWay(DOT, SPAN)
const stepsOf = (names: string): Step[] =>
  names
    .split(' ')
    .filter((name) => name !== '')
    .map((name) => stepOf(name as StepName))

const walked = (steps: readonly Step[], taught: readonly TaughtHint[] = [], before: HintWalk | null = null) =>
  walkHints(before, DOT, steps, taught, LESSON)
const standingAfter = (steps: readonly Step[], taught: readonly TaughtHint[] = []) => {
  const hint = hintAtTheEnd(walked(steps, taught))
  return hint === null ? null : { level: hint.level, taught: hint.taught }
}
const nextAfter = (steps: readonly Step[], taught: readonly TaughtHint[] = []) => {
  const walk = walked(steps, taught)
  return nextHintLevel(walk.shown, walk.position, 3, LESSON)
}
const taught = (number: number, level: TaughtHint['level'], afterSteps = 0): TaughtHint => ({
  number,
  level,
  afterSteps,
})

test('[HT12] a hint that is asked for amid a sequence is the hint of that step', () => {
  const amid = WAY.slice(0, 3)
  const walk = walked([...amid, hintStep(1)])
  expect(cubesEqual(walk.shown?.position ?? walk.position, DOT)).toBe(true)
  // It stands until that step is done, and the next rung is the second one.
  const [first] = lessonSteps(DOT, SPAN)
  const rest = turnsOfStep(first).slice(3)
  expect(standingAfter([...amid, hintStep(1), ...rest.slice(0, -1)])?.level).toBe(1)
  expect(standingAfter([...amid, hintStep(1), hintStep(2)])?.level).toBe(2)
  expect(standingAfter([...amid, hintStep(1), ...rest])).toBeNull()
})

describe('hints that were asked for', () => {
  // Rows: the steps of a try, the rung that stands at its end.
  test.each<[string, number | null]>([
    ['', null],
    ['hint-1', 1],
    ['hint-1 hint-2', 2],
    ['R hint-1', 1],
    // Amid the sequence it stands, and taking back leads to it again.
    ['hint-1 F', 1],
    ['hint-1 F take-back', 1],
    ['hint-1 hint-2 F U take-back take-back', 2],
    // Held otherwise the step is the same: what was given for it is kept.
    ['hint-1 hint-2 y', 2],
    ['hint-1 hint-2 y hint-3', 3],
  ])('[HT5] %s: %j', (names, level) => {
    expect(standingAfter(stepsOf(names))?.level ?? null).toBe(level)
  })

  test('[HT5] the turns of the hint bring it back after its step was done; other turns, even as many, do not', () => {
    const [first] = lessonSteps(DOT, SPAN)
    const turns = turnsOfStep(first)
    const step = turns as Step[]
    const back = step.map((): Step => TAKE_BACK)
    expect(standingAfter([hintStep(1), ...step])).toBeNull()
    expect(standingAfter([hintStep(1), ...step, ...back])).toEqual({ level: 1, taught: null })
    // Undone by turns, the cube stands where it stood, but the turns are others.
    expect(standingAfter([hintStep(1), ...step, ...(inverseTurns(turns) as Step[])])).toBeNull()
  })
})

describe('hints from the teacher', () => {
  test('[HT9] what was sent stands for its step, and Hint offers the rung above it', () => {
    expect(standingAfter([], [taught(1, 1)])).toEqual({ level: 1, taught: 1 })
    expect(nextAfter([], [taught(1, 1)])).toBe(2)
    expect(nextAfter([], [taught(1, 2)])).toBe(3)
    expect(nextAfter([], [taught(1, 3)])).toBeNull()
    expect(standingAfter([hintStep(2)], [taught(1, 1)])).toEqual({ level: 2, taught: null })
  })

  test('[HT9] a lower rung that comes later takes none away, in whatever hold', () => {
    expect(standingAfter([], [taught(1, 2), taught(2, 1)])).toEqual({ level: 2, taught: 2 })
    expect(standingAfter(stepsOf('hint-1 hint-2 y'), [taught(1, 1, 3)])?.level).toBe(2)
    expect(nextAfter(stepsOf('hint-1 hint-2 y'), [taught(1, 1, 3)])).toBe(3)
  })

  test('[HT9] it goes with its step, and one behind steps that were never taken comes last', () => {
    expect(standingAfter(WAY, [taught(1, 1)])).toBeNull()
    expect(standingAfter(stepsOf('R'), [taught(1, 1, 5)])).toEqual({ level: 1, taught: 1 })
  })
})

describe('once more', () => {
  const someSteps = fc.array(
    fc.oneof(
      { weight: 5, arbitrary: fc.constantFrom<StepName>(...TURN_NAMES) },
      { weight: 3, arbitrary: fc.constant<StepName>('take-back') },
      { weight: 2, arbitrary: fc.constantFrom<StepName>('hint-1', 'hint-2', 'hint-3') },
    ),
    { maxLength: 14 },
  )

  test('[HT10] the same stands after a reload as was followed from step to step', () => {
    fc.assert(
      fc.property(
        someSteps,
        fc.array(fc.tuple(fc.nat(14), fc.constantFrom(1, 2, 3)), { maxLength: 2 }),
        (names, sent) => {
          const steps = names.map(stepOf)
          const all = sent
            .map(([at, level], index) => taught(index + 1, level as 1, Math.min(at, steps.length)))
            .sort((a, b) => a.afterSteps - b.afterSteps)
          let walk: HintWalk | null = null
          for (let nSteps = 0; nSteps <= steps.length; nSteps++) {
            walk = walked(
              steps.slice(0, nSteps),
              all.filter(({ afterSteps }) => afterSteps <= nSteps),
              walk,
            )
          }
          const anew = walked(steps, all)
          expect(walk === null ? null : hintAtTheEnd(walk)).toEqual(hintAtTheEnd(anew))
        },
      ),
      { seed: SEED, numRuns: 60 },
    )
  })

  test('[HT10] steps that the server did not take are walked again without them, and the same again is the same', () => {
    const first = walked(stepsOf('hint-1 F R'))
    const corrected = walked(stepsOf('hint-1 U'), [], first)
    expect(corrected).toEqual(walked(stepsOf('hint-1 U')))
    expect(walked(stepsOf('hint-1 U'), [], corrected)).toBe(corrected)
    const at: CubePosition | undefined = corrected.shown?.position
    expect(at !== undefined && cubesEqual(at, DOT)).toBe(true)
  })
})
