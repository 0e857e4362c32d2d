/**
 * Finds the pars of stages 2 to 7 by meeting in the middle, without any estimate of distance.
 *
 * If the turns w bring a start to the goal, then the start is, as far as the stage sees it, what the inverse of w makes of
 * the solved cube. Cut w in two: w is t followed by the inverse of u. So starts that n turns solve are exactly what "u, then
 * t backwards" makes of the solved cube, for words u and t of n turns together that put all pieces fixed by earlier goals
 * at the same places. All t of up to 6 turns are listed by those places, all u of up to 7 are looked up, n rising; the
 * first n at which an arrangement is met is its par, and at that n all its shortest solutions are met. Symmetry of the
 * whole picture lets one t stand for its eight images.
 *
 * Stage 2 starts have the cross fixed; stages 3 to 7 all have the first layer fixed and are made in one go.
 */

import type { Stage } from '../../../method/stages.ts'
import { assert } from '../../../result.ts'
import { nWords } from '../word-number.ts'
import { KEPT_TURNS_MAX, keepWords } from './kept-words.ts'
import { collectKindestWords, type SolvedClasses } from './kindest-words.ts'
import { meetWithCross, readCornerLies } from './meet-with-cross.ts'
import { meetWithFirstLayer } from './meet-with-first-layer.ts'
import type { PlaceTables } from './place-tables.ts'
import { EVERY_WORD, walkWords } from './walk-words.ts'

/** Stages that can be made together: stage 2 alone, or any of the others in rising order. */
export type MeetingStages = readonly [2] | ReadonlyArray<Exclude<Stage, 1 | 2>>

/** What is asked for. */
type Meeting = {
  readonly tables: PlaceTables
  readonly stages: MeetingStages
  /** Where the last class is expected to be met, 1..13; only for telling progress, and a bound. */
  readonly turnsMax: number
}

/**
 * Yields the share 0..1 of the work up to `turnsMax` that is done.
 *
 * @returns what is found for each stage, in the order asked for. Asserts that `turnsMax` turns solve everything.
 */
export function* meetInTheMiddle({ tables, stages, turnsMax }: Meeting): Generator<number, SolvedClasses[]> {
  const collectors = stages.map(collectKindestWords)
  const isDone = () => collectors.every(({ nOpen }) => nOpen() === 0)
  const cornerLies = stages[0] === 2 ? readCornerLies() : undefined
  for (let half = 0; half <= KEPT_TURNS_MAX && !isDone(); half++) {
    const kept = keepWords(tables, half)
    for (const nTurns of [2 * half, 2 * half + 1]) {
      if (nTurns > turnsMax || isDone()) break
      const word = new Uint8Array(nTurns - half)
      const visit =
        cornerLies === undefined
          ? meetWithFirstLayer(kept, word, stages, collectors)
          : meetWithCross(cornerLies, kept, word, collectors[0])
      for (const share of walkWords({ tables, word, which: EVERY_WORD, visit })) {
        const nWalked = nWordsWalked(nTurns - 1) + share * nWords(word.length)
        yield nWalked / nWordsWalked(turnsMax)
      }
    }
  }
  assert(isDone(), `${turnsMax} turns solve every start of stages ${stages}`)
  return collectors.map(({ solved }) => solved)
}

/** Words that are looked up for solutions of 0 to `nTurns` turns: the longer half of each. */
function nWordsWalked(nTurns: number): number {
  let nWalked = 0
  for (let length = 0; length <= nTurns; length++) nWalked += nWords(Math.ceil(length / 2))
  return nWalked
}
