/**
 * Exact distances, in face turns, to the subgroup that U, D, R2, L2, F2 and B2 generate: 2,217,093,120 cosets, told apart
 * by twist, flip and slice; 140,908,410 entries after the symmetries of the vertical axis, in 70 MB.
 *
 * As a lower bound of the turns to the solved cube it is admissible and consistent.
 * Source: H. Kociemba 1992, as described by M. Reid, Cube-Lovers mailing list, 7 January 1995.
 */

import { type CubePosition, solvedCube } from '../../cube/cube-position.ts'
import { classTwistBytes, fillClassTwistDistances, type OnProgress, readDistance } from './class-twist-distances.ts'
import { N_FACE_TURNS, turnTable } from './coordinate.ts'
import { distancesOver } from './distances-over.ts'
import { N_SLICES, SLICE } from './edge-layers.ts'
import { FLIP, N_FLIPS, N_TWISTS, TWIST } from './orientation.ts'
import { conjugateTable, type SymmetryClasses, symmetryClasses } from './symmetry-classes.ts'
import { buildTwistTables, type TwistTables } from './twist-tables.ts'

const HOME_SLICE = SLICE.rankOf(solvedCube())

/** What to know of a position in phase 1. */
export type Phase1Coordinates = {
  /** 0..2186 */
  readonly twist: number
  /** 0..2047 */
  readonly flip: number
  /** 0..494; 69 is home. */
  readonly slice: number
}

/** All but the large table, 7.7 MB: made anew in every thread, or shared. */
export type Phase1Tables = TwistTables & {
  /** `[flip * 18 + turn]` */
  readonly flipTurns: Uint16Array
  /** `[slice * 18 + turn]` */
  readonly sliceTurns: Uint16Array
  /** Of flip and slice together: rank `flip * 495 + slice`. */
  readonly flipSlices: SymmetryClasses
  /**
   * By the same rank, in one number: class << 8 | fewest turns that bring flip and slice alone home << 4 | symmetry.
   * Optimisation: one look-up instead of three, and the turns alone rule two positions in three out before the large table
   * is asked, which does not fit in the processor's cache.
   */
  readonly flipSliceKeys: Uint32Array
}

/** Length of the large table: 64,430 classes. */
export const PHASE_1_BYTES = classTwistBytes(64_430)

/** @param position held home */
export function phase1CoordinatesOf(position: CubePosition): Phase1Coordinates {
  return { twist: TWIST.rankOf(position), flip: FLIP.rankOf(position), slice: SLICE.rankOf(position) }
}

/** @returns the small tables, made in some 0.3 s */
export function buildPhase1Tables(): Phase1Tables {
  const flipTurns = turnTable(FLIP)
  const sliceTurns = turnTable(SLICE)
  const flipSlices = flipSliceClasses()
  const rankAfter = (rank: number, turn: number) => flipSliceAfter(flipTurns, sliceTurns, rank, turn)
  const distances = distancesOver(N_FLIPS * N_SLICES, HOME_SLICE, N_FACE_TURNS, rankAfter)
  const { classOf, symmetryOf } = flipSlices
  const flipSliceKeys = Uint32Array.from(
    classOf,
    (number, rank) => (number << 8) | (distances[rank] << 4) | symmetryOf[rank],
  )
  return { ...buildTwistTables(), flipTurns, sliceTurns, flipSlices, flipSliceKeys }
}

/**
 * Fills the large table, in a few seconds.
 *
 * @param distances `PHASE_1_BYTES` long; may lie on shared memory
 */
export function fillPhase1Distances(tables: Phase1Tables, distances: Uint8Array, onProgress?: OnProgress): void {
  const { twistTurns, twistConjugates, flipTurns, sliceTurns, flipSlices } = tables
  fillClassTwistDistances(
    {
      classes: flipSlices,
      rankAfter: (rank, turn) => flipSliceAfter(flipTurns, sliceTurns, rank, turn),
      twistTurns,
      twistConjugates,
      home: HOME_SLICE,
    },
    distances,
    onProgress,
  )
}

/** @returns the fewest face turns to the subgroup, 0..12. Allocates nothing. */
export function phase1Distance(
  { flipSliceKeys, twistConjugates }: Phase1Tables,
  distances: Uint8Array,
  twist: number,
  flip: number,
  slice: number,
): number {
  const key = flipSliceKeys[flip * N_SLICES + slice]
  return readDistance(distances, key >>> 8, twistConjugates[(key & 15) * N_TWISTS + twist])
}

/** Is `phase1Distance` at most `turnsMax`? Faster than the distance where the answer is mostly no. */
export function isWithinPhase1(
  { flipSliceKeys, twistConjugates }: Phase1Tables,
  distances: Uint8Array,
  twist: number,
  flip: number,
  slice: number,
  turnsMax: number,
): boolean {
  const key = flipSliceKeys[flip * N_SLICES + slice]
  if (((key >>> 4) & 15) > turnsMax) return false
  return readDistance(distances, key >>> 8, twistConjugates[(key & 15) * N_TWISTS + twist]) <= turnsMax
}

function flipSliceAfter(flipTurns: Uint16Array, sliceTurns: Uint16Array, rank: number, turn: number): number {
  const slice = rank % N_SLICES
  const flip = (rank - slice) / N_SLICES
  return flipTurns[flip * N_FACE_TURNS + turn] * N_SLICES + sliceTurns[slice * N_FACE_TURNS + turn]
}

/**
 * A symmetry that exchanges the horizontal axes takes the reference stickers of the middle edges elsewhere. So an edge
 * gains a flip where either the piece or the place is of the middle layer, and not both: which edges those are depends on
 * the slice alone, and flips add up bit by bit.
 */
function flipSliceClasses(): SymmetryClasses {
  const flipConjugates = conjugateTable(FLIP)
  const sliceConjugates = conjugateTable(SLICE)
  const flipsGained = conjugateTable({ ...SLICE, rankOf: FLIP.rankOf })
  return symmetryClasses(N_FLIPS * N_SLICES, (rank, symmetry) => {
    const slice = rank % N_SLICES
    const flip = (rank - slice) / N_SLICES
    const sliceAt = symmetry * N_SLICES + slice
    return (flipConjugates[symmetry * N_FLIPS + flip] ^ flipsGained[sliceAt]) * N_SLICES + sliceConjugates[sliceAt]
  })
}
