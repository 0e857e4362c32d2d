/** Steps of a lesson way under the headings of their stages, numbered through. */

import { expect, test } from 'vitest'
import { stepsByStage } from '../../../web/desk/ways/steps-by-stage.ts'
import { aWayFrom } from '../lesson/a-way.ts'

test('[DE8] each run of steps of one stage has one heading, and the numbers run through', () => {
  const steps = aWayFrom(1, 7, 3)
  const runs = stepsByStage(steps)
  expect(runs.map(({ stage }) => stage)).toEqual([1, 2, 3, 4, 5, 6, 7])
  expect(runs.flatMap((run) => run.steps.map(({ number }) => number))).toEqual(steps.map((_, index) => index + 1))
  expect(runs.flatMap((run) => run.steps.map(({ step }) => step))).toEqual(steps)
})

test('[DE8] no steps, no heading', () => {
  expect(stepsByStage([])).toEqual([])
})
