/**
 * `check --stage K [--to M] --scramble "TURNS" --solution "TURNS"`: does the solution reach the goal, and with how many turns?
 * Turns are applied to a solved cube held yellow up, green in front; white is the first layer.
 */

import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { countExecutionTurns } from '../../engine/cube/execution-turns.ts'
import { countHalfTurnMetric } from '../../engine/cube/half-turn-metric.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import { countQuarterTurnMetric } from '../../engine/cube/quarter-turn-metric.ts'
import { countSliceTurnMetric } from '../../engine/cube/slice-turn-metric.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { stepsBeforeGoal } from '../../engine/method/goal-reached.ts'
import { goalMet } from '../../engine/method/goals.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { EXIT, type ExitCode } from './exit-codes.ts'

export type CheckInput = { from: Stage; to: Stage; scramble: readonly Turn[]; solution: readonly Turn[] }

export type CheckOutput =
  | { reached: boolean; reachedAt: number | null; turns: number; metrics: Metrics }
  /** The scramble does not meet the goals that come before the stage. */
  | { error: string }

type Metrics = { outerBlock: number; execution: number; half: number; quarter: number; slice: number }

export function check(input: CheckInput): { output: CheckOutput; exit: ExitCode } {
  const start = afterTurns(solvedCube(), input.scramble)
  const before = input.from - 1
  if (before >= 1 && !goalMet(start, before as Stage)) {
    return {
      output: { error: `the scramble does not start stage ${input.from}: the goal of stage ${before} is not met` },
      exit: EXIT.no,
    }
  }
  const nSteps = stepsBeforeGoal(start, input.solution, input.to)
  const counted = nSteps === null ? input.solution : input.solution.slice(0, nSteps)
  const output = {
    reached: nSteps !== null,
    reachedAt: nSteps,
    turns: countOuterBlockTurns(counted),
    metrics: {
      outerBlock: countOuterBlockTurns(counted),
      execution: countExecutionTurns(counted),
      half: countHalfTurnMetric(counted),
      quarter: countQuarterTurnMetric(counted),
      slice: countSliceTurnMetric(counted),
    },
  }
  return { output, exit: nSteps === null ? EXIT.no : EXIT.yes }
}
