/** Exact distances of the corners. Rules SE: tests/RULES.md; the whole row: tests/published. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { EDGES_AT, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../../../engine/cube/hold.ts'
import { conjugatePosition, N_SYMMETRIES } from '../../../../engine/cube/symmetry.ts'
import { FACE_TURNS } from '../../../../engine/cube/turns.ts'
import {
  buildCornerTables,
  CORNER_BYTES,
  cornerCoordinatesOf,
  cornerDistance,
  fillCornerDistances,
} from '../../../../engine/search/two-phase/corner-distances.ts'
import { aPosition, SEED, someFaceTurns } from '../../cube/arbitraries.ts'

const tables = buildCornerTables()
const distances = new Uint8Array(CORNER_BYTES)
const told: Array<[number, number]> = []
fillCornerDistances(tables, distances, (...progress) => told.push(progress))

type Position = ReturnType<typeof solvedCube>

function distanceOf(position: Position): number {
  const { order, twist } = cornerCoordinatesOf(position)
  return cornerDistance(tables, distances, order, twist)
}

test('[SE25] the corners are at distance 0 exactly when all are home', () => {
  fc.assert(
    fc.property(someFaceTurns, (word) => {
      const position = afterTurns(solvedCube(), word)
      const areHome = position.subarray(0, EDGES_AT).every((code, place) => code === solvedCube()[place])
      expect(distanceOf(position) === 0).toBe(areHome)
    }),
    { seed: SEED },
  )
})

test('[SE25] some turn brings the corners nearer, and none changes their distance by more than one', () => {
  fc.assert(
    fc.property(aPosition.map(asHeldHome), (position) => {
      const changes = FACE_TURNS.map((turn) => distanceOf(afterTurns(position, [turn])) - distanceOf(position))
      if (distanceOf(position) > 0) expect(Math.min(...changes)).toBe(-1)
      expect(Math.max(...changes)).toBeLessThanOrEqual(1)
    }),
    { seed: SEED },
  )
})

test('[SE25] a short word never leads farther than it is long', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 8 }), (word) => {
      expect(distanceOf(afterTurns(solvedCube(), word))).toBeLessThanOrEqual(word.length)
    }),
    { seed: SEED },
  )
})

test('[SE25] all 48 symmetries leave the distance as it is', () => {
  fc.assert(
    fc.property(aPosition.map(asHeldHome), fc.nat(N_SYMMETRIES - 1), (position, symmetry) => {
      expect(distanceOf(conjugatePosition(position, symmetry))).toBe(distanceOf(position))
    }),
    { seed: SEED },
  )
})

test('[SE32] progress is told while a table is filled, rises, and ends at the whole', () => {
  const [nDone, nTotal] = told[told.length - 1]
  expect(told.length).toBeGreaterThan(5)
  expect(nDone).toBe(nTotal)
  expect(nTotal).toBe(6_053_616)
  expect(told.every(([done, total], index) => total === nTotal && done >= (told[index - 1]?.[0] ?? 0))).toBe(true)
})
