/** When a student looks stuck, or has left an earlier layer broken. Rules SI: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { changeClock } from '../../../engine/contest/change-clock.ts'
import { playedMs } from '../../../engine/contest/round-clock.ts'
import {
  BROKE_IDLE_MS,
  STUCK_IDLE_MS,
  STUCK_NO_GAIN_MS,
  STUCK_NO_GAIN_STEPS,
  type StudentActivity,
  studentSigns,
} from '../../../engine/contest/student-signs.ts'
import { CLASSIC_BOOK } from '../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { STAGES, type StageSpan } from '../../../engine/method/stages.ts'
import { SEED } from '../cube/arbitraries.ts'
import { aRound } from './a-round.ts'

const QUIET: StudentActivity = {
  lastStepMs: 0,
  lastGainMs: 0,
  brokeMs: null,
  nStepsBroken: 0,
  nSteps: 0,
  reached: false,
}
const STAGE_4 = { from: 4, to: 4, pace: 'together' } as const
const signs = (activity: Partial<StudentActivity>, playedMs: number, span: StageSpan = STAGE_4) =>
  studentSigns({ ...QUIET, ...activity }, { ...span, pace: 'together' }, playedMs)

describe('stuck', () => {
  test.each<[string, Partial<StudentActivity>, number, number | null]>([
    ['at the signal nobody is', {}, 0, null],
    ['who looks at the cube is thinking', {}, STUCK_IDLE_MS - 1, null],
    ['who has never turned, after 45 s', {}, STUCK_IDLE_MS, 0],
    ['no turn for 45 s, since the last one', { lastStepMs: 30_000, nSteps: 9 }, 30_000 + STUCK_IDLE_MS, 30_000],
    ['no turn for a little less', { lastStepMs: 30_000, nSteps: 9 }, 29_999 + STUCK_IDLE_MS, null],
    [
      'turning on and on without coming further',
      { lastStepMs: STUCK_NO_GAIN_MS, lastGainMs: 0, nSteps: STUCK_NO_GAIN_STEPS },
      STUCK_NO_GAIN_MS,
      0,
    ],
    [
      'turning for as long, but slowly',
      { lastStepMs: STUCK_NO_GAIN_MS, lastGainMs: 0, nSteps: STUCK_NO_GAIN_STEPS - 1 },
      STUCK_NO_GAIN_MS,
      null,
    ],
    [
      'turning as much, but not as long',
      { lastStepMs: STUCK_NO_GAIN_MS - 1, lastGainMs: 0, nSteps: STUCK_NO_GAIN_STEPS },
      STUCK_NO_GAIN_MS - 1,
      null,
    ],
    [
      'coming further now and then',
      { lastStepMs: STUCK_NO_GAIN_MS, lastGainMs: 60_000, nSteps: 200 },
      STUCK_NO_GAIN_MS,
      null,
    ],
    ['who has reached the goal is not', { reached: true, nSteps: 300 }, 900_000, null],
  ])('[SI1] %s', (_what, activity, playedMs, since) => {
    expect(signs(activity, playedMs).stuckSinceMs).toBe(since)
  })
})

describe('broke an earlier layer', () => {
  const BROKE = { brokeMs: 10_000, nStepsBroken: 1, nSteps: 5, lastStepMs: 10_000 }
  test.each<[string, Partial<StudentActivity>, number, number | null]>([
    ['all is whole', { nSteps: 90, lastStepMs: 10_000 }, 40_000, null],
    ['just now: every sequence breaks something', BROKE, 10_001, null],
    ['and no turn for 20 s', BROKE, 10_000 + BROKE_IDLE_MS, 10_000],
    ['and no turn for a little less', BROKE, 9_999 + BROKE_IDLE_MS, null],
    ['but turning on within a sequence', { ...BROKE, nStepsBroken: 8, lastStepMs: 60_000 }, 60_001, null],
    [
      'and turning on beyond any sequence of the stage',
      { ...BROKE, nStepsBroken: 9, lastStepMs: 60_000 },
      60_001,
      10_000,
    ],
    ['but reached the goal in an earlier try', { ...BROKE, nStepsBroken: 99, reached: true }, 900_000, null],
  ])('[SI2] %s', (_what, activity, playedMs, since) => {
    expect(signs(activity, playedMs).brokeSinceMs).toBe(since)
  })

  test.each([
    ['lesson', LESSON_BOOK],
    ['classic', CLASSIC_BOOK],
  ])('[SI2] no sequence of the %s book, by whatever stage, is taken for a broken layer', (_name, book) => {
    for (const stage of STAGES) {
      for (const { turns } of book.stages[stage]) {
        // Broken from its first turn on, and all of it turned but the last.
        const activity = { brokeMs: 0, nStepsBroken: turns.length, nSteps: turns.length, lastStepMs: 5_000 }
        expect([stage, signs(activity, 5_001, { from: stage, to: stage }).brokeSinceMs]).toEqual([stage, null])
      }
    }
  })

  test('[SI2] over several stages the longest of their sequences counts', () => {
    const activity = { brokeMs: 0, nStepsBroken: 20, nSteps: 20, lastStepMs: 5_000 }
    expect(signs(activity, 5_001, { from: 4, to: 4 }).brokeSinceMs).toBe(0)
    expect(signs(activity, 5_001, { from: 3, to: 5 }).brokeSinceMs).toBeNull()
  })
})

test('[SI3] a pause or an outage of whatever length makes nobody stuck', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: STUCK_IDLE_MS - 1 }),
      fc.integer({ min: 0, max: 7_200_000 }),
      fc.boolean(),
      (thoughtMs, standsMs, isPause) => {
        const running = aRound({ settings: { timeLimitMs: 3_600_000 } })
        const toMs = thoughtMs + standsMs
        const events = isPause
          ? ([
              { kind: 'paused', atMs: thoughtMs },
              { kind: 'resumed', atMs: toMs },
            ] as const)
          : ([{ kind: 'outage', fromMs: thoughtMs, toMs }] as const)
        let round = running
        for (const event of events) {
          const changed = changeClock(round, event)
          if (!changed.ok) throw new Error(changed.error.code)
          round = changed.value
          expect(signs({}, playedMs(round.clock, toMs)).stuckSinceMs).toBeNull()
        }
      },
    ),
    { seed: SEED },
  )
})

test('[SI4] once the goal was reached there is no sign, whatever is done afterwards', () => {
  const anyTime = fc.nat(900_000)
  fc.assert(
    fc.property(
      anyTime,
      anyTime,
      fc.option(anyTime),
      fc.nat(600),
      fc.nat(600),
      anyTime,
      (lastStepMs, lastGainMs, brokeMs, nStepsBroken, nSteps, played) => {
        const activity = { lastStepMs, lastGainMs, brokeMs, nStepsBroken, nSteps, reached: true }
        expect(studentSigns(activity, STAGE_4, played)).toEqual({ stuckSinceMs: null, brokeSinceMs: null })
      },
    ),
    { seed: SEED },
  )
})

test('[SI6] at home nobody is stuck, and a layer is broken only beyond any sequence', () => {
  const atHome = { ...STAGE_4, pace: 'alone' } as const
  const days = 3 * 24 * 3_600_000
  const broken = { ...QUIET, brokeMs: 0, nSteps: 60 }
  expect(studentSigns({ ...QUIET, nSteps: 60 }, atHome, days)).toEqual({ stuckSinceMs: null, brokeSinceMs: null })
  expect(studentSigns({ ...broken, nStepsBroken: 3 }, atHome, days).brokeSinceMs).toBeNull()
  expect(studentSigns({ ...broken, nStepsBroken: 60 }, atHome, days)).toEqual({ stuckSinceMs: null, brokeSinceMs: 0 })
})
