/** The steps of a lesson way under the headings of their stages. */

import type { Stage } from '../../../engine/method/stages.ts'
import type { WayStepView } from '../../../engine/wire/views.ts'

type StageSteps = {
  readonly stage: Stage
  /** At least one, each with its number in the whole way, from 1. */
  readonly steps: readonly { readonly number: number; readonly step: WayStepView }[]
}

/** @returns runs of steps of one stage, in order */
export function stepsByStage(steps: readonly WayStepView[]): StageSteps[] {
  const runs: { stage: Stage; steps: { number: number; step: WayStepView }[] }[] = []
  for (const [index, step] of steps.entries()) {
    const last = runs.at(-1)
    if (last?.stage === step.stage) last.steps.push({ number: index + 1, step })
    else runs.push({ stage: step.stage, steps: [{ number: index + 1, step }] })
  }
  return runs
}
