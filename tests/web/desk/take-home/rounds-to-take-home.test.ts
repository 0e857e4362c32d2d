/** Which rounds are taken home. Rules DE: tests/RULES.md. */

import { expect, test } from 'vitest'
import { DEFAULT_ROUND_SETTINGS } from '../../../../engine/contest/round-settings.ts'
import { roundsToTakeHome } from '../../../../web/desk/take-home/rounds-to-take-home.ts'

const SETTINGS = { ...DEFAULT_ROUND_SETTINGS, from: 5, to: 5 } as const

test('[DE17] the rounds of the plan are taken home in order; without a plan, the next round alone', () => {
  const round = (stage: 4 | 6) =>
    ({ kind: 'round', title: '', note: '', settings: { ...DEFAULT_ROUND_SETTINGS, from: stage, to: stage } }) as const
  const plan = {
    title: 'Week',
    parts: [{ kind: 'example', stage: 4, caseId: null, minutes: 5, note: '' } as const, round(4), round(6)],
  }
  expect(roundsToTakeHome(plan, SETTINGS).map(({ from }) => from)).toEqual([4, 6])
  expect(roundsToTakeHome(null, SETTINGS)).toEqual([SETTINGS])
  expect(roundsToTakeHome({ title: '', parts: [] }, SETTINGS)).toEqual([])
})
