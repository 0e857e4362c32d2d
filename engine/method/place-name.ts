/** Places by name, as faults, marks and reports say them. */

import { EDGES_AT } from '../cube/cube-position.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../cube/piece-places.ts'

/** @param place 0..19 into a position @returns the faces that meet there: `UFL`, `FR` */
export function placeName(place: number): string {
  return facesAt(place).name
}

/** @param place 0..19 into a position @returns the place with its faces and stickers, corner or edge */
export function facesAt(place: number) {
  return place < EDGES_AT ? CORNER_PLACES[place] : EDGE_PLACES[place - EDGES_AT]
}
