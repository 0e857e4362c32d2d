/** Numbers for parts of a position. Rules SE: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { composePositions } from '../../../../engine/cube/compose-positions.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../../../engine/cube/hold.ts'
import { findLegalityFault } from '../../../../engine/cube/legality.ts'
import { conjugatePosition, N_AXIS_SYMMETRIES } from '../../../../engine/cube/symmetry.ts'
import { FACE_TURNS, type Turn } from '../../../../engine/cube/turns.ts'
import { type Coordinate, turnTable } from '../../../../engine/search/two-phase/coordinate.ts'
import { CORNER_ORDER } from '../../../../engine/search/two-phase/corner-order.ts'
import {
  BASE_LAYER,
  MIDDLE_LAYER,
  placingOfLayer,
  SLICE,
  TOP_LAYER,
} from '../../../../engine/search/two-phase/edge-layers.ts'
import { buildPlacingTables, OUTER_ORDER, SLICE_ORDER } from '../../../../engine/search/two-phase/edge-orders.ts'
import { inversePosition } from '../../../../engine/search/two-phase/inverse-position.ts'
import { NO_FACE, nextTurns } from '../../../../engine/search/two-phase/next-turns.ts'
import { FLIP, TWIST } from '../../../../engine/search/two-phase/orientation.ts'
import { PHASE_2_TURNS } from '../../../../engine/search/two-phase/phase-2-distances.ts'
import { conjugateTable, symmetryClasses } from '../../../../engine/search/two-phase/symmetry-classes.ts'
import { aPosition, SEED, someFaceTurns, turns } from '../../cube/arbitraries.ts'

type Row = readonly [name: string, coordinate: Coordinate, nRanks: number, turns: readonly Turn[]]

const ROWS: readonly Row[] = [
  ['twist', TWIST, 2_187, FACE_TURNS],
  ['flip', FLIP, 2_048, FACE_TURNS],
  ['slice', SLICE, 495, FACE_TURNS],
  ['corner order', CORNER_ORDER, 40_320, FACE_TURNS],
  ['placing of the top edges', placingOfLayer(TOP_LAYER), 11_880, FACE_TURNS],
  ['placing of the middle edges', placingOfLayer(MIDDLE_LAYER), 11_880, FACE_TURNS],
  ['placing of the base edges', placingOfLayer(BASE_LAYER), 11_880, FACE_TURNS],
  ['outer order', OUTER_ORDER, 40_320, PHASE_2_TURNS],
  ['slice order', SLICE_ORDER, 24, PHASE_2_TURNS],
]

/** The ten turns of the second phase, in any number. */
const somePhase2Turns = fc.array(fc.constantFrom(...PHASE_2_TURNS), { maxLength: 40 })

describe.each(ROWS)('%s', (_, coordinate, nRanks, itsTurns) => {
  const { rankOf, positionWith } = coordinate

  test('[SE20] every number is that of a legal position, and is read back from it', () => {
    expect(coordinate.nRanks).toBe(nRanks)
    for (let rank = 0; rank < nRanks; rank++) {
      const position = positionWith(rank)
      if (rankOf(position) !== rank) expect(rankOf(position)).toBe(rank)
      if (findLegalityFault(position) !== undefined) expect(findLegalityFault(position)).toBeUndefined()
    }
  })

  test('[SE21] the table of turns says what turning does, word by word', () => {
    const table = turnTable(coordinate, itsTurns)
    const someTurns = itsTurns === FACE_TURNS ? someFaceTurns : somePhase2Turns
    fc.assert(
      fc.property(someTurns, (word) => {
        let rank = rankOf(solvedCube())
        for (const turn of word) rank = table[rank * itsTurns.length + itsTurns.indexOf(turn)]
        expect(rank).toBe(rankOf(afterTurns(solvedCube(), word)))
      }),
      { seed: SEED },
    )
  })
})

