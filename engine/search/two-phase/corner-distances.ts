/**
 * Exact distances of the eight corners to home, in face turns: 88,179,840 arrangements, told apart by order and twist;
 * 6,053,616 entries after the symmetries of the vertical axis, in 3 MB.
 *
 * As a lower bound of the turns to the solved cube it is admissible and consistent.
 * Source: R. E. Korf, Finding Optimal Solutions to Rubik's Cube Using Pattern Databases, AAAI 1997.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import { classTwistBytes, fillClassTwistDistances, type OnProgress, readDistance } from './class-twist-distances.ts'
import { N_FACE_TURNS, turnTable } from './coordinate.ts'
import { CORNER_ORDER, N_CORNER_ORDERS } from './corner-order.ts'
import { N_TWISTS, TWIST } from './orientation.ts'
import { conjugateRank, type SymmetryClasses, symmetryClasses } from './symmetry-classes.ts'
import { buildTwistTables, type TwistTables } from './twist-tables.ts'

/** What to know of a position to look its corners up. */
export type CornerCoordinates = {
  /** 0..40319 */
  readonly order: number
  /** 0..2186 */
  readonly twist: number
}

/** All but the large table, 1.7 MB: made anew in every thread, or shared. */
export type CornerTables = TwistTables & {
  /** `[order * 18 + turn]` */
  readonly cornerOrderTurns: Uint16Array
  readonly cornerOrders: SymmetryClasses
}

/** Length of the large table: 2,768 classes. */
export const CORNER_BYTES = classTwistBytes(2_768)

/** @param position held home */
export function cornerCoordinatesOf(position: CubePosition): CornerCoordinates {
  return { order: CORNER_ORDER.rankOf(position), twist: TWIST.rankOf(position) }
}

/**
 * @param twistTables at hand already, as part of others perhaps
 * @returns the small tables, made in some 0.3 s
 */
export function buildCornerTables({ twistTurns, twistConjugates }: TwistTables = buildTwistTables()): CornerTables {
  return {
    twistTurns,
    twistConjugates,
    cornerOrderTurns: turnTable(CORNER_ORDER),
    cornerOrders: symmetryClasses(N_CORNER_ORDERS, (order, symmetry) =>
      conjugateRank(CORNER_ORDER, CORNER_ORDER.positionWith(order), symmetry),
    ),
  }
}

/**
 * Fills the large table, in some 0.2 s.
 *
 * @param distances `CORNER_BYTES` long; may lie on shared memory
 */
export function fillCornerDistances(tables: CornerTables, distances: Uint8Array, onProgress?: OnProgress): void {
  const { twistTurns, twistConjugates, cornerOrderTurns, cornerOrders } = tables
  const rankAfter = (order: number, turn: number) => cornerOrderTurns[order * N_FACE_TURNS + turn]
  fillClassTwistDistances(
    { classes: cornerOrders, rankAfter, twistTurns, twistConjugates, home: 0 },
    distances,
    onProgress,
  )
}

/** @returns the fewest face turns that bring all corners home, 0..11. Allocates nothing. */
export function cornerDistance(tables: CornerTables, distances: Uint8Array, order: number, twist: number): number {
  const { classOf, symmetryOf } = tables.cornerOrders
  return readDistance(distances, classOf[order], tables.twistConjugates[symmetryOf[order] * N_TWISTS + twist])
}
