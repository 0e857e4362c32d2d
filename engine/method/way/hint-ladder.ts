/** The hint ladder: 1 what to look for, 2 also how to hold, 3 also what to do and why. Each rung is part of the next step. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { LESSON_BOOK } from '../book/lesson-book.ts'
import type { SequenceBook } from '../sequence-book.ts'
import type { Stage, StageSpan } from '../stages.ts'
import type { HintLevel } from './hint-level.ts'
import type { HowToHold, LookFor, WhatToDo, Why } from './lesson-step.ts'
import { brokenStage, nextLessonStep } from './lesson-steps.ts'

/** What a student is told; null for what the level keeps back. */
export type Hint = {
  readonly level: HintLevel
  /** The stage that the next step works for. */
  readonly stage: Stage
  /** The stage before the span that is broken and has to be repaired first, if one is. */
  readonly brokenStage: Stage | null
  readonly lookFor: LookFor
  readonly hold: HowToHold | null
  readonly do: WhatToDo | null
  readonly why: Why | null
}

/**
 * @param position any legal position, in any hold
 * @param span the stages of the round: the goal of `to` is wanted, and what belongs before `from` was there at the start
 * @returns the hint for the next step of the lesson way; null when the goal of `span.to` is met
 */
export function hintFor(
  position: CubePosition,
  span: StageSpan,
  level: HintLevel,
  book: SequenceBook = LESSON_BOOK,
): Hint | null {
  const step = nextLessonStep(position, span, book)
  if (step === undefined) return null
  return {
    level,
    stage: step.stage,
    brokenStage: brokenStage(position, span.from),
    lookFor: step.lookFor,
    hold: level >= 2 ? step.hold : null,
    do: level >= 3 ? step.do : null,
    why: level >= 3 ? step.why : null,
  }
}
