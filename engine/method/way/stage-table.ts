/** What the two kinds of table have in common: asked for a seen cube, they say what to do next at their stage. */

import type { LessonChoice } from './lesson-choice.ts'
import type { SeenCube } from './seen-cube.ts'

/** The goal of the stage is met: nothing to do. */
export const DONE = -1

/** The book has no way from here. */
export const STUCK = -2

/** Width of the choices in an answer, above any number of them: 60 sequences 5 times with 16 ways to begin, 3 top turns. */
const ANSWER_WIDTH = 2 ** 13

/**
 * The shortest ways of one stage. Optimisation: an answer is one number, not an object, because a lesson way asks twenty
 * times and a million of them are walked in the tests.
 */
export type StageTable = {
  readonly choices: readonly LessonChoice[]
  /**
   * @param seen meets the goals before the stage
   * @returns `DONE`, `STUCK`, or an answer for `slotIn` and `choiceIn`
   */
  next(seen: SeenCube): number
}

/** @returns the answer that names a slot and a choice */
export function answerOf(slot: number, choice: number): number {
  return slot * ANSWER_WIDTH + choice
}

/** @returns which of the stage's four pieces an answer is about, 0..3, by its home as seen; 0 at stages 4 to 7 */
export function slotIn(answer: number): number {
  return Math.trunc(answer / ANSWER_WIDTH)
}

/** @returns index of the choice that an answer names */
export function choiceIn(answer: number): number {
  return answer % ANSWER_WIDTH
}
