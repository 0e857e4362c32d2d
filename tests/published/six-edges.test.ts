/**
 * A table of six edges, as R. E. Korf describes it: Finding Optimal Solutions to Rubik's Cube Using Pattern Databases, AAAI
 * 1997. Its size is 12!/6! * 2^6; its mean, 7.668, is quoted from memory. It depends on the six edges: for those of the top
 * face with FR and FL it was computed independently as 7.66797, with a range of 0 to 10 (check values, section 3).
 */

import { expect, test } from 'vitest'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { EDGE_PLACES } from '../../engine/cube/piece-places.ts'
import { buildDistanceTable } from '../../engine/search/tables/build-distance-table.ts'
import type { Facet } from '../../engine/search/tables/pair-tables.ts'
import { buildTrackedMoves, nTracked, type Tracking, trackedNumber } from '../../engine/search/tables/tracked-pieces.ts'

const THREE_EDGES: Tracking = { kind: 'edge', nPieces: 3, turned: true }
const N_POSITIONS = 42_577_920
const UNREACHED = 15

test('[SE35] six edges are on average as far from home as computed, which is what Korf gives, and at most ten turns', () => {
  const moves = buildTrackedMoves(THREE_EDGES)
  const threeEdges = (...names: string[]): Facet => {
    const pieces = names.map((name) => EDGE_PLACES.findIndex((place) => place.name === name))
    const numberOf = (position: CubePosition) => trackedNumber(position, pieces, THREE_EDGES)
    return { n: nTracked(THREE_EDGES), numberOf, moves: () => moves }
  }
  const table = { rows: threeEdges('UB', 'UL', 'UF'), columns: threeEdges('UR', 'FR', 'FL'), nReachable: N_POSITIONS }
  const packed = new Uint8Array((table.rows.n * table.columns.n) / 2)
  buildDistanceTable(table, packed)
  const counts = new Array<number>(UNREACHED + 1).fill(0)
  for (const byte of packed) {
    counts[byte & 15]++
    counts[byte >> 4]++
  }
  const reached = counts.slice(0, UNREACHED)
  expect(reached.reduce((sum, count) => sum + count, 0)).toBe(N_POSITIONS)
  expect(reached.findLastIndex((count) => count > 0)).toBe(10)
  const mean = reached.reduce((sum, count, distance) => sum + count * distance, 0) / N_POSITIONS
  expect(mean).toBeCloseTo(7.66797, 5)
}, 60_000)
