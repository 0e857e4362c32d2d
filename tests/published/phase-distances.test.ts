/**
 * Distances in the two phases: cosets of the subgroup that U, D, R2, L2, F2 and B2 generate, and positions within it.
 * Source: M. Reid, Cube-Lovers mailing list, 7 January 1995, on the method of H. Kociemba, 1992.
 */

import { expect, test } from 'vitest'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { FACE_TURNS, turnQuarters } from '../../engine/cube/turns.ts'
import { readDistance } from '../../engine/search/two-phase/class-twist-distances.ts'
import { N_FACE_TURNS } from '../../engine/search/two-phase/coordinate.ts'
import { N_SLICES, SLICE } from '../../engine/search/two-phase/edge-layers.ts'
import { N_TWISTS } from '../../engine/search/two-phase/orientation.ts'
import {
  buildPhase1Tables,
  fillPhase1Distances,
  PHASE_1_BYTES,
} from '../../engine/search/two-phase/phase-1-distances.ts'
import { buildPhase2Tables, N_PHASE_2_TURNS, PHASE_2_TURNS } from '../../engine/search/two-phase/phase-2-distances.ts'
import { classesWithTwists, classSizes } from './class-weights.ts'
import { countLayers } from './count-layers.ts'
import { NumberSet } from './number-set.ts'

const tables = buildPhase1Tables()
const { flipTurns, sliceTurns, flipSlices } = tables

test('[SE23] the table of phase 1 holds as many cosets at each distance as published', () => {
  const distances = new Uint8Array(PHASE_1_BYTES)
  fillPhase1Distances(tables, distances)
  const counts: number[] = new Array(13).fill(0)
  for (const [classNumber, size] of classSizes(flipSlices).entries()) {
    for (let twist = 0; twist < N_TWISTS; twist++) counts[readDistance(distances, classNumber, twist)] += size
  }
  expect(counts).toEqual([
    1, 4, 50, 592, 7_156, 87_236, 1_043_817, 12_070_278, 124_946_368, 821_605_960, 1_199_128_738, 58_202_444, 476,
  ])
})

test('[SE23] cosets of phase 1 in quarter turns are first met as published, to depth 7', () => {
  const rankAfter = (rank: number, turn: number) => {
    const slice = rank % N_SLICES
    const flip = (rank - slice) / N_SLICES
    return flipTurns[flip * N_FACE_TURNS + turn] * N_SLICES + sliceTurns[slice * N_FACE_TURNS + turn]
  }
  const turns = FACE_TURNS.filter((turn) => turnQuarters(turn) !== 2)
  const home = SLICE.rankOf(solvedCube())
  expect(countLayers(classesWithTwists(flipSlices, tables, home, turns, rankAfter), 7)).toEqual([
    1, 4, 34, 312, 2_772, 24_996, 225_949, 2_017_078,
  ])
})

test('[SE23] positions of phase 2 in its ten turns are first met as published, to depth 8', () => {
  const { cornerOrderTurns, outerOrderTurns, sliceOrderTurns } = buildPhase2Tables()
  const [nOuterOrders, nSliceOrders] = [outerOrderTurns.length, sliceOrderTurns.length].map((n) => n / N_PHASE_2_TURNS)
  let [before, last] = [new NumberSet(1), new NumberSet(1)]
  last.add(0)
  const counts = [1]
  for (let depth = 1; depth <= 8; depth++) {
    const next = new NumberSet(last.size * N_PHASE_2_TURNS)
    for (const number of last.values()) {
      const slice = number % nSliceOrders
      const pair = (number - slice) / nSliceOrders
      const outer = pair % nOuterOrders
      const corner = (pair - outer) / nOuterOrders
      for (const [index, turn] of PHASE_2_TURNS.entries()) {
        const cornerThen = cornerOrderTurns[corner * N_FACE_TURNS + turn]
        const outerThen = outerOrderTurns[outer * N_PHASE_2_TURNS + index]
        const sliceThen = sliceOrderTurns[slice * N_PHASE_2_TURNS + index]
        const reached = (cornerThen * nOuterOrders + outerThen) * nSliceOrders + sliceThen
        // The turns hold each other's inverses: what is not of the last two layers is new.
        if (!last.has(reached) && !before.has(reached)) next.add(reached)
      }
    }
    counts.push(next.size)
    ;[before, last] = [last, next]
  }
  expect(counts).toEqual([1, 10, 67, 456, 3_079, 19_948, 123_074, 736_850, 4_185_118])
})
