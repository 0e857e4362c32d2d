/** How a plan is changed part by part, and how it is said. Rules LP: tests/RULES.md. */

import fc from 'fast-check'
import type { TFunction } from 'i18next'
import { beforeAll, describe, expect, test } from 'vitest'
import { lessonPlanSchema } from '../../../../engine/contest/plans/lesson-plan.ts'
import { readyPlans } from '../../../../engine/contest/plans/ready-plans.ts'
import { openParTables } from '../../../../engine/search/par/open-par-tables.ts'
import {
  cleanNote,
  cleanTitle,
  draftOf,
  newPart,
  planOf,
  withoutPart,
  withPartAt,
  withPartChanged,
  withPartMoved,
} from '../../../../web/desk/plans/change-plan.ts'
import { partContent, partLength, planLength, planLengthInShort } from '../../../../web/desk/plans/part-words.ts'
import { inWords } from '../../../../web/desk/plans/ready-plan-words.ts'
import { fileName } from '../../../../web/desk/shelf/save-text-file.ts'
import { anExample, aPlan, aReview, aRound } from '../../../engine/contest/plans/a-plan.ts'
import { SEED } from '../../../engine/cube/arbitraries.ts'
import { inEnglish } from '../../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})
const PLAN = aPlan(anExample(), aRound(), aReview)
const kinds = (draft: ReturnType<typeof draftOf>) => draft.parts.map(({ part }) => part.kind)

describe('a draft', () => {
  test('[LP8] is the plan until something is changed', () => expect(planOf(draftOf(PLAN))).toEqual(PLAN))

  test('[LP8] parts move, the ends hold, and each keeps its key', () => {
    const draft = draftOf(PLAN)
    const [first] = draft.parts
    expect(kinds(withPartMoved(draft, first.key, 1))).toEqual(['round', 'example', 'review'])
    expect(withPartMoved(draft, first.key, 1).parts[1]).toEqual(first)
    expect(withPartMoved(draft, first.key, -1)).toEqual(draft)
    expect(withPartMoved(draft, draft.parts[2].key, 1)).toEqual(draft)
  })

  test('[LP8] what is taken out can be put back where it was', () => {
    const draft = draftOf(PLAN)
    const without = withoutPart(draft, draft.parts[1].key)
    expect(kinds(without)).toEqual(['example', 'review'])
    expect(planOf(withPartAt(without, draft.parts[1].part, 1))).toEqual(PLAN)
  })

  test('[LP8] a new round takes up the settings of the last one', () => {
    const draft = draftOf(aPlan(aRound({ from: 6, to: 6 }), aReview))
    expect(newPart('round', draft)).toMatchObject({ settings: { from: 6, to: 6 } })
    expect(newPart('example', draft)).toMatchObject({ stage: 6 })
  })

  test('[LP8] whatever is pressed, keys are single and the plan can be kept', () => {
    const act = fc.oneof(
      fc.constantFrom('example', 'round', 'review' as const).map((kind) => ({ add: kind as 'round' })),
      fc.record({ move: fc.nat(9), by: fc.constantFrom(-1, 1) }),
      fc.record({ remove: fc.nat(9) }),
      fc.record({ change: fc.nat(9), note: fc.string({ unit: 'binary', maxLength: 40 }) }),
    )
    fc.assert(
      fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
        const draft = acts.reduce((now, each) => {
          if ('add' in each) return withPartAt(now, newPart(each.add, now), now.parts.length)
          if ('move' in each) return withPartMoved(now, each.move, each.by)
          if ('remove' in each) return withoutPart(now, each.remove)
          const found = now.parts.find(({ key }) => key === each.change)
          if (found === undefined) return now
          return withPartChanged(now, found.key, { ...found.part, note: cleanNote(each.note) })
        }, draftOf(PLAN))
        expect(new Set(draft.parts.map(({ key }) => key)).size).toBe(draft.parts.length)
        expect(lessonPlanSchema.safeParse(planOf(draft)).success).toBe(true)
      }),
      { seed: SEED },
    )
  })

  test('[LP8] what is pasted into a note or title fits one', () => {
    expect(cleanNote('a\r\nb\tc\u202ed')).toBe('a\nb c d')
    expect(cleanTitle('a\nb')).toBe('a b')
  })
})

describe('in words', () => {
  test('[LP9] a part says what is done and how long', () => {
    const parts = [
      anExample(),
      aRound({ from: 4, to: 6, hints: 3 }),
      aRound({ cases: ['dot'], timeLimitMs: null }),
      aReview,
    ]
    expect(parts.map((part) => partContent(t, part))).toEqual([
      'Yellow cross · dot',
      'stages 4 to 6 · all hints',
      'stage 4 · dot',
      '',
    ])
    expect(parts.map((part) => partLength(t, part))).toEqual(['8 min', '5 min', 'no clock', '10 min'])
  })

  test.each([
    [aPlan(anExample({ minutes: 33 }), aReview), '43 of 45 minutes', '43 minutes'],
    [aPlan(anExample({ minutes: 50 }), aReview), '60 minutes, more than a lesson of 45', '60 minutes'],
    [aPlan(aRound({ timeLimitMs: null })), 'one round without a clock', 'one round without a clock'],
    [
      aPlan(aReview, aRound({ timeLimitMs: null })),
      '10 of 45 minutes · one round without a clock',
      '10 minutes · one round without a clock',
    ],
    [aPlan(), '0 of 45 minutes', ''],
  ])('[LP9] minutes are summed', (plan, long, short) => {
    expect(planLength(t, plan)).toBe(long)
    expect(planLengthInShort(t, plan)).toBe(short)
  })

  test('[LP10] a ready-made plan becomes plain text that can be kept, under a title of its own', async () => {
    const opened = await openParTables()
    if (!opened.ok) throw new Error(opened.error.code)
    const plans = readyPlans(opened.value).map((ready) => inWords(t, ready))
    for (const plan of plans) expect(lessonPlanSchema.safeParse(plan).success).toBe(true)
    expect(new Set(plans.map(({ title }) => title)).size).toBe(plans.length)
    expect(plans[3]).toMatchObject({ title: 'Stage 4: Yellow cross' })
    for (const { parts } of plans) {
      for (const part of parts) {
        expect(part.note).not.toBe('')
        if (part.kind === 'round') expect(part.title).not.toBe('')
      }
    }
  })

  test.each([
    ['Stage 4: Yellow cross', 'Stage-4-Yellow-cross'],
    ['../..\\a', 'a'],
    ['Größe', 'Größe'],
    ['???', 'fairturn'],
  ])('[LP4] the file of %j is called %j', (title, name) => expect(fileName(title)).toBe(name))
})
