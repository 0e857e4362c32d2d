/** Settings that an earlier version has stored. Rules DU: tests/RULES.md. */

import { expect, test } from 'vitest'
import { DEFAULT_ROUND_SETTINGS, withLaterSettings } from '../../../engine/contest/round-settings.ts'
import { roundSettingsSchema } from '../../../engine/wire/round-settings-schema.ts'

/** As version 2 of the protocol wrote them, all of its fields. */
const OF_VERSION_2 = {
  from: 3,
  to: 5,
  cases: null,
  baseColour: 'yellow',
  timeLimitMs: null,
  tries: 'one',
  takeBack: false,
  boardSeenBy: 'own',
} as const

test('[DU22] settings of an earlier version keep what they said, and have no hint, no par range, no real cube, one clock for all', () => {
  expect(withLaterSettings(OF_VERSION_2)).toEqual({
    ...OF_VERSION_2,
    hints: 0,
    hintCost: 0,
    parFrom: null,
    parTo: null,
    cube: 'screen',
    pace: 'together',
  })
})

test('[DU22] settings of today are read back as they were, and are what a page may send', () => {
  const settings = { ...DEFAULT_ROUND_SETTINGS, hints: 3, hintCost: 2, parFrom: 7, parTo: 8, cube: 'either' } as const
  expect(withLaterSettings(JSON.parse(JSON.stringify(settings)))).toEqual(settings)
  expect(roundSettingsSchema.safeParse(withLaterSettings(OF_VERSION_2)).success).toBe(true)
})
