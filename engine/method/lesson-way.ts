/**
 * What the lesson would do, as turns alone: the way of a sequence book from any legal position to the goal of any stage.
 * The same way as steps that can be told: `way/lesson-steps.ts`.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import type { Turn } from '../cube/turns.ts'
import { LESSON_BOOK } from './book/lesson-book.ts'
import type { SequenceBook } from './sequence-book.ts'
import type { Stage, StageSpan } from './stages.ts'
import { turnsToBringBaseDown } from './way/seen-cube.ts'
import { choiceIn } from './way/stage-table.ts'
import { walkWay } from './way/walk-way.ts'

/**
 * @param position any legal position, in any hold
 * @param span the stages of a round, as for the steps; only `to` says where the way leads. `from` changes no turn, since
 *   whatever is broken is repaired first, wherever the round begins
 * @param book proved by `checkBook`; asserts that it leads there
 * @returns all turns of the lesson way; none when the goal of `span.to` is met
 */
export function lessonWay(position: CubePosition, span: StageSpan, book: SequenceBook = LESSON_BOOK): Turn[] {
  return turnsOfWay(position, span.to, book, Number.POSITIVE_INFINITY)
}

/**
 * @param stage whose goal is wanted
 * @returns the turns of the next step: a re-hold that brings the base down if it is not, then what the step says. Empty
 *   when the goal is met.
 */
export function nextLessonTurns(position: CubePosition, stage: Stage, book: SequenceBook = LESSON_BOOK): Turn[] {
  return turnsOfWay(position, stage, book, 1)
}

function turnsOfWay(position: CubePosition, to: Stage, book: SequenceBook, nStepsMax: number): Turn[] {
  const way: Turn[] = []
  let nSteps = 0
  walkWay(position, to, book, (_stage, table, answer) => {
    if (nSteps === 0) way.push(...turnsToBringBaseDown(position))
    for (const turn of table.choices[choiceIn(answer)].turns) way.push(turn)
    nSteps++
    return nSteps < nStepsMax
  })
  return way
}
