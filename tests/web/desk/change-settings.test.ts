/** Whatever a teacher ticks, the round can be dealt. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../engine/contest/round-settings.ts'
import { CASES_OF_STAGE } from '../../../engine/method/cases.ts'
import { casesLeaveAStart } from '../../../engine/method/draw-start.ts'
import { STAGES, type Stage } from '../../../engine/method/stages.ts'
import { offeredCases, stagesFrom, withCase, withLastStage, withStage } from '../../../web/desk/change-settings.ts'

const settings = (overrides: Partial<RoundSettings>): RoundSettings => ({ ...DEFAULT_ROUND_SETTINGS, ...overrides })

describe('offeredCases', () => {
  test.each([
    [4, 4, ['dot', 'line', 'corner-shape']],
    [4, 5, ['cross', 'dot', 'line', 'corner-shape']],
    [7, 7, ['three-clockwise', 'three-anticlockwise', 'across', 'beside']],
    [1, 3, []],
  ] as const)('[DE1] from stage %i to stage %i: %j', (from, to, cases) =>
    expect(offeredCases({ from, to })).toEqual(cases),
  )
})

test('[DE2] another stage is one goal with all its cases', () => {
  expect(withStage(settings({ from: 4, to: 6, cases: ['dot'] }), 5)).toMatchObject({ from: 5, to: 5, cases: null })
})

test('[DE1] the last case cannot be unticked', () => {
  expect(withCase(settings({ cases: ['dot'] }), 'dot', false)).toBeNull()
})

test('[DE1] all cases ticked again are no filter', () => {
  expect(withCase(settings({ cases: ['dot', 'line'] }), 'corner-shape', true)?.cases).toBeNull()
})

test('[DE2] a case that a shorter round cannot start from falls away', () => {
  expect(withLastStage(settings({ from: 4, to: 5, cases: ['cross', 'dot'] }), 4).cases).toEqual(['dot'])
  expect(withLastStage(settings({ from: 4, to: 5, cases: ['cross'] }), 4).cases).toBeNull()
})

test('[DE1] any row of choices leaves a start to deal', () => {
  const choice = fc.oneof(
    fc.constantFrom<Stage>(...STAGES).map((stage) => (now: RoundSettings) => withStage(now, stage)),
    fc
      .nat(6)
      .map(
        (index) => (now: RoundSettings) =>
          withLastStage(now, stagesFrom(now.from)[index % stagesFrom(now.from).length]),
      ),
    fc.tuple(fc.nat(9), fc.boolean()).map(([index, ticked]) => (now: RoundSettings) => {
      const cases = offeredCases(now)
      return cases.length === 0 ? now : (withCase(now, cases[index % cases.length], ticked) ?? now)
    }),
  )
  fc.assert(
    fc.property(fc.array(choice, { maxLength: 12 }), (choices) => {
      const { from, to, cases } = choices.reduce((now, choose) => choose(now), settings({}))
      expect(from).toBeLessThanOrEqual(to)
      if (cases !== null) {
        expect(CASES_OF_STAGE[from as 4 | 5 | 6 | 7]).toEqual(expect.arrayContaining([...cases]))
        expect(casesLeaveAStart({ from, to }, cases)).toBe(true)
      }
    }),
  )
})
