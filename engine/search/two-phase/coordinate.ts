/** Parts of a position as numbers, and what turns do to them. */

import { applyTurn } from '../../cube/apply-turn.ts'
import type { CubePosition } from '../../cube/cube-position.ts'
import { FACE_TURNS, inverseTurn } from '../../cube/turns.ts'

/** Row length of a table over all face turns. A face turn's number is its index in the row. */
export const N_FACE_TURNS = FACE_TURNS.length

/** A part of a position, held home, that turns change without regard to the rest. */
export type Coordinate = {
  readonly nRanks: number
  /** @returns 0..nRanks-1 */
  readonly rankOf: (position: CubePosition) => number
  /** @returns a new position with this rank; inverse of `rankOf` */
  readonly positionWith: (rank: number) => CubePosition
}

/**
 * @param turns in the order in which a row lists them; all face turns when left out
 * @returns the rank after a turn: `table[rank * turns.length + index of the turn]`
 */
export function turnTable({ nRanks, rankOf, positionWith }: Coordinate, turns = FACE_TURNS): Uint16Array {
  const table = new Uint16Array(nRanks * turns.length)
  let at = 0
  for (let rank = 0; rank < nRanks; rank++) {
    const position = positionWith(rank)
    for (const turn of turns) {
      applyTurn(position, turn)
      table[at++] = rankOf(position)
      applyTurn(position, inverseTurn(turn))
    }
  }
  return table
}
