/**
 * The distance tables over a few pieces each. Every one is kept for one choice of pieces only, and is asked about a
 * position as it looks from several sides: so one table of "cross and one corner" serves for all four corners.
 *
 *     table                 entries       asked about                                    mean
 *     cross-corner          4,561,920     base edges and a base corner                   6.990
 *     base-corners-edge     3,265,920     base corners and a base edge                   6.687
 *     middle-corner         4,561,920     middle edges and a base corner                 6.856
 *     middle-edge           4,561,920     middle edges and a base edge                   6.716 (a third is unreached)
 *     flips-base           24,330,240     places of the base edges and all flips         7.531
 *     flips-middle         24,330,240     places of the middle edges and all flips       7.647
 *
 * All are admissible and consistent. Two entries a byte: 33 MB in all.
 * Source of the idea: J. C. Culberson and J. Schaeffer, Pattern databases, Computational Intelligence 14 (1998) 318-334;
 * which pieces to put together was found by counting the nodes that searches need.
 */

import { type CubePosition, EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { BASE_CORNERS, BASE_EDGES, MIDDLE_EDGES } from '../../method/goal-part.ts'
import { turnTable } from '../two-phase/coordinate.ts'
import { FLIP } from '../two-phase/orientation.ts'
import { buildTrackedMoves, nTracked, type Tracking, trackedNumber } from './tracked-pieces.ts'

/** The names of these tables, and of their files. */
export const PAIR_TABLE_NAMES = [
  'cross-corner',
  'base-corners-edge',
  'middle-corner',
  'middle-edge',
  'flips-base',
  'flips-middle',
] as const

/** One of them. */
export type PairTableName = (typeof PAIR_TABLE_NAMES)[number]

/** A number read off a position, how many there are, and what turns make of it. */
export type Facet = {
  readonly n: number
  /** @param position held home */
  readonly numberOf: (position: CubePosition) => number
  /** `[number * 18 + turn]`, made at first use. */
  readonly moves: () => Uint32Array
}

/** What a table is over: a row and a column for every pair of numbers. */
export type PairTable = {
  readonly rows: Facet
  readonly columns: Facet
  /** Entries that a cube can have; fewer than rows times columns where pieces of both would share a place. */
  readonly nReachable: number
}

const edge = (place: number) => place - EDGES_AT
const baseEdges = BASE_EDGES.map(edge)
const middleEdges = MIDDLE_EDGES.map(edge)
const [aBaseCorner] = BASE_CORNERS
const [aBaseEdge] = baseEdges

const fourEdges: Tracking = { kind: 'edge', nPieces: 4, turned: true }
const fourEdgePlaces: Tracking = { kind: 'edge', nPieces: 4, turned: false }
const fourCorners: Tracking = { kind: 'corner', nPieces: 4, turned: true }
const oneCorner: Tracking = { kind: 'corner', nPieces: 1, turned: true }
const oneEdge: Tracking = { kind: 'edge', nPieces: 1, turned: true }

const movesOf = new Map<Tracking, Uint32Array>()
const flipFacet: Facet = {
  n: FLIP.nRanks,
  numberOf: FLIP.rankOf,
  moves: once(() => Uint32Array.from(turnTable(FLIP))),
}

/** The tables by name. */
export const PAIR_TABLES: Readonly<Record<PairTableName, PairTable>> = {
  'cross-corner': pairOf(tracked(fourEdges, baseEdges), tracked(oneCorner, [aBaseCorner])),
  'base-corners-edge': pairOf(tracked(fourCorners, BASE_CORNERS), tracked(oneEdge, [aBaseEdge])),
  'middle-corner': pairOf(tracked(fourEdges, middleEdges), tracked(oneCorner, [aBaseCorner])),
  // The fifth edge has 8 of 12 places left.
  'middle-edge': pairOf(tracked(fourEdges, middleEdges), tracked(oneEdge, [aBaseEdge]), 8 / 12),
  'flips-base': pairOf(tracked(fourEdgePlaces, baseEdges), flipFacet),
  'flips-middle': pairOf(tracked(fourEdgePlaces, middleEdges), flipFacet),
}

/** @returns the length of the packed table in bytes */
export function pairTableBytes(name: PairTableName): number {
  const { rows, columns } = PAIR_TABLES[name]
  return (rows.n * columns.n) / 2
}

/** @returns the entry at distance 0 */
export function homeEntry({ rows, columns }: PairTable): number {
  return rows.numberOf(solvedCube()) * columns.n + columns.numberOf(solvedCube())
}

function pairOf(rows: Facet, columns: Facet, shareReachable = 1): PairTable {
  return { rows, columns, nReachable: rows.n * columns.n * shareReachable }
}

function tracked(tracking: Tracking, pieces: readonly number[]): Facet {
  return {
    n: nTracked(tracking),
    numberOf: (position) => trackedNumber(position, pieces, tracking),
    // Turns carry whatever stands at a place: the base edges and the middle edges share one table.
    moves: () => {
      const moves = movesOf.get(tracking) ?? buildTrackedMoves(tracking)
      movesOf.set(tracking, moves)
      return moves
    },
  }
}

function once<T>(make: () => T): () => T {
  let made: T | undefined
  return () => {
    made ??= make()
    return made
  }
}
