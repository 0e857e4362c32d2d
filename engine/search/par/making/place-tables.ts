/**
 * Where the eight pieces of the base layer are, as two small numbers, and how each of the 18 face turns changes them: the
 * cross as the arrangement of stage 1, the base corners as that of stage 2. Made by turning whole cubes, once.
 */

import { applyTurn } from '../../../cube/apply-turn.ts'
import { solvedCube } from '../../../cube/cube-position.ts'
import { FACE_TURNS, inverseTurn } from '../../../cube/turns.ts'
import { nArrangements, rankArrangement, unrankArrangement } from '../arrangement-rank.ts'

/** Number of face turns: the width of a row. */
export const N_FACE_TURNS = FACE_TURNS.length

/** Numbers after a turn: `after[number * 18 + turn]`. Only stages 1 and 2 have numbers for any cube held home. */
type AfterTurn = Uint32Array

/** Both numbers of a cube and what turns make of them. */
export type PlaceTables = {
  readonly crossAfter: AfterTurn
  readonly cornersAfter: AfterTurn
  readonly solvedCross: number
  readonly solvedCorners: number
}

/** @returns the tables, 23 MB, made in about two seconds */
export function makePlaceTables(): PlaceTables {
  return {
    crossAfter: afterTurn(1),
    cornersAfter: afterTurn(2),
    solvedCross: rankArrangement(solvedCube(), 1),
    solvedCorners: rankArrangement(solvedCube(), 2),
  }
}

function afterTurn(stage: 1 | 2): AfterTurn {
  const after = new Uint32Array(nArrangements(stage) * N_FACE_TURNS)
  for (let rank = 0; rank < nArrangements(stage); rank++) {
    const position = unrankArrangement(rank, stage)
    for (const turn of FACE_TURNS) {
      applyTurn(position, turn)
      after[rank * N_FACE_TURNS + turn] = rankArrangement(position, stage)
      applyTurn(position, inverseTurn(turn))
    }
  }
  return after
}
