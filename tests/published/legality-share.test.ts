/**
 * Of all ways to put the pieces of a cube together, one in twelve can be solved by turns.
 * Source: D. Singmaster, Notes on Rubik's Magic Cube, 1980; OEIS A080602 (order of the group).
 */

import { expect, test } from 'vitest'
import { below, shuffle } from '../../engine/chance/random-source.ts'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { findLegalityFault } from '../../engine/cube/legality.ts'
import { cornerCode, edgeCode } from '../../engine/cube/piece-code.ts'
import { sourceNumbered } from '../engine/method/starts.ts'
import { looksFair, tally } from './chi-square.ts'

const factorial = (n: bigint): bigint => (n === 0n ? 1n : n * factorial(n - 1n))

test('[LE3] all assemblies are twelve times as many as the positions', () => {
  const nAssemblies = factorial(8n) * 3n ** 8n * factorial(12n) * 2n ** 12n
  expect(nAssemblies).toBe(12n * 43_252_003_274_489_856_000n)
})

/** Cells of the check: legal or what is wrong first, with the share out of 12 that counting gives. */
const VERDICTS = ['legal', 'cube/corner-twist', 'cube/edge-flip', 'cube/parity']
const SHARES_OUT_OF_12 = [1, 8, 2, 1]

test('[LE3] of pieces put together at random one assembly in twelve is accepted, the others for their reasons', () => {
  const random = sourceNumbered(12)
  const counts = tally(24_000, VERDICTS.length, () => {
    const corners = Array.from({ length: 8 }, (_, piece) => piece)
    const edges = Array.from({ length: 12 }, (_, piece) => piece)
    shuffle(random, corners)
    shuffle(random, edges)
    const assembly = Uint8Array.from([
      ...corners.map((piece) => cornerCode(piece, below(random, 3))),
      ...edges.map((piece) => edgeCode(piece, below(random, 2))),
      ...solvedCube().subarray(20),
    ])
    return VERDICTS.indexOf(findLegalityFault(assembly)?.code ?? 'legal')
  })
  expect(looksFair(counts, SHARES_OUT_OF_12)).toBe(true)
})
