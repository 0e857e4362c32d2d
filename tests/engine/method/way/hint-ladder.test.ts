import fc from 'fast-check'
import { expect, test } from 'vitest'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { goalMet, goalsBeforeMet } from '../../../../engine/method/goals.ts'
import { hintFor } from '../../../../engine/method/way/hint-ladder.ts'
import { HINT_LEVELS } from '../../../../engine/method/way/hint-level.ts'
import { nextLessonStep } from '../../../../engine/method/way/lesson-steps.ts'
import { aPosition, cubeAfter, SEED } from '../../cube/arbitraries.ts'
import { aNearbyPosition, aSpan } from '../starts.ts'

test('[LW13] each rung of the ladder tells a part of the next step, and the rungs below it', () => {
  fc.assert(
    fc.property(fc.oneof(aPosition, aNearbyPosition), aSpan, (position, span) => {
      const step = nextLessonStep(position, span)
      const [first, second, third] = HINT_LEVELS.map((level) => hintFor(position, span, level))
      if (step === undefined) {
        expect([first, second, third, goalMet(position, span.to)]).toEqual([null, null, null, true])
        return
      }
      const { lookFor, hold, why } = step
      const shared = { stage: step.stage, lookFor, brokenStage: first?.brokenStage }
      expect(first).toEqual({ ...shared, level: 1, hold: null, do: null, why: null })
      expect(second).toEqual({ ...shared, level: 2, hold, do: null, why: null })
      expect(third).toEqual({ ...shared, level: 3, hold, do: step.do, why })
      expect(first?.brokenStage === null).toBe(goalsBeforeMet(position, span.from))
      expect(first?.brokenStage).toBe(step.isRepair ? step.stage : null)
    }),
    { seed: SEED, numRuns: 200 },
  )
})

test('[LW13] a hint for a broken layer is about that layer', () => {
  const hint = hintFor(cubeAfter("R U R' U'"), { from: 4, to: 4 }, 2, LESSON_BOOK)
  expect([hint?.stage, hint?.brokenStage, hint?.lookFor.key]).toEqual([2, 2, 'look/corner-above-facing-front'])
  expect(hint?.hold?.mark).toEqual({ key: 'hold/piece-above-home', at: 'URF', home: 'DFR' })
  expect(hint?.do).toBe(null)
})

test.each([
  // The round begins with a scrambled cube: nothing was there that could be broken.
  [{ from: 1, to: 7 }, null, false],
  [{ from: 2, to: 7 }, null, false],
  // The first layer was there at the start and has lost a corner.
  [{ from: 3, to: 7 }, 2, true],
] as const)('[LW13] in a round of %j a corner that is not home is broken work: stage %j', (span, broken, isRepair) => {
  const position = cubeAfter("R U R' U'")
  expect(hintFor(position, span, 1)?.brokenStage).toBe(broken)
  expect(nextLessonStep(position, span)?.isRepair).toBe(isRepair)
})
