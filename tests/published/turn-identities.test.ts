/**
 * Source: World Cube Association, Regulations 2024, article 12a (what the turns are), and 2009, article 12a13 (slices).
 * The identities follow from the definitions and were computed with GAP 4.12.1 from a model of its own.
 */

import { expect, test } from 'vitest'
import { cubeAfter } from '../engine/cube/arbitraries.ts'

test.each([
  ['Rw', 'L x'],
  ['Lw', "R x'"],
  ['Uw', 'D y'],
  ['Dw', "U y'"],
  ['Fw', 'B z'],
  ['Bw', "F z'"],
  ['Rw', "R M'"],
  ['Lw', 'L M'],
  ['Uw', "U E'"],
  ['Dw', 'D E'],
  ['Fw', 'F S'],
  ['Bw', "B S'"],
  ['M', "R L' x'"],
  ['E', "U D' y'"],
  ['S', "F' B z"],
  ['x', "R M' L'"],
  ['y', "U E' D'"],
  ['z', "F S B'"],
  ['x y', 'z x'],
  ["x y x'", 'z'],
  ["y x y'", "z'"],
  ["x U x'", 'F'],
  ["y R y'", 'B'],
  ["y F y'", 'R'],
  ["z U z'", 'L'],
])('[CU4] %s does the same as %s', (word, other) => {
  expect(cubeAfter(word)).toEqual(cubeAfter(other))
})

test('[CU4] the check can fail: a wide turn is not the turn of its face', () => {
  expect(cubeAfter('Rw')).not.toEqual(cubeAfter('R'))
  expect(cubeAfter("y R y'")).not.toEqual(cubeAfter('F'))
})
