/**
 * The lesson way as steps that can be told: from any legal position, in any hold, to the goal of any stage. Where an
 * earlier layer is broken the way starts there, and its steps say so.
 */

import { applyTurns } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../cube/cube-position.ts'
import { formatTurns } from '../../cube/format-turns.ts'
import { formatRepeated } from '../book/format-book.ts'
import { LESSON_BOOK } from '../book/lesson-book.ts'
import { firstStageToDo } from '../goals.ts'
import type { SequenceBook } from '../sequence-book.ts'
import type { Stage, StageSpan } from '../stages.ts'
import { describeBaseStep, describeStep } from './describe-step.ts'
import { type LessonStep, turnsOfStep } from './lesson-step.ts'
import { turnsToBringBaseDown } from './seen-cube.ts'
import { walkWay } from './walk-way.ts'

/**
 * @param position any legal position, in any hold
 * @param span `to` says where the way leads; steps for stages before `from` are marked as repair
 * @param book proved by `checkBook`; asserts that it leads there
 * @returns the steps in order; none when the goal of `span.to` is met
 */
export function lessonSteps(position: CubePosition, span: StageSpan, book: SequenceBook = LESSON_BOOK): LessonStep[] {
  return firstSteps(position, span, book, Number.POSITIVE_INFINITY)
}

/**
 * @param span as for `lessonSteps`
 * @returns the first step of the way; undefined when the goal of `span.to` is met. After that step the next one of
 *   `lessonSteps` is the first step of the position then.
 */
export function nextLessonStep(
  position: CubePosition,
  span: StageSpan,
  book: SequenceBook = LESSON_BOOK,
): LessonStep | undefined {
  return firstSteps(position, span, book, 1)[0]
}

/**
 * @param from the first stage that was asked for: what comes later is not broken, but not done yet
 * @returns the first stage before `from` whose goal is not met, which the way repairs first; null when all are
 */
export function brokenStage(position: CubePosition, from: Stage): Stage | null {
  return firstStageToDo(position, (from - 1) as Stage | 0) ?? null
}

/**
 * Writes a step as the book does, for people who read notation.
 *
 * @returns `hold`: the re-hold, empty when there is none; `do`: top turn and sequence in the book's own spelling, such
 *   as `U A^3`
 */
export function writeStep(step: LessonStep, book: SequenceBook = LESSON_BOOK): { hold: string; do: string } {
  const { topTurn, sequenceIndex, nTimes } = step.do
  const parts = [
    ...(topTurn === null ? [] : [formatTurns([topTurn])]),
    ...(sequenceIndex === null ? [] : [formatRepeated(book.stages[step.stage][sequenceIndex].written, nTimes)]),
  ]
  return { hold: formatTurns(step.hold.turns), do: parts.join(' ') }
}

function firstSteps(position: CubePosition, span: StageSpan, book: SequenceBook, nStepsMax: number): LessonStep[] {
  const steps: LessonStep[] = []
  const reached = copyCube(position)
  const baseTurns = turnsToBringBaseDown(position)
  walkWay(position, span.to, book, (stage, table, answer) => {
    const isRepair = stage < span.from
    if (steps.length === 0 && baseTurns.length > 0) {
      steps.push(describeBaseStep(stage, isRepair, baseTurns))
      applyTurns(reached, baseTurns)
      if (steps.length === nStepsMax) return false
    }
    const step = describeStep(reached, stage, table, answer, isRepair)
    applyTurns(reached, turnsOfStep(step))
    steps.push(step)
    return steps.length < nStepsMax
  })
  return steps
}
