/**
 * `check --stage K [--to M] --scramble "TURNS" --solution "TURNS"`: does the solution reach the goal, and with how many turns?
 * Turns are applied to a solved cube held yellow up, green in front; white is the first layer.
 */

import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { countExecutionTurns } from '../../engine/cube/execution-turns.ts'
import { countHalfTurnMetric } from '../../engine/cube/half-turn-metric.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import { countQuarterTurnMetric } from '../../engine/cube/quarter-turn-metric.ts'
import { countSliceTurnMetric } from '../../engine/cube/slice-turn-metric.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { stepsBeforeGoal } from '../../engine/method/goal-reached.ts'
import type { StageSpan } from '../../engine/method/stages.ts'
import { ok, type Result } from '../../engine/result.ts'
import { EXIT } from './exit-codes.ts'
import type { Answer, Answerer } from './question.ts'
import { readSpan, readTurns, whyNoStart } from './read-input.ts'
import { readPosition } from './read-position.ts'

/** Opens the command; it has no options beside the question. */
export function openCheck(): Result<Answerer, never> {
  return ok({
    answer: ({ stage, to, solution, ...asked }) => {
      const span = readSpan(stage, to)
      if (!span.ok) return span
      const start = readPosition(asked)
      if (!start.ok) return start
      const tried = readTurns('--solution', solution)
      return tried.ok ? ok(check(span.value, start.value, tried.value)) : tried
    },
    close: () => Promise.resolve(),
  })
}

function check({ from, to }: StageSpan, start: CubePosition, solution: readonly Turn[]): Answer {
  const error = whyNoStart(from, start)
  if (error !== undefined) return { output: { error }, exit: EXIT.no }
  const nSteps = stepsBeforeGoal(start, solution, to)
  const counted = nSteps === null ? solution : solution.slice(0, nSteps)
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
