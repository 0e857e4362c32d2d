/**
 * Collects, for each class of arrangements of a stage, its par and the kindest of all its shortest solutions: the one with
 * the fewest half turns, of these the one that turns the fewest faces, of these the first in the order of turns. Which
 * one that is does not depend on the order in which the words come.
 */

import { conjugateTurn, N_UPRIGHT_SYMMETRIES } from '../../../cube/symmetry.ts'
import { FACE_TURNS, turnQuarters } from '../../../cube/turns.ts'
import type { Stage } from '../../../method/stages.ts'
import { arrangementClasses } from '../arrangement-classes.ts'
import { imagesOfArrangement } from '../arrangement-rank.ts'
import { faceOf, numberOfWord, putOppositesInOrder } from '../word-number.ts'

/** What is shipped of a stage, by class. */
export type SolvedClasses = {
  /** Par in turns. */
  readonly pars: Uint8Array
  /** Number of a shortest solution of the first arrangement (`word-number.ts`). */
  readonly words: Float64Array
}

/** Takes solutions, all of n turns before the first of n + 1. */
export type KindestWords = {
  readonly solved: SolvedClasses
  /** How many classes have no solution yet. */
  readonly nOpen: () => number
  /** Is a solution of so many turns for this arrangement as short as any so far? */
  readonly wants: (rank: number, nTurns: number) => boolean
  /** @param word a solution of the arrangement that is wanted; is not kept */
  readonly offer: (rank: number, word: Uint8Array) => void
}

const NO_PAR = 255
const IS_HALF_TURN: Uint8Array = Uint8Array.from(FACE_TURNS, (turn) => (turnQuarters(turn) === 2 ? 1 : 0))
/** A score is half turns times this, plus faces. */
const HALF_TURN_COST = 8

/** @returns a collector without solutions */
export function collectKindestWords(stage: Stage): KindestWords {
  const { nClasses, classOf, firstOf } = arrangementClasses(stage)
  const solved = { pars: new Uint8Array(nClasses).fill(NO_PAR), words: new Float64Array(nClasses) }
  const scores = new Uint8Array(nClasses).fill(255)
  const images = new Uint32Array(N_UPRIGHT_SYMMETRIES)
  let nOpen = nClasses

  const offer = (rank: number, word: Uint8Array) => {
    const classNumber = classOf[rank]
    if (solved.pars[classNumber] === NO_PAR) nOpen--
    solved.pars[classNumber] = word.length
    const score = scoreOf(word)
    if (score > scores[classNumber]) return
    imagesOfArrangement(rank, stage, images)
    for (let symmetry = 0; symmetry < N_UPRIGHT_SYMMETRIES; symmetry++) {
      if (images[symmetry] !== firstOf[classNumber]) continue
      const forFirst = word.map((turn) => conjugateTurn(FACE_TURNS[turn], symmetry))
      putOppositesInOrder(forFirst)
      const number = numberOfWord(forFirst)
      if (score === scores[classNumber] && number >= solved.words[classNumber]) continue
      scores[classNumber] = score
      solved.words[classNumber] = number
    }
  }

  return { solved, nOpen: () => nOpen, wants: (rank, nTurns) => solved.pars[classOf[rank]] >= nTurns, offer }
}

/** The same for all images of a word. */
function scoreOf(word: Uint8Array): number {
  let [nHalfTurns, faces] = [0, 0]
  for (const turn of word) {
    nHalfTurns += IS_HALF_TURN[turn]
    faces |= 1 << faceOf(turn)
  }
  let nFaces = 0
  for (; faces !== 0; faces &= faces - 1) nFaces++
  return nHalfTurns * HALF_TURN_COST + nFaces
}
