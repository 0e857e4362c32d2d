/** What is wrong with a book that can be read but cannot be taught. */

import { afterTurns } from '../../cube/apply-turn.ts'
import { solvedCube } from '../../cube/cube-position.ts'
import { asHeldHome, centreAt } from '../../cube/hold.ts'
import type { Turn } from '../../cube/turns.ts'
import { maskRow, N_GOAL_PLACES, PART_MASKS } from '../goal-masks.ts'
import type { StageCaseId } from '../piece-cases.ts'
import { placeName } from '../place-name.ts'
import { STAGES, type Stage } from '../stages.ts'

/** Earlier work that a sequence undoes: a stage, and the places (`DFR`, `UB`) that its goal no longer finds right. */
export type BrokenWork = { readonly stage: Stage; readonly places: readonly string[] }

/** Why a sequence cannot be taught at its stage. `sequenceIndex` is its place in the list of the stage, from 0. */
export type SequenceFault =
  /** The sequence undoes goals before its stage. Data: what it breaks. Do: correct it. */
  | {
      readonly code: 'method/breaks-earlier-stage'
      readonly stage: Stage
      readonly sequenceIndex: number
      readonly broken: readonly BrokenWork[]
    }
  /** The sequence ends with the base elsewhere than down. Do: add a re-hold. */
  | { readonly code: 'method/base-not-down'; readonly stage: Stage; readonly sequenceIndex: number }

/** Why a book cannot be taught. */
export type BookFault =
  /** With the sequence as the book writes it. */
  | (SequenceFault & { readonly written: string })
  /** The book has no sequence for the stage. Do: add some, or use the book for other stages only. */
  | { readonly code: 'method/stage-left-out'; readonly stage: Stage }
  /** Some arrangements of the stage are never finished. Data: the cases that they show. Do: add a sequence. */
  | { readonly code: 'method/cannot-finish'; readonly stage: Stage; readonly cases: readonly StageCaseId[] }

/**
 * A goal is kept from every position of the stage exactly when it is kept from the solved cube, because goals fix pieces
 * or how pieces are turned, never one piece in relation to another.
 *
 * @param turns the sequence, written out
 * @returns its fault at this stage, or undefined
 */
export function sequenceFault(turns: readonly Turn[], stage: Stage, sequenceIndex: number): SequenceFault | undefined {
  const broken = workBrokenBy(turns, stage)
  if (broken.length > 0) return { code: 'method/breaks-earlier-stage', stage, sequenceIndex, broken }
  const isBaseDown = centreAt(afterTurns(solvedCube(), turns), 'D') === 'D'
  return isBaseDown ? undefined : { code: 'method/base-not-down', stage, sequenceIndex }
}

function workBrokenBy(turns: readonly Turn[], stage: Stage): BrokenWork[] {
  const after = asHeldHome(afterTurns(solvedCube(), turns))
  return STAGES.filter((earlier) => earlier < stage).flatMap((earlier) => {
    const row = maskRow(earlier, 0)
    const places: string[] = []
    for (let place = 0; place < N_GOAL_PLACES; place++) {
      if (((PART_MASKS[row + place] >>> after[place]) & 1) === 0) places.push(placeName(place))
    }
    return places.length === 0 ? [] : [{ stage: earlier, places }]
  })
}
