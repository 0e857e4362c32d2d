/** Which hint stands in the try on the screen, followed from step to step. */

import { useMemo, useRef } from 'react'
import type { Step } from '../../../engine/contest/steps.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import type { Turn } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { type StepUnderWay, stepUnderWay } from '../../../engine/method/way/step-under-way.ts'
import { type HintWalk, hintAtTheEnd, type StandingHint, type TaughtHint, walkHints } from './hint-of-try.ts'

/** @returns the step that a try is in the middle of; null where none is */
export function useStepUnderWay(
  start: CubePosition,
  turns: readonly Turn[],
  { from, to }: StageSpan,
): StepUnderWay | null {
  return useMemo(() => stepUnderWay(start, turns, { from, to }), [start, turns, from, to])
}

/**
 * @param start of the round; another one is another walk
 * @param steps all steps of the try
 * @param taught what the teacher sent in this try
 */
export function useHintOfTry(
  start: CubePosition,
  steps: readonly Step[],
  taught: readonly TaughtHint[],
  { from, to }: StageSpan,
): StandingHint | null {
  const lesson = useMemo(() => ({ span: { from, to }, book: LESSON_BOOK }), [from, to])
  const walk = useRef<HintWalk | null>(null)
  return useMemo(() => {
    walk.current = walkHints(walk.current, start, steps, taught, lesson)
    return hintAtTheEnd(walk.current)
  }, [start, steps, taught, lesson])
}
