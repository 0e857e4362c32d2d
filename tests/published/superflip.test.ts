/**
 * The position in which every edge is flipped in its place, and its kin.
 *
 * Sources: M. Reid 1995 proved that it needs 20 face turns (word of 20 by him, also in encyclopaedias); D. Winter 1992,
 * another word of 20, on the same mailing list; a third word of 20, from memory; words of 24 quarter turns and of 16
 * turns of any layer, encyclopaedias; T. Rokicki and M. Davidson 2014, the one position known to need 26 quarter turns.
 * The words were checked with GAP 4.12.1; that none is shorter is quoted. The names of the spot patterns are the trade's.
 */

import { expect, test } from 'vitest'
import { composePositions } from '../../engine/cube/compose-positions.ts'
import { CENTRES_AT, type CubePosition, EDGES_AT, solvedCube } from '../../engine/cube/cube-position.ts'
import { countHalfTurnMetric } from '../../engine/cube/half-turn-metric.ts'
import { asHeldHome, HELD_CUBES } from '../../engine/cube/hold.ts'
import { CODE_AFTER_ADDING, edgeRow } from '../../engine/cube/piece-code.ts'
import { countQuarterTurnMetric } from '../../engine/cube/quarter-turn-metric.ts'
import { countSliceTurnMetric } from '../../engine/cube/slice-turn-metric.ts'
import { cubeAfter, turns } from '../engine/cube/arbitraries.ts'

const allEdgesFlipped = solvedCube().map((code, place) =>
  EDGES_AT <= place && place < CENTRES_AT ? CODE_AFTER_ADDING[edgeRow(1) + code] : code,
) as CubePosition

test.each([
  ["U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2", countHalfTurnMetric, 20],
  ["F B U2 R F2 R2 B2 U' D F U2 R' L' U B2 D R2 U B2 U", countHalfTurnMetric, 20],
  ["R L U2 F U' D F2 R2 B2 L U2 F' B' U R2 D F2 U R2 U", countHalfTurnMetric, 20],
  ["R' U2 B L' F U' B D F U D' L D2 F' R B' D F' U' B' U D'", countQuarterTurnMetric, 24],
  ["M2 U' R2 D' S M2 U M' U2 F2 D' S M2 U' R2 U'", countSliceTurnMetric, 16],
] as const)('[CU9] %s flips every edge in its place', (word, count, nTurns) => {
  expect(asHeldHome(cubeAfter(word))).toEqual(allEdgesFlipped)
  expect(count(turns(word))).toBe(nTurns)
})

test('[CU9] all edges flipped looks the same in every hold', () => {
  for (const held of HELD_CUBES) {
    expect(asHeldHome(composePositions(held, allEdgesFlipped))).toEqual(allEdgesFlipped)
  }
})

test('[CU9] the word of 26 quarter turns is all edges flipped on a four-spot, in some hold', () => {
  const word = "U2 F U2 R' L F2 U F' B' R L U2 R U D' R L' D R' L' D2"
  expect([countQuarterTurnMetric(turns(word)), countHalfTurnMetric(turns(word))]).toEqual([26, 21])
  const fourSpots = HELD_CUBES.map((held) => composePositions(held, cubeAfter("F2 B2 U D' R2 L2 U D'"))).map(asHeldHome)
  const candidates = fourSpots.map((fourSpot) => composePositions(allEdgesFlipped, fourSpot))
  expect(candidates).toContainEqual(cubeAfter(word))
})
