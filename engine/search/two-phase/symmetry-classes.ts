/**
 * Numbers that the sixteen symmetries of the vertical axis turn into each other, gathered into classes, so that a table
 * needs one row for each class only.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import { conjugatePosition, inverseSymmetry, N_AXIS_SYMMETRIES } from '../../cube/symmetry.ts'
import type { Coordinate } from './coordinate.ts'

/** The classes of the ranks of a coordinate. */
export type SymmetryClasses = {
  readonly nClasses: number
  /** By rank. */
  readonly classOf: Uint16Array
  /** By rank: the symmetry that leads from it to the one rank which stands for its class. */
  readonly symmetryOf: Uint8Array
  /** By class: the rank which stands for it. */
  readonly standFor: Uint32Array
  /** By class: bit `s` is set when symmetry `s` leaves the rank which stands for the class as it is. */
  readonly selfSymmetries: Uint16Array
}

const NO_SYMMETRY = 255

/**
 * @param conjugate the rank after a symmetry 0..15
 * Asserted nowhere: there are at most 65,536 classes.
 */
export function symmetryClasses(
  nRanks: number,
  conjugate: (rank: number, symmetry: number) => number,
): SymmetryClasses {
  const classOf = new Uint16Array(nRanks)
  const symmetryOf = new Uint8Array(nRanks).fill(NO_SYMMETRY)
  const standFor: number[] = []
  const selfSymmetries: number[] = []
  for (let rank = 0; rank < nRanks; rank++) {
    if (symmetryOf[rank] !== NO_SYMMETRY) continue
    let ownSymmetries = 0
    for (let symmetry = 0; symmetry < N_AXIS_SYMMETRIES; symmetry++) {
      const image = conjugate(rank, symmetry)
      if (image === rank) ownSymmetries |= 1 << symmetry
      if (symmetryOf[image] !== NO_SYMMETRY) continue
      classOf[image] = standFor.length
      symmetryOf[image] = inverseSymmetry(symmetry)
    }
    standFor.push(rank)
    selfSymmetries.push(ownSymmetries)
  }
  return {
    nClasses: standFor.length,
    classOf,
    symmetryOf,
    standFor: Uint32Array.from(standFor),
    selfSymmetries: Uint16Array.from(selfSymmetries),
  }
}

/** @returns the rank after each of the sixteen symmetries: `table[symmetry * nRanks + rank]` */
export function conjugateTable(coordinate: Coordinate): Uint16Array {
  const { nRanks, positionWith } = coordinate
  const table = new Uint16Array(N_AXIS_SYMMETRIES * nRanks)
  for (let rank = 0; rank < nRanks; rank++) {
    const position = positionWith(rank)
    for (let symmetry = 0; symmetry < N_AXIS_SYMMETRIES; symmetry++) {
      table[symmetry * nRanks + rank] = conjugateRank(coordinate, position, symmetry)
    }
  }
  return table
}

/** @returns the rank that a position has after a symmetry */
export function conjugateRank({ rankOf }: Coordinate, position: CubePosition, symmetry: number): number {
  return rankOf(conjugatePosition(position, symmetry))
}
