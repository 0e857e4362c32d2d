/** The order of the eight corners, however they are twisted. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { cornerPiece } from '../../cube/piece-code.ts'
import { nPlacings, rankPlaces, unrankPlaces } from '../rank-places.ts'
import type { Coordinate } from './coordinate.ts'
import { N_CORNERS, positionWithCorners } from './position-with-order.ts'

/** Orders of the eight corners. */
export const N_CORNER_ORDERS = nPlacings(N_CORNERS, N_CORNERS)

/** 0..40319, 0 at home. */
export const CORNER_ORDER: Coordinate = {
  nRanks: N_CORNER_ORDERS,
  rankOf: cornerOrderOf,
  positionWith: positionWithCornerOrder,
}

/** Optimisation: filled anew by every call, because the tables ask for a million orders. */
const places = new Uint8Array(N_CORNERS)

function cornerOrderOf(position: CubePosition): number {
  for (let place = 0; place < N_CORNERS; place++) places[cornerPiece(position[place])] = place
  return rankPlaces(places, N_CORNERS)
}

function positionWithCornerOrder(order: number): CubePosition {
  unrankPlaces(order, N_CORNERS, places)
  const corners = new Uint8Array(N_CORNERS)
  places.forEach((place, corner) => {
    corners[place] = corner
  })
  return positionWithCorners(corners)
}
