/**
 * `check --stage K [--to M] --scramble "TURNS" --solution "TURNS"`: does the solution reach the goal, and with how many turns?
 * Turns are applied to a solved cube held yellow up, green in front; white is the first layer.
 */

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
import { readSpan, readStart, readTurns } from './read-input.ts'

/** Opens the command; it has no options beside the question. */
export function openCheck(): Result<Answerer, never> {
  return ok({
    answer: ({ stage, to, scramble, solution }) => {
      const span = readSpan(stage, to)
      if (!span.ok) return span
      const turns = readTurns('--scramble', scramble)
      if (!turns.ok) return turns
      const tried = readTurns('--solution', solution)
      return tried.ok ? ok(check(span.value, turns.value, tried.value)) : tried
    },
    close: () => Promise.resolve(),
  })
}

function check({ from, to }: StageSpan, scramble: readonly Turn[], solution: readonly Turn[]): Answer {
  const start = readStart(from, scramble)
  if (!start.ok) return { output: { error: start.error }, exit: EXIT.no }
  const nSteps = stepsBeforeGoal(start.value, solution, to)
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
