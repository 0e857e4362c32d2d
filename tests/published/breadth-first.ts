/** Counts the positions first met after 0, 1, 2, ... turns, by breadth-first search. */

import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { CENTRES_AT, type CubePosition, copyCube, EDGES_AT, solvedCube } from '../../engine/cube/cube-position.ts'
import { asHeldHome, holdOf } from '../../engine/cube/hold.ts'
import { cornerPiece, edgePiece } from '../../engine/cube/piece-code.ts'
import { inverseTurn, type Turn } from '../../engine/cube/turns.ts'

/** What tells positions apart: a text that two of them share when they count as the same. */
export type Sight = (position: CubePosition) => string

/** Two pieces to a character (24 * 24 codes): short keys keep half a million of them small. */
export const allPieces: Sight = (position) => {
  let key = ''
  for (let place = 0; place < CENTRES_AT; place += 2)
    key += String.fromCharCode(position[place] * 32 + position[place + 1])
  return key
}

export const piecesAndHold: Sight = (position) => `${allPieces(position)}${holdOf(position)}`

export const piecesUpToHold: Sight = (position) => allPieces(asHeldHome(position))

/** @param pieces by the index of their home in a position @returns a sight that sees where they are, and no others */
export function onlyPieces(pieces: readonly number[]): Sight {
  const numberOfHome = new Map(pieces.map((home, number) => [home, number]))
  return (position) => {
    const whereIs: string[] = []
    for (let place = 0; place < CENTRES_AT; place++) {
      const code = position[place]
      const number = numberOfHome.get(place < EDGES_AT ? cornerPiece(code) : EDGES_AT + edgePiece(code))
      if (number !== undefined) whereIs[number] = String.fromCharCode(place * 32 + code)
    }
    return whereIs.join('')
  }
}

/**
 * @param turns must hold each turn's inverse too: then a position met after n turns was first met after n - 2 at the
 *   earliest, so that two layers are enough to compare with
 */
export function countFirstMet(turns: readonly Turn[], depthMax: number, sight: Sight = allPieces): number[] {
  if (!turns.every((turn) => turns.includes(inverseTurn(turn)))) throw new Error('The inverses are missing')
  let [before, last]: Array<Map<string, CubePosition>> = [new Map(), new Map([[sight(solvedCube()), solvedCube()]])]
  const counts = [1]
  for (let depth = 1; depth <= depthMax; depth++) {
    const next = new Map<string, CubePosition>()
    for (const position of last.values()) {
      for (const turn of turns) {
        applyTurn(position, turn)
        const key = sight(position)
        if (!next.has(key) && !last.has(key) && !before.has(key)) next.set(key, copyCube(position))
        applyTurn(position, inverseTurn(turn))
      }
    }
    counts.push(next.size)
    ;[before, last] = [last, next]
  }
  return counts
}
