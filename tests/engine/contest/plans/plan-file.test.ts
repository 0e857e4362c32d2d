/** A plan in a file. Rules LP: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { PLAN_FILE_LENGTH_MAX } from '../../../../engine/contest/plans/limits.ts'
import { formatPlanFile, parsePlanFile } from '../../../../engine/contest/plans/plan-file.ts'
import { SEED } from '../../cube/arbitraries.ts'
import { anExample, aPlan, aReview, aRound } from './a-plan.ts'

const PLAN = aPlan(anExample(), aRound({ from: 5, to: 5, parFrom: 9 }), aReview)
const withPlan = (plan: unknown) => JSON.stringify({ fairturnPlan: 1, plan })

describe('a file', () => {
  test('[LP4] reads back as the plan that was written, whatever the line ends', () => {
    const file = formatPlanFile(PLAN)
    expect(parsePlanFile(file)).toEqual({ ok: true, value: PLAN })
    expect(parsePlanFile(`\uFEFF${file.replaceAll('\n', '\r\n')}`)).toEqual({ ok: true, value: PLAN })
  })

  test.each<[string, string, object]>([
    ['larger than any plan', ' '.repeat(PLAN_FILE_LENGTH_MAX + 1), { code: 'plan/file-too-large' }],
    ['no JSON', 'Dear Sir', { code: 'plan/file-not-json' }],
    ['cut off', formatPlanFile(PLAN).slice(0, -9), { code: 'plan/file-not-json' }],
    ['JSON of something else', '{"title":"Yellow cross"}', { code: 'plan/file-not-a-plan' }],
    ['a number', '7', { code: 'plan/file-not-a-plan' }],
    ['of a later version', '{"fairturnPlan":2,"steps":[]}', { code: 'plan/file-newer', version: 2, known: 1 }],
    ['without a title', withPlan({ parts: [] }), { code: 'plan/file-field', at: 'title' }],
    [
      'with a wrong setting in its second part',
      withPlan({ ...PLAN, parts: [anExample(), { ...aRound(), settings: { ...PLAN.parts, from: 9 } }] }),
      { code: 'plan/file-field', at: 'parts 2 settings from' },
    ],
    [
      'with a field that nobody knows',
      withPlan({ ...PLAN, parts: [{ ...aReview, colour: 'red' }] }),
      { code: 'plan/file-field', at: 'parts 1 colour' },
    ],
  ])('[LP5] %s is refused with what to do', (_what, text, fault) =>
    expect(parsePlanFile(text)).toMatchObject({ ok: false, error: fault }),
  )

  test('[LP5] no text makes the reader throw', () => {
    const file = formatPlanFile(PLAN)
    const damaged = fc
      .tuple(fc.nat(file.length), fc.nat(9), fc.string({ maxLength: 9 }))
      .map(([at, length, by]) => file.slice(0, at) + by + file.slice(at + length))
    fc.assert(
      fc.property(fc.oneof(damaged, fc.string(), fc.json()), (text) => {
        expect(typeof parsePlanFile(text).ok).toBe('boolean')
      }),
      { seed: SEED, numRuns: 1_000 },
    )
  })
})
