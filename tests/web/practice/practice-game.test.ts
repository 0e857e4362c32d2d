/** Solo practice without a screen. Rules PX: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { hintStep, TAKE_BACK } from '../../../engine/contest/steps.ts'
import { cubesEqual } from '../../../engine/cube/cube-position.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { CASES_OF_STAGE, caseOf, isLastLayerStage, LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { newGame, playPractice } from '../../../web/practice/practice-game.ts'
import {
  casesToPractise,
  DEFAULT_PRACTICE,
  type PracticeSettings,
  readPracticeSettings,
} from '../../../web/practice/practice-settings.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

const aSeed = fc.uint8Array({ minLength: 32, maxLength: 32 })
const SOME_SEED = Uint8Array.from({ length: 32 }, (_, index) => index)
const some = (over: Partial<PracticeSettings> = {}): PracticeSettings => ({ ...DEFAULT_PRACTICE, ...over })
const span = ({ stage }: PracticeSettings) => ({ from: stage, to: stage })

test('[PX1] a start is dealt as for a round of that stage, and of that case where one is chosen', () => {
  fc.assert(
    fc.property(fc.constantFrom(...STAGES), fc.nat(), aSeed, (stage, which, seed) => {
      const cases = casesToPractise(stage)
      const caseId = cases.length === 0 ? null : (cases[which % (cases.length + 1)] ?? null)
      const { start } = newGame(some({ stage, caseId }), seed)
      expect(goalsBeforeMet(start, stage)).toBe(true)
      expect(goalMet(start, stage)).toBe(false)
      if (caseId !== null && isLastLayerStage(stage)) expect(caseOf(start, stage)).toBe(caseId)
    }),
    { seed: SEED, numRuns: 80 },
  )
})

test('[PX1] every case can be practised but the one that is done already', () => {
  expect(casesToPractise(1)).toEqual([])
  for (const stage of LAST_LAYER_STAGES) {
    const [done, ...others] = CASES_OF_STAGE[stage]
    // At stage 6 the matching corners may still have to be turned to their place.
    expect(casesToPractise(stage)).toEqual(stage === 6 ? [done, ...others] : others)
  }
})

test('[PX2] turns count as in a round, hints cost nothing, and the try ends at the goal', () => {
  const settings = some()
  const first = newGame(settings, SOME_SEED)
  const way = lessonWay(first.start, span(settings))
  const hinted = playPractice(first, { kind: 'steps', steps: [hintStep(1), hintStep(2), hintStep(3)] })
  expect(hinted.current.turns).toBe(0)
  const done = playPractice(hinted, { kind: 'steps', steps: [...way, turnOf('D')] })
  expect(done.current.reached).toMatchObject({ turns: countOuterBlockTurns(way) })
  expect(done.current.standing).toEqual(way)
  expect(done.best).toBe(countOuterBlockTurns(way))
})

test('[PX2] the same again is the same start with a new try, and the best of them is kept', () => {
  const settings = some()
  const first = newGame(settings, SOME_SEED)
  const way = lessonWay(first.start, span(settings))
  const slow = playPractice(first, { kind: 'steps', steps: [turnOf('U'), turnOf("U'"), ...way] })
  const again = playPractice(slow, { kind: 'start-again' })
  expect(again.current).toMatchObject({ number: 2, steps: [], turns: 0, reached: null })
  expect(cubesEqual(again.current.position, first.start)).toBe(true)
  const quick = playPractice(again, { kind: 'steps', steps: way })
  expect(quick.best).toBe(countOuterBlockTurns(way))
  const slower = playPractice(playPractice(quick, { kind: 'start-again' }), {
    kind: 'steps',
    steps: [turnOf('U'), turnOf("U'"), ...way],
  })
  expect(slower.best).toBe(quick.best)
})

test('[PX2] another start is another game; a try without a step is not begun again', () => {
  const first = newGame(some(), SOME_SEED)
  expect(playPractice(first, { kind: 'start-again' })).toBe(first)
  const other = playPractice(first, { kind: 'another-start', seed: new Uint8Array(32).fill(9) })
  expect(cubesEqual(other.start, first.start)).toBe(false)
  expect(other).toMatchObject({ best: null, current: { number: 1, steps: [] } })
})

test('[PX2] what the rules refuse changes nothing and is told; the next step goes on', () => {
  const first = newGame(some({ hints: 1 }), SOME_SEED)
  const refused = playPractice(first, { kind: 'steps', steps: [hintStep(2)] })
  expect(refused.refusal?.code).toBe('contest/no-such-hint')
  expect(refused.current).toBe(first.current)
  expect(playPractice(first, { kind: 'steps', steps: [TAKE_BACK] }).refusal?.code).toBe('contest/nothing-to-take-back')
  expect(playPractice(refused, { kind: 'steps', steps: [turnOf('U')] }).refusal).toBeNull()
  expect(playPractice(refused, { kind: 'dismiss' }).refusal).toBeNull()
})

// Rows: what the browser kept, what is made of it.
test.each<[string | null, Partial<PracticeSettings>]>([
  [null, {}],
  ['no JSON', {}],
  ['[1]', {}],
  [
    '{"stage":6,"caseId":"pair","baseColour":"blue","hints":0}',
    { stage: 6, caseId: 'pair', baseColour: 'blue', hints: 0 },
  ],
  // A case of another stage, one that is done already, a stage that is not there.
  ['{"stage":5,"caseId":"dot"}', { stage: 5 }],
  ['{"stage":4,"caseId":"cross"}', {}],
  ['{"stage":9,"hints":7,"baseColour":"pink"}', {}],
])('[PX3] %s is read as what makes sense of it', (kept, wanted) => {
  expect(readPracticeSettings(kept)).toEqual(some(wanted))
})

test('[PX3] what was kept is read back', () => {
  const settings = some({ stage: 7, caseId: 'across', baseColour: 'red', hints: 2 })
  expect(readPracticeSettings(JSON.stringify(settings))).toEqual(settings)
})
