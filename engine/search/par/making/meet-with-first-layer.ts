/**
 * Meetings for stages 3 to 7: kept words that put all eight pieces of the base layer at the same places. There are few
 * among many words that are looked up, so a filter says of most words at once that nothing is kept for them.
 */

import { applyTurn } from '../../../cube/apply-turn.ts'
import { solvedCube } from '../../../cube/cube-position.ts'
import { FACE_TURNS, inverseTurn } from '../../../cube/turns.ts'
import { goalsBeforeMet } from '../../../method/goals.ts'
import type { Stage } from '../../../method/stages.ts'
import { rankArrangement } from '../arrangement-rank.ts'
import { joinWords, type KeptWords } from './kept-words.ts'
import type { KindestWords } from './kindest-words.ts'

const FILTER_BITS = 2 ** 24
const INVERSE: Uint8Array = Uint8Array.from(FACE_TURNS, inverseTurn)

/** @returns what to do with each word that is looked up, for words of this length */
export function meetWithFirstLayer(
  kept: KeptWords,
  word: Uint8Array,
  stages: readonly Stage[],
  collectors: readonly KindestWords[],
): (cross: number, corners: number) => void {
  const solution = new Uint8Array(kept.nTurns + word.length)
  const solved = solvedCube()
  const start = solvedCube()
  const filter = filterOf(kept)

  const meet = () => {
    start.set(solved)
    for (let at = solution.length - 1; at >= 0; at--) applyTurn(start, FACE_TURNS[INVERSE[solution[at]]])
    for (let index = 0; index < stages.length; index++) {
      const stage = stages[index]
      if (!goalsBeforeMet(start, stage)) return
      const rank = rankArrangement(start, stage)
      if (collectors[index].wants(rank, solution.length)) collectors[index].offer(rank, solution)
    }
  }

  return (cross, corners) => {
    const bit = filterBit(cross, corners)
    if (((filter[bit >>> 3] >>> (bit & 7)) & 1) === 0) return
    const end = kept.begin[cross + 1]
    for (let index = kept.begin[cross]; index < end; index++) {
      if (kept.corners[index] !== corners) continue
      joinWords(kept, index, word, solution)
      meet()
    }
  }
}

/** One bit for each pair of numbers among the kept words; pairs that are not there share a bit with one that is, 1 in 16. */
function filterOf({ begin, corners }: KeptWords): Uint8Array {
  const filter = new Uint8Array(FILTER_BITS / 8)
  for (let cross = 0; cross + 1 < begin.length; cross++) {
    for (let index = begin[cross]; index < begin[cross + 1]; index++) {
      const bit = filterBit(cross, corners[index])
      filter[bit >>> 3] |= 1 << (bit & 7)
    }
  }
  return filter
}

/** Spreads pairs over the bits by multiplying with large odd numbers: Knuth, The Art of Computer Programming 3, 6.4. */
function filterBit(cross: number, corners: number): number {
  return ((Math.imul(cross, 0x9e3779b1) ^ Math.imul(corners, 0x85ebca6b)) >>> 8) & (FILTER_BITS - 1)
}
