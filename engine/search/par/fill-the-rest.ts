/** Completes a cube of which some pieces are placed, so that it can be solved by turns. */

import { type CubePosition, EDGES_AT } from '../../cube/cube-position.ts'
import { findLegalityFault } from '../../cube/legality.ts'
import { cornerCode, edgeCode } from '../../cube/piece-code.ts'
import { assert } from '../../result.ts'

/**
 * @param position is completed in place
 * @param rest the free places and the homes of the pieces that belong there, all of one kind, two or more; pieces go to
 *   places in this order, two of them exchanged and one of them turned where legality asks for it
 */
export function fillTheRest(
  position: CubePosition,
  { places, homes }: { readonly places: readonly number[]; readonly homes: readonly number[] },
): void {
  const areEdges = places[0] >= EDGES_AT
  const put = (index: number, home: number, turned = 0) => {
    position[places[index]] = areEdges ? edgeCode(home - EDGES_AT, turned) : cornerCode(home, turned)
  }
  homes.forEach((home, index) => {
    put(index, home)
  })
  // The faults come in a fixed order, turned pieces before exchanged ones, so that two repairs are enough.
  const turnedTooMuch = findLegalityFault(position)
  if (turnedTooMuch?.code === 'cube/corner-twist') put(0, homes[0], 3 - turnedTooMuch.nThirds)
  if (turnedTooMuch?.code === 'cube/edge-flip') put(0, homes[0], 1)
  if (findLegalityFault(position)?.code === 'cube/parity') exchange(position, places[0], places[1])
  assert(findLegalityFault(position) === undefined, 'two repairs make every cube legal')
}

function exchange(position: CubePosition, a: number, b: number): void {
  ;[position[a], position[b]] = [position[b], position[a]]
}
