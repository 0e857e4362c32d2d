/**
 * Which lower bounds are asked on the way to each goal, from which sides, and in which order.
 *
 * A goal of stages 2 to 6 looks the same from all four sides, so a table of a few pieces is asked four times, each time
 * about the position as it looks after a quarter turn of the whole cube. How edges are flipped is told against one
 * horizontal axis, so these tables have two sides. The solved cube looks the same along all three axes: phase 1 is asked
 * along each. Order: what cuts off most for its price comes first; found by measuring.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import type { Face } from '../../cube/faces.ts'
import {
  conjugatePosition,
  conjugateTurn,
  N_SYMMETRIES,
  N_UPRIGHT_SYMMETRIES,
  type Symmetry,
} from '../../cube/symmetry.ts'
import { FACE_TURNS, turnAxis, turnOf } from '../../cube/turns.ts'
import type { Stage } from '../../method/stages.ts'
import { assert } from '../../result.ts'
import { type Coordinate, N_FACE_TURNS } from '../two-phase/coordinate.ts'
import { buildCornerTables, type CornerTables } from '../two-phase/corner-distances.ts'
import { CORNER_ORDER } from '../two-phase/corner-order.ts'
import { N_SLICES, SLICE } from '../two-phase/edge-layers.ts'
import { FLIP, N_TWISTS, TWIST } from '../two-phase/orientation.ts'
import { buildPhase1Tables, type Phase1Tables } from '../two-phase/phase-1-distances.ts'
import type { SymmetryClasses } from '../two-phase/symmetry-classes.ts'
import type { LowerBound, WalkedNumber } from './deepen.ts'
import { type Facet, PAIR_TABLE_NAMES, PAIR_TABLES, type PairTableName } from './pair-tables.ts'
import { TABLES_FOR_GOAL, type TableBytes } from './search-tables.ts'

const SOLVED: Stage = 7

/** What a search walks and asks. */
export type BoundsOfPosition = { readonly numbers: WalkedNumber[]; readonly bounds: LowerBound[] }

/** Small tables that are at hand already, such as those that threads share; whichever is left out is made when needed. */
export type SmallTables = {
  readonly phase1?: Phase1Tables
  readonly corners?: CornerTables
  /** What turns make of the rows and columns of each pair table. */
  readonly moves?: Readonly<Record<PairTableName, { readonly rows: Uint32Array; readonly columns: Uint32Array }>>
}

/** Everything that is needed to ask: the large tables and the small ones beside them. */
export type OpenTables = {
  /** @returns the bounds for a position held home on its way to a goal 2 to 7; asserts that the tables are there */
  boundsFor(position: CubePosition, goal: Stage): BoundsOfPosition
}

const UP = turnOf('U')
const UPRIGHT: readonly Symmetry[] = Array.from({ length: N_UPRIGHT_SYMMETRIES }, (_, symmetry) => symmetry)
/** The four sides from which a cube can be looked at with its top up. */
const FOUR_SIDES: readonly Symmetry[] = UPRIGHT.filter((symmetry) => conjugateTurn(UP, symmetry) === UP)
const AS_IT_IS: readonly Symmetry[] = [0]
/** Two sides at right angles: what lies along one horizontal axis lies along the other then. */
const TWO_SIDES: readonly Symmetry[] = [...AS_IT_IS, ...FOUR_SIDES.filter(exchangesHorizontalAxes).slice(0, 1)]
/** A symmetry for each axis that stands it upright. */
const THREE_AXES: readonly Symmetry[] = (['U', 'R', 'F'] as const).map(symmetryThatStandsUp)

const SIDES_ASKED: Readonly<Record<PairTableName, readonly Symmetry[]>> = {
  'cross-corner': FOUR_SIDES,
  'base-corners-edge': FOUR_SIDES,
  'middle-corner': FOUR_SIDES,
  'middle-edge': FOUR_SIDES,
  'flips-base': TWO_SIDES,
  'flips-middle': TWO_SIDES,
}

/** Entries of a row of twists, with the half byte to spare. */
const TWIST_ROW_ENTRIES = N_TWISTS + 1

/**
 * @param bytes the large tables; those that a goal needs must be there when it is asked for
 * @returns a way to ask them. The small tables are made when they are first needed, in some 0.5 s, unless they are given.
 */
export function openTables(bytes: TableBytes, small: SmallTables = {}): OpenTables {
  const movesOf = movesAtHand(small)
  let phase1: Phase1Facets | undefined
  let corners: CornerFacets | undefined
  return {
    boundsFor(position, goal) {
      const walk = new Walk(position, movesOf)
      for (const name of TABLES_FOR_GOAL[goal]) {
        const distances = bytes[name]
        assert(distances !== undefined, `the table ${name} is there before it is asked`)
        if (name === 'phase-1') {
          phase1 ??= phase1Facets(small.phase1 ?? buildPhase1Tables())
          for (const side of goal === SOLVED ? THREE_AXES : AS_IT_IS) addPhase1(walk, distances, phase1, side)
        } else if (name === 'corners') {
          corners ??= cornerFacets(small.corners ?? buildCornerTables())
          addCorners(walk, distances, corners)
        } else {
          for (const side of SIDES_ASKED[name]) addPair(walk, distances, name, side)
        }
      }
      return walk
    },
  }
}

