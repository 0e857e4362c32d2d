/** What a lesson plan may hold, and how long it takes. Rules LP: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { lessonPlanSchema } from '../../../../engine/contest/plans/lesson-plan.ts'
import {
  PART_MINUTES_MAX,
  PLAN_NOTE_LENGTH_MAX,
  PLAN_PARTS_MAX,
  PLAN_TITLE_LENGTH_MAX,
} from '../../../../engine/contest/plans/limits.ts'
import { partMinutes, planMinutes } from '../../../../engine/contest/plans/plan-minutes.ts'
import { CASES_OF_STAGE } from '../../../../engine/method/cases.ts'
import { MESSAGE_BYTES_MAX } from '../../../../engine/wire/limits.ts'
import { anExample, aPlan, aReview, aRound } from './a-plan.ts'

const wide = (nCharacters: number) => '語'.repeat(nCharacters)

describe('a plan', () => {
  test.each<[string, boolean, unknown]>([
    ['one of each kind', true, aPlan(anExample(), aRound(), aReview)],
    ['without parts or title', true, { title: '', parts: [] }],
    ['an example of a whole stage', true, aPlan(anExample({ stage: 2, caseId: null }))],
    ['as many parts as there may be', true, aPlan(...Array.from({ length: PLAN_PARTS_MAX }, () => aReview))],
    ['a part too many', false, aPlan(...Array.from({ length: PLAN_PARTS_MAX + 1 }, () => aReview))],
    ['an example of a case of another stage', false, aPlan(anExample({ stage: 5, caseId: 'dot' }))],
    ['a round whose settings make no sense', false, aPlan(aRound({ from: 5, to: 4 }))],
    ['a part of no minutes', false, aPlan(anExample({ minutes: 0 }))],
    ['a part that never ends', false, aPlan(anExample({ minutes: PART_MINUTES_MAX + 1 }))],
    ['a long title', false, { title: 'x'.repeat(PLAN_TITLE_LENGTH_MAX + 1), parts: [] }],
    ['a title of two lines', false, { title: 'a\nb', parts: [] }],
    ['a note that turns the writing round', false, aPlan(anExample({ note: 'a\u202eb' }))],
    ['a long note', false, aPlan(anExample({ note: 'x'.repeat(PLAN_NOTE_LENGTH_MAX + 1) }))],
    ['a field that nobody knows', false, { ...aPlan(), colour: 'red' }],
    ['a kind that nobody knows', false, { title: '', parts: [{ kind: 'break', minutes: 5, note: '' }] }],
    [
      'too much text in all',
      false,
      aPlan(...Array.from({ length: 20 }, () => anExample({ note: 'x'.repeat(PLAN_NOTE_LENGTH_MAX) }))),
    ],
  ])('[LP1] %s: %s', (_what, isGood, plan) => expect(lessonPlanSchema.safeParse(plan).success).toBe(isGood))

  test('[LP2] the largest plan fits one message, in any script', () => {
    const settings = { from: 5, to: 6, cases: CASES_OF_STAGE[5], timeLimitMs: 10_799_999, hintCost: 20 } as const
    const note = wide(187)
    const largest = aPlan(...Array.from({ length: PLAN_PARTS_MAX }, () => ({ ...aRound(settings), note })))
    expect(lessonPlanSchema.safeParse(largest).success).toBe(true)
    const bytes = new TextEncoder().encode(JSON.stringify({ planId: 'x'.repeat(32), plan: largest })).length
    expect(bytes).toBeGreaterThan(MESSAGE_BYTES_MAX * 0.8)
    expect(bytes).toBeLessThan(MESSAGE_BYTES_MAX)
  })
})

test('[LP3] minutes are summed; a round takes as long as its clock, and one without a clock is counted apart', () => {
  const plan = aPlan(
    anExample({ minutes: 8 }),
    aRound({ timeLimitMs: 150_000 }),
    aRound({ timeLimitMs: null }),
    aReview,
  )
  expect(plan.parts.map(partMinutes)).toEqual([8, 2.5, null, 10])
  expect(planMinutes(plan)).toEqual({ minutes: 20.5, nWithoutClock: 1 })
})
