/** The position that the inverse turns lead to. */

import { CENTRES_AT, type CubePosition, copyCube, EDGES_AT } from '../../cube/cube-position.ts'
import { cornerCode, cornerPiece, cornerTwist, edgeCode, edgeFlip, edgePiece } from '../../cube/piece-code.ts'

/**
 * @param position held home
 * @returns a new position: composed with the given one, in either order, it is the solved cube
 *
 * What the position brings from place s to place q, turned by t, the inverse brings from q to s, turned back by t.
 */
export function inversePosition(position: CubePosition): CubePosition {
  const inverse = copyCube(position)
  for (let place = 0; place < EDGES_AT; place++) {
    const code = position[place]
    inverse[cornerPiece(code)] = cornerCode(place, (3 - cornerTwist(code)) % 3)
  }
  for (let place = 0; place < CENTRES_AT - EDGES_AT; place++) {
    const code = position[EDGES_AT + place]
    inverse[EDGES_AT + edgePiece(code)] = edgeCode(place, edgeFlip(code))
  }
  return inverse
}