/** Gathers numbers and bounds; each number is walked once, however many bounds ask it. */
class Walk implements BoundsOfPosition {
  readonly numbers: WalkedNumber[] = []
  readonly bounds: LowerBound[] = []
  readonly #position: CubePosition
  readonly #movesOf: (facet: Facet) => Uint32Array
  readonly #known = new Map<string, number>()
  readonly #facetIds = new Map<Facet, number>()

  constructor(position: CubePosition, movesOf: (facet: Facet) => Uint32Array) {
    this.#position = position
    this.#movesOf = movesOf
  }

  /** @returns the index of the number that the facet has for the position as it looks after the symmetry */
  number(facet: Facet, symmetry: Symmetry): number {
    const facetId = this.#facetIds.get(facet) ?? this.#facetIds.size
    this.#facetIds.set(facet, facetId)
    const key = `${facetId} ${symmetry}`
    const index = this.#known.get(key) ?? this.numbers.length
    if (index === this.numbers.length) {
      this.numbers.push({
        start: facet.numberOf(conjugatePosition(this.#position, symmetry)),
        moves: this.#movesOf(facet),
        turnImages: TURN_IMAGES[symmetry],
      })
      this.#known.set(key, index)
    }
    return index
  }
}

function movesAtHand({ moves }: SmallTables): (facet: Facet) => Uint32Array {
  const atHand = new Map<Facet, Uint32Array>()
  if (moves !== undefined) {
    for (const name of PAIR_TABLE_NAMES) {
      atHand.set(PAIR_TABLES[name].rows, moves[name].rows)
      atHand.set(PAIR_TABLES[name].columns, moves[name].columns)
    }
  }
  return (facet) => atHand.get(facet) ?? facet.moves()
}

const TURN_IMAGES: readonly Uint8Array[] = Array.from({ length: N_SYMMETRIES }, (_, symmetry) =>
  Uint8Array.from(FACE_TURNS, (turn) => conjugateTurn(turn, symmetry)),
)

function addPair(walk: Walk, distances: Uint8Array, name: PairTableName, side: Symmetry): void {
  const { rows, columns } = PAIR_TABLES[name]
  const [row, column] = [walk.number(rows, side), walk.number(columns, side)]
  walk.bounds.push({ kind: 'pair', distances, nColumns: columns.n, row, column })
}

type Phase1Facets = {
  readonly tables: Phase1Tables
  readonly twist: Facet
  readonly flip: Facet
  readonly slice: Facet
}

function phase1Facets(tables: Phase1Tables): Phase1Facets {
  return {
    tables,
    twist: facetOf(TWIST, tables.twistTurns),
    flip: facetOf(FLIP, tables.flipTurns),
    slice: facetOf(SLICE, tables.sliceTurns),
  }
}

function addPhase1(walk: Walk, distances: Uint8Array, { tables, twist, flip, slice }: Phase1Facets, side: Symmetry) {
  walk.bounds.push({
    ...classBound(distances, tables.flipSlices, tables.twistConjugates),
    high: walk.number(flip, side),
    factor: N_SLICES,
    low: walk.number(slice, side),
    column: walk.number(twist, side),
  })
}

type CornerFacets = { readonly tables: CornerTables; readonly twist: Facet; readonly order: Facet }

function cornerFacets(tables: CornerTables): CornerFacets {
  return { tables, twist: facetOf(TWIST, tables.twistTurns), order: facetOf(CORNER_ORDER, tables.cornerOrderTurns) }
}

function addCorners(walk: Walk, distances: Uint8Array, { tables, twist, order }: CornerFacets): void {
  const [side] = AS_IT_IS
  walk.bounds.push({
    ...classBound(distances, tables.cornerOrders, tables.twistConjugates),
    high: walk.number(order, side),
    factor: 1,
    low: walk.number(NOTHING, side),
    column: walk.number(twist, side),
  })
}

function classBound(distances: Uint8Array, { classOf, symmetryOf }: SymmetryClasses, columnImages: Uint16Array) {
  const shape = { nColumns: N_TWISTS, rowEntries: TWIST_ROW_ENTRIES }
  return { kind: 'class', distances, ...shape, classOf, symmetryOf, columnImages } as const
}

function facetOf({ nRanks, rankOf }: Coordinate, turns: Uint16Array): Facet {
  const moves = Uint32Array.from(turns)
  return { n: nRanks, numberOf: rankOf, moves: () => moves }
}

/** A number that is always 0, where a bound has no use for one. */
const NOTHING: Facet = { n: 1, numberOf: () => 0, moves: () => NO_MOVES }
const NO_MOVES = new Uint32Array(N_FACE_TURNS)

function exchangesHorizontalAxes(symmetry: Symmetry): boolean {
  const axis = turnAxis(conjugateTurn(turnOf('R'), symmetry))
  return axis === 'F' || axis === 'B'
}

function symmetryThatStandsUp(face: Face): Symmetry {
  const turn = turnOf(face)
  for (let symmetry = 0; symmetry < N_SYMMETRIES; symmetry++) {
    if (conjugateTurn(turn, symmetry) === UP) return symmetry
  }
  throw new Error(`No symmetry stands ${face} up`)
}
