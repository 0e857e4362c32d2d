/**
 * Where the four edges of a layer stand: as a set of places (which is all that phase 1 asks of the middle edges), or told
 * apart (which phase 1 carries along, so that phase 2 can read the order of all edges off it).
 */

import { type CubePosition, EDGES_AT } from '../../cube/cube-position.ts'
import { edgePiece } from '../../cube/piece-code.ts'
import { nPlacings, rankPlaces, unrankPlaces } from '../rank-places.ts'
import type { Coordinate } from './coordinate.ts'
import { N_EDGES, positionWithEdges } from './position-with-order.ts'

/** Edges stand in three layers of four; the numbers of places and pieces rise from the top layer down. */
export const EDGES_PER_LAYER = 4

/** A layer, by the number of its first edge. */
export type EdgeLayer = 0 | 4 | 8
export const TOP_LAYER: EdgeLayer = 0
export const MIDDLE_LAYER: EdgeLayer = 4
export const BASE_LAYER: EdgeLayer = 8

/** The sets of four of the twelve edge places, by their bits, in rising order. */
const SLICE_MASKS: readonly number[] = Array.from({ length: 2 ** N_EDGES }, (_, mask) => mask).filter(hasFourBits)
const SLICE_OF_MASK: ReadonlyMap<number, number> = new Map(SLICE_MASKS.map((mask, slice) => [mask, slice]))

/** Sets of places where the four middle edges can stand. */
export const N_SLICES = SLICE_MASKS.length

/** Ways to place the four edges of a layer, told apart, in the twelve places. */
export const N_PLACINGS = nPlacings(EDGES_PER_LAYER, N_EDGES)

/** The set of places of the middle edges: 0..494. */
export const SLICE: Coordinate = { nRanks: N_SLICES, rankOf: sliceOf, positionWith: positionWithSlice }

/** @returns where the edges of a layer stand, told apart: 0..11879 */
export function placingOfLayer(layer: EdgeLayer): Coordinate {
  return {
    nRanks: N_PLACINGS,
    rankOf: (position) => placingOf(position, layer),
    positionWith: (placing) => positionWithPlacing(placing, layer),
  }
}

function sliceOf(position: CubePosition): number {
  let mask = 0
  for (let place = 0; place < N_EDGES; place++) {
    if (isOfLayer(edgePiece(position[EDGES_AT + place]), MIDDLE_LAYER)) mask |= 1 << place
  }
  return SLICE_OF_MASK.get(mask) ?? 0
}

function positionWithSlice(slice: number): CubePosition {
  const places = Array.from({ length: N_EDGES }, (_, place) => place)
  return positionWithLayerAt(
    places.filter((place) => (SLICE_MASKS[slice] >>> place) & 1),
    MIDDLE_LAYER,
  )
}

/** Optimisation: filled anew by every call, because the tables ask for a quarter of a million. */
const placesOfFour = new Uint8Array(EDGES_PER_LAYER)

function placingOf(position: CubePosition, layer: EdgeLayer): number {
  for (let place = 0; place < N_EDGES; place++) {
    const edge = edgePiece(position[EDGES_AT + place])
    if (isOfLayer(edge, layer)) placesOfFour[edge - layer] = place
  }
  return rankPlaces(placesOfFour, N_EDGES)
}

function positionWithPlacing(placing: number, layer: EdgeLayer): CubePosition {
  unrankPlaces(placing, N_EDGES, placesOfFour)
  return positionWithLayerAt(Array.from(placesOfFour), layer)
}

/** @param places of the four edges of the layer; the others fill the rest in their order */
function positionWithLayerAt(places: readonly number[], layer: EdgeLayer): CubePosition {
  const others = Array.from({ length: N_EDGES }, (_, edge) => edge).filter((edge) => !isOfLayer(edge, layer))
  let nOthers = 0
  return positionWithEdges(
    Array.from({ length: N_EDGES }, (_, place) => {
      const number = places.indexOf(place)
      return number < 0 ? others[nOthers++] : layer + number
    }),
  )
}

function isOfLayer(edge: number, layer: EdgeLayer): boolean {
  return layer <= edge && edge < layer + EDGES_PER_LAYER
}

function hasFourBits(mask: number): boolean {
  let nBits = 0
  for (let rest = mask; rest !== 0; rest &= rest - 1) nBits++
  return nBits === EDGES_PER_LAYER
}
