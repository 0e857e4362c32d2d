/** The hint ladder: 1 what to look for, 2 also how to hold, 3 also what to do and why. Each rung is part of the next step. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { LESSON_BOOK } from '../book/lesson-book.ts'
import type { SequenceBook } from '../sequence-book.ts'
import type { Stage } from '../stages.ts'
import type { HowToHold, LookFor, WhatToDo, Why } from './lesson-step.ts'
import { brokenStage, nextLessonStep } from './lesson-steps.ts'

/** The rungs. */
export const HINT_LEVELS = [1, 2, 3] as const

/** 1, 2 or 3. */
export type HintLevel = (typeof HINT_LEVELS)[number]

/** What a student is told; null for what the level keeps back. */
export type Hint = {
  readonly level: HintLevel
  /** The stage that the next step works for. */
  readonly stage: Stage
  /** The earlier stage that is broken and has to be repaired first, if one is. */
  readonly brokenStage: Stage | null
  readonly lookFor: LookFor
  readonly hold: HowToHold | null
  readonly do: WhatToDo | null
  readonly why: Why | null
}

/**
 * @param position any legal position, in any hold
 * @param stage whose goal is wanted
 * @returns the hint for the next step of the lesson way; null when the goal is met
 */
export function hintFor(
  position: CubePosition,
  stage: Stage,
  level: HintLevel,
  book: SequenceBook = LESSON_BOOK,
): Hint | null {
  const step = nextLessonStep(position, stage, book)
  if (step === undefined) return null
  return {
    level,
    stage: step.stage,
    brokenStage: brokenStage(position, stage),
    lookFor: step.lookFor,
    hold: level >= 2 ? step.hold : null,
    do: level >= 3 ? step.do : null,
    why: level >= 3 ? step.why : null,
  }
}
