/** How a teacher's own minutes are read. */

import { expect, test } from 'vitest'
import { formatMinutes, isOffered, readMinutes } from '../../../web/desk/time-limits.ts'

test.each([
  ['7', 420_000],
  ['2.5', 150_000],
  ['2,5', 150_000],
  [' 8 ', 480_000],
  ['0.1', 30_000],
  ['-3', 30_000],
  ['999', 10_800_000],
])('[DE3] %j minutes are %i ms', (typed, ms) => expect(readMinutes(typed)).toBe(ms))

test.each(['', '  ', 'five', '2:30'])('[DE3] %j is no number', (typed) => expect(readMinutes(typed)).toBeNull())

test('[DE3] what is shown is read back as the same', () => {
  for (const ms of [30_000, 90_000, 420_000, 10_800_000]) expect(readMinutes(formatMinutes(ms))).toBe(ms)
})

test('[DE3] offered lengths are known as such', () => {
  expect([60_000, 300_000, 420_000].map(isOffered)).toEqual([true, true, false])
})
