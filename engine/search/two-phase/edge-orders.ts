/**
 * The orders of the edges in phase 2, where their layers are apart: the middle edges in the middle places, the other eight
 * above and below.
 */

import { type CubePosition, EDGES_AT } from '../../cube/cube-position.ts'
import { edgePiece } from '../../cube/piece-code.ts'
import { nPlacings, rankPlaces, unrankPlaces } from '../rank-places.ts'
import { type Coordinate, turnTable } from './coordinate.ts'
import { BASE_LAYER, EDGES_PER_LAYER, MIDDLE_LAYER, N_PLACINGS, placingOfLayer, TOP_LAYER } from './edge-layers.ts'
import { N_EDGES, positionWithEdges } from './position-with-order.ts'

/** The pieces, and the places, of the two outer layers, in the order in which they are counted. */
const OUTER_EDGES: readonly number[] = [...layerEdges(TOP_LAYER), ...layerEdges(BASE_LAYER)]
const MIDDLE_EDGES: readonly number[] = layerEdges(MIDDLE_LAYER)

/** The eight top and base edges: 0..40319, 0 at home. Asked only of positions with the middle edges in the middle. */
export const OUTER_ORDER: Coordinate = orderAmong(OUTER_EDGES)

/** The four middle edges: 0..23, 0 at home. Asked only of positions with the middle edges in the middle. */
export const SLICE_ORDER: Coordinate = orderAmong(MIDDLE_EDGES)

/** What a placing of a layer's four edges tells; 470 kB. */
export type PlacingTables = {
  /** `[placing * 18 + turn]`, the same for all layers. */
  readonly placingTurns: Uint16Array
  /** By placing: the order of the four among themselves, 0..23. Of middle edges in the middle it is the `SLICE_ORDER`. */
  readonly innerOrders: Uint8Array
  /**
   * By placing: 24 times the number of the places among the outer eight. Of the top edges, with the inner order of the
   * base edges added, it is the `OUTER_ORDER`. Meaningless while one of the four is in the middle.
   */
  readonly outerPlacings: Uint16Array
}

/** @returns the tables, made in some 0.15 s */
export function buildPlacingTables(): PlacingTables {
  const placingTurns = turnTable(placingOfLayer(TOP_LAYER))
  const innerOrders = new Uint8Array(N_PLACINGS)
  const outerPlacings = new Uint16Array(N_PLACINGS)
  const places = new Uint8Array(EDGES_PER_LAYER)
  for (let placing = 0; placing < N_PLACINGS; placing++) {
    unrankPlaces(placing, N_EDGES, places)
    innerOrders[placing] = rankPlaces(amongThemselves(places), EDGES_PER_LAYER)
    if (MIDDLE_EDGES.some((place) => places.includes(place))) continue
    const outer = places.map((place) => OUTER_EDGES.indexOf(place))
    outerPlacings[placing] = rankPlaces(outer, OUTER_EDGES.length) * SLICE_ORDER.nRanks
  }
  return { placingTurns, innerOrders, outerPlacings }
}

function orderAmong(edges: readonly number[]): Coordinate {
  const places = new Uint8Array(edges.length)
  return {
    nRanks: nPlacings(edges.length, edges.length),
    rankOf: (position: CubePosition) => {
      edges.forEach((place, number) => {
        places[edges.indexOf(edgePiece(position[EDGES_AT + place]))] = number
      })
      return rankPlaces(places, edges.length)
    },
    positionWith: (order) => {
      unrankPlaces(order, edges.length, places)
      const all = Array.from({ length: N_EDGES }, (_, place) => place)
      places.forEach((number, piece) => {
        all[edges[number]] = edges[piece]
      })
      return positionWithEdges(all)
    },
  }
}

/** @returns each place as its number, from 0, in the order of the places given */
function amongThemselves(places: Uint8Array): Uint8Array {
  return places.map((place) => places.filter((other) => other < place).length)
}

function layerEdges(layer: number): number[] {
  return Array.from({ length: EDGES_PER_LAYER }, (_, number) => layer + number)
}
