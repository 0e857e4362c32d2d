/** Lesson ways as the server sends them. */

import { drawArrangement } from '../../../engine/method/draw-start.ts'
import type { SequenceBook } from '../../../engine/method/sequence-book.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import { type LessonStep, turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { lessonSteps, writeStep } from '../../../engine/method/way/lesson-steps.ts'
import type { WayStepView } from '../../../engine/wire/views.ts'
import { sourceNumbered } from '../../engine/method/starts.ts'

/** @param number which start of the stage */
export function aWayFrom(from: Stage, to: Stage, number: number, book?: SequenceBook): WayStepView[] {
  return lessonSteps(drawArrangement(from, sourceNumbered(number)), { from, to }, book).map((step) =>
    asSent(step, book),
  )
}

export function asSent(step: LessonStep, book?: SequenceBook): WayStepView {
  const { stage, isRepair, lookFor, why, hold } = step
  const written = writeStep(step, book)
  return {
    stage,
    isRepair,
    lookFor,
    why,
    mark: hold.mark,
    hold: written.hold,
    do: written.do,
    nSteps: turnsOfStep(step).length,
  }
}
