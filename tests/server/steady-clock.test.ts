/** The clock that rounds run by. Rules RO: tests/RULES.md. */

import { expect, test } from 'vitest'
import { makeSteadyClock } from '../../server/steady-clock.ts'

test('[RO12] the clock runs evenly when the machine sets its own back or ahead, or sleeps', () => {
  let [wallMs, evenMs] = [1_700_000_000_000, 500.75]
  const { nowMs, catchUp } = makeSteadyClock(
    () => wallMs,
    () => evenMs,
  )
  expect(nowMs()).toBe(1_700_000_000_000)
  for (const jumpMs of [-3_600_000, 7_200_000, 5]) {
    const before = nowMs()
    wallMs += jumpMs
    expect(nowMs()).toBe(before)
    evenMs += 1_000
    expect(nowMs()).toBe(before + 1_000)
  }
  expect(Number.isSafeInteger(nowMs())).toBe(true)
  const before = nowMs()
  catchUp(20 * 60_000)
  expect(nowMs()).toBe(before + 20 * 60_000)
})
