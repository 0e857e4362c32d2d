/** Where a mistake is planted: a lesson way from a drawn start, and one of its steps. */

import { below, type RandomSource } from '../../../engine/chance/random-source.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'
import { type LessonStep, turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { lessonSteps } from '../../../engine/method/way/lesson-steps.ts'

/** A step of a lesson way that is about to be done. */
export type Place = {
  readonly start: CubePosition
  readonly span: StageSpan
  /** The lesson's turns up to the step. */
  readonly before: readonly Turn[]
  /** Where the cube stands then. */
  readonly position: CubePosition
  readonly step: LessonStep
  /** The steps behind this one. */
  readonly rest: readonly LessonStep[]
  /** The sequence of the step, once; empty for a top turn alone. */
  readonly once: readonly Turn[]
  readonly random: RandomSource
}

const STAGES_MORE_MAX = 2

/** @returns a place at a stage of the wanted ones; each draw of the source gives another */
export function drawPlace(random: RandomSource, stages: readonly Stage[] = STAGES): Place {
  for (;;) {
    const from = stages[below(random, stages.length)]
    const to = Math.min(7, from + below(random, STAGES_MORE_MAX + 1)) as Stage
    const start = drawArrangement(from, random)
    const span = { from, to }
    if (goalMet(start, to)) continue
    const steps = lessonSteps(start, span)
    const index = below(random, steps.length)
    const step = steps[index]
    if (!stages.includes(step.stage)) continue
    const before = steps.slice(0, index).flatMap(turnsOfStep)
    const { sequenceIndex } = step.do
    return {
      start,
      span,
      before,
      position: afterTurns(start, before),
      step,
      rest: steps.slice(index + 1),
      once: sequenceIndex === null ? [] : LESSON_BOOK.stages[step.stage][sequenceIndex].turns,
      random,
    }
  }
}

/** @returns the turns of a step in front of its sequence */
export function inFront({ step, once }: Place): Turn[] {
  const turns = turnsOfStep(step)
  return turns.slice(0, turns.length - once.length * step.do.nTimes)
}
