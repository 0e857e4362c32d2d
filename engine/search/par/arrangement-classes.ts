/**
 * Gathers the arrangements of a stage into classes: those that an upright symmetry of the cube (four turns about the
 * vertical axis, each also in the mirror) makes of each other. All of a class have the same par, and the turns for one are
 * the turns for another, seen from there.
 */

import { inverseSymmetry, N_UPRIGHT_SYMMETRIES, type Symmetry } from '../../cube/symmetry.ts'
import type { Stage } from '../../method/stages.ts'
import { imagesOfArrangement, nArrangements } from './arrangement-rank.ts'

/** The classes of one stage, numbered as their first arrangements are. */
export type ArrangementClasses = {
  readonly nClasses: number
  /** By arrangement: its class, 0..nClasses-1. */
  readonly classOf: Uint16Array
  /** By arrangement: a symmetry 0..7 that makes of it the first arrangement of its class. */
  readonly toFirst: Uint8Array
  /** By class: its first arrangement, the one of least number. */
  readonly firstOf: Uint32Array
}

const NO_CLASS = 0xffff

/** @returns the classes; for all seven stages together a matter of some 80 ms */
export function arrangementClasses(stage: Stage): ArrangementClasses {
  const classOf = new Uint16Array(nArrangements(stage)).fill(NO_CLASS)
  const toFirst = new Uint8Array(nArrangements(stage))
  const firsts: number[] = []
  const images = new Uint32Array(N_UPRIGHT_SYMMETRIES)
  for (let rank = 0; rank < classOf.length; rank++) {
    if (classOf[rank] !== NO_CLASS) continue
    imagesOfArrangement(rank, stage, images)
    for (let symmetry: Symmetry = 0; symmetry < N_UPRIGHT_SYMMETRIES; symmetry++) {
      const image = images[symmetry]
      if (classOf[image] !== NO_CLASS) continue
      classOf[image] = firsts.length
      toFirst[image] = inverseSymmetry(symmetry)
    }
    firsts.push(rank)
  }
  return { nClasses: firsts.length, classOf, toFirst, firstOf: Uint32Array.from(firsts) }
}
