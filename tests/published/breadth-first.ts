/** Counts the positions first met after 0, 1, 2, ... turns, by breadth-first search. */

import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { CENTRES_AT, type CubePosition, copyCube, solvedCube } from '../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../engine/cube/hold.ts'
import { inverseTurn, type Turn } from '../../engine/cube/turns.ts'

/**
 * @param turns must hold each turn's inverse too: then a position met after n turns was first met after n - 2 at the
 *   earliest, so that two layers are enough to compare with
 * @param isUpToHold are positions that differ by a re-hold the same?
 */
export function countFirstMet(turns: readonly Turn[], depthMax: number, isUpToHold = false): number[] {
  if (!turns.every((turn) => turns.includes(inverseTurn(turn)))) throw new Error('The inverses are missing')
  let [before, last]: Array<Map<string, CubePosition>> = [new Map(), new Map([[keyOf(solvedCube()), solvedCube()]])]
  const counts = [1]
  for (let depth = 1; depth <= depthMax; depth++) {
    const next = new Map<string, CubePosition>()
    for (const position of last.values()) {
      for (const turn of turns) {
        applyTurn(position, turn)
        const seen = isUpToHold ? asHeldHome(position) : position
        const key = keyOf(seen)
        if (!next.has(key) && !last.has(key) && !before.has(key)) next.set(key, copyCube(seen))
        applyTurn(position, inverseTurn(turn))
      }
    }
    counts.push(next.size)
    ;[before, last] = [last, next]
  }
  return counts
}

/** Two pieces to a character (24 * 24 codes): short keys keep half a million of them small. */
function keyOf(position: CubePosition): string {
  let key = ''
  for (let place = 0; place < CENTRES_AT; place += 2)
    key += String.fromCharCode(position[place] * 32 + position[place + 1])
  return key
}
