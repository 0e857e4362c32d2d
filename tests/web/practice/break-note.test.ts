/** When a rest is due. Rules PX: tests/RULES.md. */

import { expect, test } from 'vitest'
import { BREAK_AFTER_MS, practisedAfter } from '../../../web/practice/break-note.ts'

const SECOND = 1_000
const MINUTE = 60 * SECOND

test('[PX4] a rest is due after 25 minutes in which the page was seen', () => {
  let practisedMs = 0
  let nMinutes = 0
  while (practisedMs < BREAK_AFTER_MS) {
    practisedMs = practisedAfter(practisedMs, MINUTE, true)
    nMinutes++
  }
  expect(nMinutes).toBe(25)
})

test('[PX4] a hidden page is not practised on, and a sleeping device has rested', () => {
  expect(practisedAfter(9 * MINUTE, 5 * SECOND, false)).toBe(9 * MINUTE)
  expect(practisedAfter(24 * MINUTE, 40 * MINUTE, true)).toBe(0)
})
