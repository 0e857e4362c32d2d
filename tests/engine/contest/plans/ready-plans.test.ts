/** The ready-made plans. Rules LP: tests/RULES.md. */

import { beforeAll, describe, expect, test } from 'vitest'
import { drawRoundStart, someStartIsLeft } from '../../../../engine/contest/draw-round-start.ts'
import { casesByLength, hardParFrom } from '../../../../engine/contest/plans/harder-starts.ts'
import { lessonPlanSchema } from '../../../../engine/contest/plans/lesson-plan.ts'
import { LESSON_MINUTES, planMinutes } from '../../../../engine/contest/plans/plan-minutes.ts'
import { type ReadyPlan, readyPlans } from '../../../../engine/contest/plans/ready-plans.ts'
import { caseOf, LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import { STAGES } from '../../../../engine/method/stages.ts'
import { openParTables, type ParTables } from '../../../../engine/search/par/open-par-tables.ts'

let pars: ParTables
let plans: readonly ReadyPlan[]
beforeAll(async () => {
  const opened = await openParTables()
  if (!opened.ok) throw new Error(opened.error.code)
  pars = opened.value
  plans = readyPlans(pars)
})
const partsOf = (plan: ReadyPlan) => plan.parts.map(({ part }) => part)
const roundsOf = (plan: ReadyPlan) => partsOf(plan).flatMap((part) => (part.kind === 'round' ? [part.settings] : []))

describe('the ready-made plans', () => {
  test('[LP6] are a lesson for each stage, a club night and a week to take home', () => {
    expect(plans.map(({ occasion }) => occasion)).toEqual([
      ...STAGES.map((stage) => ({ stage })),
      'clubNight',
      'takeHomeWeek',
    ])
  })

  test('[LP6] every one of them is a plan, and every round of it can be dealt', () => {
    for (const plan of plans) {
      expect(lessonPlanSchema.safeParse({ title: '', parts: partsOf(plan) }).success).toBe(true)
      for (const settings of roundsOf(plan))
        expect(someStartIsLeft(settings, pars), JSON.stringify(settings)).toBe(true)
    }
  })

  test('[LP6] a lesson is shown, guided, open, harder and talked about, in 45 minutes', () => {
    for (const plan of plans.slice(0, STAGES.length)) {
      expect(planMinutes({ parts: partsOf(plan) })).toEqual({ minutes: LESSON_MINUTES, nWithoutClock: 0 })
      expect(partsOf(plan).map(({ kind }) => kind)).toEqual(['example', 'round', 'round', 'round', 'review'])
      const [guided, open, harder] = roundsOf(plan)
      expect(guided.hints).toBeGreaterThan(open.hints)
      expect(harder.cases !== null || harder.parFrom !== null).toBe(true)
    }
  })

  test('[LP6] a club plays three rounds on real cubes, a take-home week has five without a clock', () => {
    const [club, week] = plans.slice(STAGES.length)
    expect(roundsOf(club).map(({ cube, tries }) => [cube, tries])).toEqual(Array(3).fill(['real', 'one']))
    expect(roundsOf(week).map(({ from, to }) => [from, to])).toEqual([3, 4, 5, 6, 7].map((stage) => [stage, stage]))
    expect(roundsOf(week).every(({ timeLimitMs, pace }) => timeLimitMs === null && pace === 'alone')).toBe(true)
  })
})

describe('what is harder', () => {
  test.each(LAST_LAYER_STAGES)('[LP7] stage %i: no case has a longer lesson way than the last one', (stage) => {
    const cases = casesByLength(stage)
    // Counted anew, in turns, from the ways themselves.
    const longest = (id: string) =>
      Math.max(
        ...arrangementsOf(stage)
          .filter((start) => caseOf(start, stage) === id)
          .map((start) => lessonWay(start, { from: stage, to: stage }).length),
      )
    const lengths = cases.map(longest)
    expect(cases.length).toBeGreaterThan(1)
    expect(Math.max(...lengths)).toBe(lengths[lengths.length - 1])
    expect(lengths[0]).toBe(Math.min(...lengths))
  })

  test('[LP7] stage 4 ends with the dot; common practice, no source', () => {
    expect(casesByLength(4)).toEqual(['corner-shape', 'line', 'dot'])
  })

  test.each<[readonly number[], number]>([
    [[1, 15, 158, 1394, 9809, 46381, 97254, 34966, 102], 7],
    [[1, 0, 0, 3], 3],
    [[1, 4, 4, 4], 3],
    [[0, 8, 1], 2],
    [[9], 1],
  ])('[LP7] of %j the hard third begins at par %i', (distribution, par) => expect(hardParFrom(distribution)).toBe(par))

  test('[LP7] the harder round of stage 1 deals pars of 7 and more', () => {
    const harder = roundsOf(plans[0])[2]
    let word = 0
    // Any source does: this one counts, stretched over all words (Knuth, TAOCP 3.2.1.3).
    const random = { nextUint32: () => (word = (Math.imul(word, 1_664_525) + 1_013_904_223) >>> 0) }
    for (let n = 0; n < 20; n++) {
      const start = drawRoundStart(harder, random, pars)
      expect(start === null ? 0 : pars.parOf(start, 1)).toBeGreaterThanOrEqual(7)
    }
  })
})
