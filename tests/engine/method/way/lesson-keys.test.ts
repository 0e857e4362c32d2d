import { expect, test } from 'vitest'
import { CLASSIC_BOOK } from '../../../../engine/method/book/classic-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { CASES_OF_STAGE, LAST_LAYER_STAGES } from '../../../../engine/method/cases.ts'
import { drawArrangement } from '../../../../engine/method/draw-start.ts'
import { PIECE_CASES_OF_STAGE, PIECE_STAGES } from '../../../../engine/method/piece-cases.ts'
import { STAGES } from '../../../../engine/method/stages.ts'
import type { HoldKey } from '../../../../engine/method/way/hold-mark.ts'
import type { DoKey, LookForKey, WhyKey } from '../../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../../engine/method/way/lesson-steps.ts'
import { cubeAfter } from '../../cube/arbitraries.ts'
import { ROUNDABOUT } from '../book/books.ts'
import { sourceNumbered } from '../starts.ts'

// The compiler holds these lists complete: every language needs a sentence for each key.
const HOLD_KEYS: Readonly<Record<HoldKey, true>> = {
  'hold/base-down': true,
  'hold/piece-above-home': true,
  'hold/piece-above-centre': true,
  'hold/piece-at': true,
  'hold/line': true,
  'hold/arms': true,
  'hold/corners': true,
  'hold/pair': true,
  'hold/finished-side': true,
  'hold/exchange': true,
  'hold/any': true,
}
const DO_KEYS: Readonly<Record<DoKey, true>> = {
  'do/nothing-more': true,
  'do/top-turn': true,
  'do/sequence': true,
  'do/sequence-again': true,
}
const WHY_KEYS: Readonly<Record<WhyKey, true>> = {
  'why/base-belongs-down': true,
  'why/piece-home': true,
  'why/piece-out': true,
  'why/piece-nearer': true,
  'why/stage-done': true,
  'why/case-becomes': true,
  'why/fewer-sequences': true,
}

test('[LW15] every key of the closed lists is met in some lesson, and no other', () => {
  const look = new Set<LookForKey>()
  const met = { hold: new Set<string>(), do: new Set<string>(), why: new Set<string>() }
  const note = (steps: ReturnType<typeof lessonSteps>) => {
    for (const step of steps) {
      look.add(step.lookFor.key)
      met.hold.add(step.hold.mark.key)
      met.do.add(step.do.key)
      met.why.add(step.why.key)
    }
  }
  note(lessonSteps(cubeAfter('R x'), { from: 1, to: 7 }))
  for (const stage of STAGES) {
    for (let number = 0; number < 60; number++) {
      const start = drawArrangement(stage, sourceNumbered(number))
      for (const book of [LESSON_BOOK, CLASSIC_BOOK]) note(lessonSteps(start, { from: stage, to: 7 }, book))
      if (stage === 1) note(lessonSteps(start, { from: 1, to: 1 }, ROUNDABOUT))
    }
  }
  expect(met.hold).toEqual(new Set(Object.keys(HOLD_KEYS)))
  expect(met.do).toEqual(new Set(Object.keys(DO_KEYS)))
  expect(met.why).toEqual(new Set(Object.keys(WHY_KEYS)))
  const cases = [
    ...PIECE_STAGES.flatMap((stage) => PIECE_CASES_OF_STAGE[stage]),
    ...LAST_LAYER_STAGES.flatMap((stage) => CASES_OF_STAGE[stage]),
  ].filter((id) => !['cross', 'all-up', 'solved'].includes(id))
  expect(look).toEqual(new Set(['look/base-not-down', ...cases.map((id) => `look/${id}`)]))
})
