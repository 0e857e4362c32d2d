/** Where the tokens of re-holds stand in a ribbon. */

import { expect, test } from 'vitest'
import { turnKind } from '../../../engine/cube/turns.ts'
import { reHoldShift } from '../../../web/parts/showing/re-hold-shift.ts'
import { turns } from '../../engine/cube/arbitraries.ts'

/** A token is so wide, in squares: `review-row.module.css`. */
const TOKEN_WIDTH = 0.6

test.each([
  ['R y U', [0]],
  ['R y y U', [-0.32, 0.32]],
  ["R y x y' U", [-0.64, 0, 0.64]],
  // At the margin a name stands to the left.
  ['y y R', [0, 0.64]],
] as const)('[SW12] the tokens of %s stand beside each other about their seam', (row, shifts) => {
  const made = turns(row)
  const found = [...made.keys()].filter((at) => turnKind(made[at]) === 're-hold').map((at) => reHoldShift(made, at))
  expect(found).toHaveLength(shifts.length)
  for (const [index, shift] of shifts.entries()) expect(found[index]).toBeCloseTo(shift, 10)
})

test('[SW12] two in a row keep clear of each other, and of one at the next seam', () => {
  const made = turns('R y y U y F')
  const at = [1, 2, 4].map((index) => reHoldShift(made, index) + (index === 4 ? 1 : 0))
  expect(at[1] - at[0]).toBeGreaterThanOrEqual(TOKEN_WIDTH)
  expect(at[2] - at[1]).toBeGreaterThanOrEqual(TOKEN_WIDTH)
})