test('[SE20] the orders of phase 2 can be read off where the edges of each layer stand', () => {
  const { placingTurns, innerOrders, outerPlacings } = buildPlacingTables()
  const layers = [TOP_LAYER, MIDDLE_LAYER, BASE_LAYER].map(placingOfLayer)
  fc.assert(
    fc.property(someFaceTurns, somePhase2Turns, (away, word) => {
      const position = afterTurns(solvedCube(), word)
      const [top, middle, base] = layers.map(({ rankOf }) => rankOf(position))
      expect(innerOrders[middle]).toBe(SLICE_ORDER.rankOf(position))
      expect(outerPlacings[top] + innerOrders[base]).toBe(OUTER_ORDER.rankOf(position))
      for (const { rankOf } of layers) {
        let placing = rankOf(position)
        for (const turn of away) placing = placingTurns[placing * FACE_TURNS.length + turn]
        expect(placing).toBe(rankOf(afterTurns(position, away)))
      }
    }),
    { seed: SEED },
  )
})

test('[SE22] the tables of symmetries say what a symmetry does to any position', () => {
  const tables = [TWIST, SLICE].map((coordinate) => ({ ...coordinate, table: conjugateTable(coordinate) }))
  fc.assert(
    fc.property(aPosition.map(asHeldHome), fc.nat(N_AXIS_SYMMETRIES - 1), (position, symmetry) => {
      for (const { rankOf, nRanks, table } of tables) {
        expect(table[symmetry * nRanks + rankOf(position)]).toBe(rankOf(conjugatePosition(position, symmetry)))
      }
    }),
    { seed: SEED },
  )
})

test('[SE22] a class gathers the slices that symmetries turn into each other, each with its way to the one that stands for it', () => {
  const table = conjugateTable(SLICE)
  const { nClasses, classOf, symmetryOf, standFor, selfSymmetries } = symmetryClasses(
    SLICE.nRanks,
    (slice, symmetry) => table[symmetry * SLICE.nRanks + slice],
  )
  for (let slice = 0; slice < SLICE.nRanks; slice++) {
    expect(table[symmetryOf[slice] * SLICE.nRanks + slice]).toBe(standFor[classOf[slice]])
    for (let symmetry = 0; symmetry < N_AXIS_SYMMETRIES; symmetry++) {
      const image = table[symmetry * SLICE.nRanks + slice]
      expect(classOf[image]).toBe(classOf[slice])
      if (standFor[classOf[slice]] === slice) {
        expect((selfSymmetries[classOf[slice]] >>> symmetry) & 1).toBe(image === slice ? 1 : 0)
      }
    }
  }
  expect(new Set(classOf).size).toBe(nClasses)
})

test('[SE33] a position and its inverse, one after the other, are the solved cube', () => {
  fc.assert(
    fc.property(aPosition.map(asHeldHome), (position) => {
      const inverse = inversePosition(position)
      expect(composePositions(position, inverse)).toEqual(solvedCube())
      expect(composePositions(inverse, position)).toEqual(solvedCube())
    }),
    { seed: SEED },
  )
})

test('[SE34] no face follows itself, and of two opposite faces one order is left', () => {
  const next = nextTurns(FACE_TURNS)
  const mayFollow = (last: string, then: string) => {
    const [[lastTurn], [thenTurn]] = [turns(last), turns(then)]
    return next[Math.trunc(lastTurn / 3)].includes(thenTurn)
  }
  expect(mayFollow('R', "R'")).toBe(false)
  expect(mayFollow('R', 'L2')).toBe(true)
  expect(mayFollow('L2', 'R')).toBe(false)
  expect(mayFollow('R', 'U')).toBe(true)
  expect(next[NO_FACE]).toHaveLength(18)
  // Twelve of the eighteen turns may follow after the later face of an axis, fifteen after the earlier one.
  expect(next.map((turns) => turns.length).sort((a, b) => a - b)).toEqual([12, 12, 12, 15, 15, 15, 18])
})
