/**
 * Positions first met after n turns from the solved cube.
 *
 * Sources: face turns, OEIS A080583 (whose terms are the sums of these); quarter turns, OEIS A080602; any one layer, up
 * to a re-hold, computed with GAP 4.12.1. The row of three turns of any layer is as far as a test should go.
 */

import { expect, test } from 'vitest'
import { ALL_TURNS, FACE_TURNS, turnKind, turnQuarters } from '../../engine/cube/turns.ts'
import { countFirstMet } from './breadth-first.ts'

const HALF_TURN_METRIC = [1, 18, 243, 3_240, 43_239, 574_908]
const QUARTER_TURN_METRIC = [1, 12, 114, 1_068, 10_011, 93_840]
const SLICE_TURN_METRIC = [1, 27, 501, 9_175]

const quarterTurns = FACE_TURNS.filter((turn) => turnQuarters(turn) !== 2)
const layerTurns = ALL_TURNS.filter((turn) => turnKind(turn) === 'face' || turnKind(turn) === 'slice')

const rows = (counts: readonly number[]) => counts.map((nStates, depth) => [depth, nStates] as const)
const metHalf = countFirstMet(FACE_TURNS, 5)
const metQuarter = countFirstMet(quarterTurns, 5)
const metSlice = countFirstMet(layerTurns, 3, true)

test.each(rows(HALF_TURN_METRIC))('[CU2] depth %i in face turns first meets %i states', (depthTurns, nStates) => {
  expect(metHalf[depthTurns]).toBe(nStates)
})

test.each(rows(QUARTER_TURN_METRIC))('[CU2] depth %i in quarter turns first meets %i states', (depthTurns, nStates) => {
  expect(metQuarter[depthTurns]).toBe(nStates)
})

test.each(rows(SLICE_TURN_METRIC))(
  '[CU2] depth %i in turns of any layer first meets %i states',
  (depthTurns, nStates) => {
    expect(metSlice[depthTurns]).toBe(nStates)
  },
)
