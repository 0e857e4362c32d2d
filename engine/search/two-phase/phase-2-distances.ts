/**
 * Lower bounds in the subgroup that U, D, R2, L2, F2 and B2 generate: exact distances of the corners together with the
 * middle edges, and of the outer edges together with the middle edges, each over the ten turns of the subgroup. The larger
 * of the two is admissible and consistent; 967,680 entries each.
 * Source: H. Kociemba 1992, as described by M. Reid, Cube-Lovers mailing list, 7 January 1995.
 */

import { FACE_TURNS, type Turn, turnAxis, turnQuarters } from '../../cube/turns.ts'
import { N_FACE_TURNS, turnTable } from './coordinate.ts'
import { CORNER_ORDER } from './corner-order.ts'
import { distancesOver } from './distances-over.ts'
import { buildPlacingTables, OUTER_ORDER, type PlacingTables, SLICE_ORDER } from './edge-orders.ts'

/** The ten turns that stay in the subgroup: all of U and D, half turns of the others. */
export const PHASE_2_TURNS: readonly Turn[] = FACE_TURNS.filter(
  (turn) => turnAxis(turn) === 'U' || turnAxis(turn) === 'D' || turnQuarters(turn) === 2,
)

/** Row length of a table over these turns. */
export const N_PHASE_2_TURNS = PHASE_2_TURNS.length

/** Orders of the middle edges: the fast index of both distance tables. */
export const N_SLICE_ORDERS = SLICE_ORDER.nRanks

/** All that phase 2 asks; 4.7 MB, of which the corner orders may be shared with the corner tables. */
export type Phase2Tables = PlacingTables & {
  /** `[order * 18 + turn]` */
  readonly cornerOrderTurns: Uint16Array
  /** `[order * 10 + index of the turn in PHASE_2_TURNS]` */
  readonly outerOrderTurns: Uint16Array
  /** `[order * 10 + index of the turn in PHASE_2_TURNS]` */
  readonly sliceOrderTurns: Uint16Array
  /** `[corner order * 24 + slice order]` */
  readonly cornerDistances: Uint8Array
  /** `[outer order * 24 + slice order]` */
  readonly outerDistances: Uint8Array
}

/**
 * @param cornerOrderTurns of the corner tables, where they are at hand
 * @returns the tables, made in some 0.6 s
 */
export function buildPhase2Tables(cornerOrderTurns: Uint16Array = turnTable(CORNER_ORDER)): Phase2Tables {
  const outerOrderTurns = turnTable(OUTER_ORDER, PHASE_2_TURNS)
  const sliceOrderTurns = turnTable(SLICE_ORDER, PHASE_2_TURNS)
  const cornerAfter = (order: number, index: number) => cornerOrderTurns[order * N_FACE_TURNS + PHASE_2_TURNS[index]]
  const outerAfter = (order: number, index: number) => outerOrderTurns[order * N_PHASE_2_TURNS + index]
  return {
    ...buildPlacingTables(),
    cornerOrderTurns,
    outerOrderTurns,
    sliceOrderTurns,
    cornerDistances: distancesBesideSlice(CORNER_ORDER.nRanks, cornerAfter, sliceOrderTurns),
    outerDistances: distancesBesideSlice(OUTER_ORDER.nRanks, outerAfter, sliceOrderTurns),
  }
}

/** Every pair is met: of corners, outer and middle edges, any two may be of any parity. */
function distancesBesideSlice(
  nOrders: number,
  orderAfter: (order: number, index: number) => number,
  sliceOrderTurns: Uint16Array,
): Uint8Array {
  return distancesOver(nOrders * N_SLICE_ORDERS, 0, N_PHASE_2_TURNS, (pair, index) => {
    const sliceOrder = pair % N_SLICE_ORDERS
    const order = (pair - sliceOrder) / N_SLICE_ORDERS
    return orderAfter(order, index) * N_SLICE_ORDERS + sliceOrderTurns[sliceOrder * N_PHASE_2_TURNS + index]
  })
}
