/**
 * Finds the pars of stage 1 by breadth-first search from the finished cross: each turn of the front of the search is one
 * turn more. Turns undo each other, so the way out is as long as the way in.
 */

import { arrangementClasses } from '../arrangement-classes.ts'
import { N_FACE_TURNS, type PlaceTables } from './place-tables.ts'

const NO_PAR = 255

/** @returns par by class of stage 1 */
export function spreadFromCross({ crossAfter, solvedCross }: PlaceTables): Uint8Array {
  const pars = new Uint8Array(crossAfter.length / N_FACE_TURNS).fill(NO_PAR)
  const queue = new Uint32Array(pars.length)
  queue[0] = solvedCross
  pars[solvedCross] = 0
  let end = 1
  for (let at = 0; at < end; at++) {
    const cross = queue[at]
    for (let turn = 0; turn < N_FACE_TURNS; turn++) {
      const next = crossAfter[cross * N_FACE_TURNS + turn]
      if (pars[next] !== NO_PAR) continue
      pars[next] = pars[cross] + 1
      queue[end++] = next
    }
  }
  return Uint8Array.from(arrangementClasses(1).firstOf, (first) => pars[first])
}
