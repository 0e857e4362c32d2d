/** How far a cube stands on its way to the goal of a round, for words: the stage at hand and its parts. */

import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { goalMet, goalsBeforeMet, nPartsDone } from '../../../engine/method/goals.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'

export type GoalProgress = {
  /** The first stage of the span whose goal is not met; the last stage once all are. */
  readonly stage: Stage
  /** 0 to 4. */
  readonly nDone: number
  /** Whether the goals before the round's first stage hold. Every sequence breaks them for a while. */
  readonly earlierWhole: boolean
  readonly reached: boolean
}

export function goalProgress(position: CubePosition, span: StageSpan): GoalProgress {
  const within = STAGES.filter((stage) => span.from <= stage && stage <= span.to)
  const stage = within.find((each) => !goalMet(position, each)) ?? span.to
  return {
    stage,
    nDone: nPartsDone(position, stage),
    earlierWhole: goalsBeforeMet(position, span.from),
    reached: goalMet(position, span.to),
  }
}
