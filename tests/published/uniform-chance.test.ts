/**
 * The draws below all starts: whole numbers below a bound, and shuffles.
 * Source of the test: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.15; critical values at 0.1 %.
 */

import { expect, test } from 'vitest'
import { below, shuffle } from '../../engine/chance/random-source.ts'
import { sourceNumbered } from '../engine/method/starts.ts'
import { looksFair, tally } from './chi-square.ts'

const N_DRAWS = 60_000

test.each([2, 3, 8, 12, 24])('[CH3] the numbers below %i are equally likely', (bound) => {
  const random = sourceNumbered(bound)
  expect(looksFair(tally(N_DRAWS, bound, () => below(random, bound)))).toBe(true)
})

test('[CH3] drawn with the remainder of a small word, the numbers below 3 are not: the check can fail', () => {
  const random = sourceNumbered(3)
  expect(looksFair(tally(N_DRAWS, 3, () => (random.nextUint32() % 32) % 3))).toBe(false)
})

test('[CH4] the 24 orders of four things are equally likely', () => {
  const random = sourceNumbered(4)
  const cells = new Map<string, number>()
  const counts = tally(N_DRAWS, 24, () => {
    const items = [0, 1, 2, 3]
    shuffle(random, items)
    const order = items.join()
    if (!cells.has(order)) cells.set(order, cells.size)
    return cells.get(order) as number
  })
  expect(looksFair(counts)).toBe(true)
})
