/**
 * The step of the lesson that somebody is in the middle of. Amid a sequence earlier layers are broken, as they have to be,
 * and the way from there would mend them: no help for who only has to finish what was begun.
 */

import { afterTurns, applyTurn } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../cube/cube-position.ts'
import type { Turn } from '../../cube/turns.ts'
import { LESSON_BOOK } from '../book/lesson-book.ts'
import { goalsBeforeMet } from '../goals.ts'
import type { SequenceBook } from '../sequence-book.ts'
import type { Stage, StageSpan } from '../stages.ts'
import { turnsOfStep } from './lesson-step.ts'
import { nextLessonStep } from './lesson-steps.ts'

export type StepUnderWay = {
  readonly stage: Stage
  /** Where it began. */
  readonly position: CubePosition
  /** Of the turns that were given, those before it. */
  readonly nTurnsBefore: number
  /** Its turns that are left to do, re-holds among them; one at least. */
  readonly left: readonly Turn[]
}

/** No step of the lesson has more turns: stage 7, A^5 B^5 A B, has 48, and re-holds around them. */
const STEP_TURNS_MAX = 60

/**
 * @param turns that were done from `start` on, re-holds among them
 * @returns null where no earlier layer is broken, and where what was done last is not the beginning of a step
 */
export function stepUnderWay(
  start: CubePosition,
  turns: readonly Turn[],
  span: StageSpan,
  book: SequenceBook = LESSON_BOOK,
): StepUnderWay | null {
  const now = afterTurns(start, turns)
  if (goalsBeforeMet(now, span.to)) return null
  let found: StepUnderWay | null = null
  const first = Math.max(0, turns.length - STEP_TURNS_MAX)
  const position = afterTurns(start, turns.slice(0, first))
  for (let nTurnsBefore = first; nTurnsBefore < turns.length; nTurnsBefore++) {
    const step = nextLessonStep(position, span, book)
    // Of two that would explain the turns the later stage is meant: within its sequence the way would mend an earlier one.
    if (step !== undefined && (found === null || found.stage < step.stage) && !goalsBeforeMet(now, step.stage)) {
      const left = leftOf(turnsOfStep(step), turns.slice(nTurnsBefore))
      if (left !== null) found = { stage: step.stage, position: copyCube(position), nTurnsBefore, left }
    }
    applyTurn(position, turns[nTurnsBefore])
  }
  return found
}

/** @returns what is left of a step; null where the turns that were done are not its beginning, or all of it */
function leftOf(step: readonly Turn[], done: readonly Turn[]): readonly Turn[] | null {
  const isBegun = done.length < step.length && done.every((turn, index) => turn === step[index])
  return isBegun ? step.slice(done.length) : null
}
