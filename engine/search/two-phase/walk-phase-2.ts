/** The second phase: home within the subgroup, by its ten turns, in exactly so many. */

import { faceIndex } from '../../cube/faces.ts'
import { turnAxis } from '../../cube/turns.ts'
import { N_FACE_TURNS } from './coordinate.ts'
import { nextTurns } from './next-turns.ts'
import type { NodeBudget } from './node-budget.ts'
import { N_PHASE_2_TURNS, N_SLICE_ORDERS, PHASE_2_TURNS, type Phase2Tables } from './phase-2-distances.ts'

const NEXT_TURNS = nextTurns(PHASE_2_TURNS)
const FACE_OF_INDEX = Uint8Array.from(PHASE_2_TURNS, (turn) => faceIndex(turnAxis(turn)))

/**
 * @param depth turns done already, which stand in the word
 * @param nLeft turns still to do
 * @param lastFace index of the face turned last, or `NO_FACE`
 * @returns true when a word was accepted, which ends the walk
 */
export type Phase2Walk = (
  depth: number,
  nLeft: number,
  corner: number,
  outer: number,
  slice: number,
  lastFace: number,
) => boolean

/**
 * @param word the turns of the second phase are written into it, from `depth` on
 * @param accept asked of each word that leads home; true ends the walk
 */
export function phase2Walk(
  { cornerOrderTurns, outerOrderTurns, sliceOrderTurns, cornerDistances, outerDistances }: Phase2Tables,
  word: Uint8Array,
  budget: NodeBudget,
  accept: (nTurns: number) => boolean,
): Phase2Walk {
  const walk: Phase2Walk = (depth, nLeft, corner, outer, slice, lastFace) => {
    if (nLeft === 0) return corner === 0 && outer === 0 && slice === 0 && accept(depth)
    const indexes = NEXT_TURNS[lastFace]
    budget.count(indexes.length)
    for (let at = 0; at < indexes.length && !budget.isEnded; at++) {
      const index = indexes[at]
      const turn = PHASE_2_TURNS[index]
      const nextSlice = sliceOrderTurns[slice * N_PHASE_2_TURNS + index]
      const nextCorner = cornerOrderTurns[corner * N_FACE_TURNS + turn]
      if (cornerDistances[nextCorner * N_SLICE_ORDERS + nextSlice] >= nLeft) continue
      const nextOuter = outerOrderTurns[outer * N_PHASE_2_TURNS + index]
      if (outerDistances[nextOuter * N_SLICE_ORDERS + nextSlice] >= nLeft) continue
      word[depth] = turn
      if (walk(depth + 1, nLeft - 1, nextCorner, nextOuter, nextSlice, FACE_OF_INDEX[index])) return true
    }
    return false
  }
  return walk
}
