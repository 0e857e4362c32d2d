/**
 * Positions as elements of a group: a position stands for "whatever turns lead to it from the solved cube held home".
 */

import { CENTRES_AT, type CubePosition, copyCube, EDGES_AT } from './cube-position.ts'
import { CODE_AFTER_ADDING, cornerPiece, cornerRow, cornerTwist, edgeFlip, edgePiece, edgeRow } from './piece-code.ts'

/**
 * @returns the position reached when the turns behind `first` are followed by the turns behind `then`
 *
 * Where `then` has brought the piece of place s to place q, turned by t, the result has at q what `first` has at s,
 * turned by t more.
 */
export function composePositions(first: CubePosition, then: CubePosition): CubePosition {
  const result = copyCube(first)
  for (let place = 0; place < then.length; place++) {
    const { source, row } = whereFrom(then, place)
    result[place] = CODE_AFTER_ADDING[row + first[source]]
  }
  return result
}

/**
 * Reads one place of a position as an instruction.
 *
 * @param place index 0..25 into a position
 * @returns the index of the place whose content `position` brings here, and the row of `CODE_AFTER_ADDING` that says
 *   how it is turned on the way
 */
export function whereFrom(position: CubePosition, place: number): { source: number; row: number } {
  const code = position[place]
  if (place < EDGES_AT) return { source: cornerPiece(code), row: cornerRow(cornerTwist(code)) }
  if (place < CENTRES_AT) return { source: EDGES_AT + edgePiece(code), row: edgeRow(edgeFlip(code)) }
  return { source: CENTRES_AT + code, row: edgeRow(0) }
}
