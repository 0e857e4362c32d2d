import { expect, test } from 'vitest'
import { cycleNotation, stickerPermutation } from '../../../engine/cube/generators.ts'
import { TURN_NAMES, turnOf } from '../../../engine/cube/turns.ts'

test.each(TURN_NAMES)('[CU1] %s carries 54 stickers to 54 places', (name) => {
  expect([...stickerPermutation(turnOf(name))].sort((a, b) => a - b)).toEqual(Array.from({ length: 54 }, (_, i) => i))
})

// Points as the definition of the reading order gives them, counted from 1.
test.each([
  [[0, 1, 2], '()'],
  [[1, 2, 0], '(1,2,3)'],
  [[1, 0, 2, 4, 3], '(1,2)(4,5)'],
])('[CU6] the permutation %j is written %s for the algebra system', (targets, cycles) => {
  expect(cycleNotation(Uint8Array.from(targets))).toBe(cycles)
})

test('[CU6] U is five rings of four stickers', () => {
  expect(cycleNotation(stickerPermutation(turnOf('U')))).toBe(
    '(1,3,9,7)(2,6,8,4)(10,19,37,46)(11,20,38,47)(12,21,39,48)',
  )
})
