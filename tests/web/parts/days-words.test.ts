/** Time that is counted in days. Rules UI: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { daysWords } from '../../../web/parts/days-words.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

const SECOND_MS = 1000
const HOUR_MS = 3_600_000

// Rows: milliseconds, what the clock says in words; null where it shows figures.
test.each([
  [0, null],
  [24 * HOUR_MS - 1, null],
  [24 * HOUR_MS, '1 day'],
  [25 * HOUR_MS - 1, '1 day'],
  [25 * HOUR_MS, '1 day 1 h'],
  // Seven days, less a second: 167:59:59 as figures.
  [7 * 24 * HOUR_MS - SECOND_MS, '6 days 23 h'],
  [7 * 24 * HOUR_MS, '7 days'],
])('[UI2] %i ms are said as %j', (ms, words) => {
  expect(daysWords(t, ms)).toBe(words)
})
