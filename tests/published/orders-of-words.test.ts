/**
 * How often a word has to be repeated until the cube is back where it was, the hold included.
 * Source: computed with GAP 4.12.1 on all 54 stickers. U R U' F2 also in OEIS A338883; 1260 is the largest order there
 * is (OEIS A338883).
 */

import { expect, test } from 'vitest'
import { applyTurns } from '../../engine/cube/apply-turn.ts'
import { cubesEqual, solvedCube } from '../../engine/cube/cube-position.ts'
import { turns } from '../engine/cube/arbitraries.ts'

const LARGEST_ORDER = 1260

function orderOf(word: string): number {
  const sequence = turns(word)
  const position = solvedCube()
  for (let order = 1; order <= LARGEST_ORDER; order++) {
    applyTurns(position, sequence)
    if (cubesEqual(position, solvedCube())) return order
  }
  throw new Error(`${word} has no order up to ${LARGEST_ORDER}`)
}

test.each([
  ['U', 4],
  ['U2', 2],
  ['U D', 4],
  ['U2 R2', 6],
  ['U R', 105],
  ["U R'", 63],
  ['U R2', 30],
  ['U R F', 84],
  ["U R' F", 360],
  ['U R F D', 24],
  ['U R F D L', 60],
  ['U R F D L B', 60],
  ["R U R' U'", 6],
  ["R' D' R D", 6],
  ["R U R' F'", 6],
  ["R U2 D' B D'", 1260],
  ["U R' U F' D2", 1260],
  ["U R U' F2", 10],
  ["R L' U D'", 6],
  ['R L U D F B', 4],
  ["F R U R' U' F'", 6],
  ["R U R' U R U2 R'", 6],
  ["R U R' U' R' F R2 U' R' U' R U R' F'", 2],
  ["R2 U R U R' U' R' U' R' U R'", 3],
  ["R U2 R D' R' U2 R D R2", 3],
  ['M2 U M2 U2 M2 U M2', 2],
  ['M U', 8],
  ['Rw U', 120],
  ['M E S', 4],
  ['R y', 1260],
  // Four spots, six spots, a checkerboard on every face.
  ["F2 B2 U D' R2 L2 U D'", 2],
  ["U D' R L' F B' U D'", 3],
  ['R2 L2 U2 D2 F2 B2', 2],
])('[CU5] %s has order %i', (word, order) => {
  expect(orderOf(word)).toBe(order)
})
