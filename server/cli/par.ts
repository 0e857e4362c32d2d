/**
 * `par --stage K [--to M] --scramble "TURNS" [--budget SECONDS]`: the fewest turns to the goal, and a solution of so many. One
 * stage is looked up. Several stages are searched for; what is not proven in the time is called so.
 */

import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { formatTurns } from '../../engine/cube/format-turns.ts'
import type { StageSpan } from '../../engine/method/stages.ts'
import { assert, ok, type Result } from '../../engine/result.ts'
import { openShortestSolutions } from '../../engine/search/par/open-shortest-solutions.ts'
import type { ShortestAnswer } from '../../engine/search/shortest/shortest-answer.ts'
import { isLookedUp, lookUpShortest } from '../search/look-up-shortest.ts'
import { EXIT } from './exit-codes.ts'
import type { OpenSearch } from './open-search.ts'
import type { Answer, Answerer } from './question.ts'
import { type InputFault, readNumber, readSpan, whyNoStart } from './read-input.ts'
import { readPosition } from './read-position.ts'

const BUDGET_SECONDS = '10'
const BUDGET_RANGE = { least: 0.1, most: 3_600, whole: false }
const MS_PER_SECOND = 1_000

/**
 * @param budget seconds for each question about several stages, as written
 * @param openSearch called when the first question needs more than a look-up
 */
export async function openPar(
  { budget = BUDGET_SECONDS }: { readonly budget?: string },
  openSearch: OpenSearch,
): Promise<Result<Answerer, InputFault>> {
  const seconds = readNumber('--budget', budget, BUDGET_RANGE)
  if (!seconds.ok) return seconds
  const solutions = await openShortestSolutions()
  assert(solutions.ok, 'the shipped solutions can be read')
  let search: ReturnType<OpenSearch> | undefined

  const answerLater = async (span: StageSpan, position: CubePosition): Promise<Answer> => {
    search ??= openSearch(span.to)
    const answer = await search.shortest({ position, to: span.to, budgetMs: seconds.value * MS_PER_SECOND })
    if (!answer.ok) return { output: { error: `the search ended with ${answer.error.code}` }, exit: EXIT.no }
    return answerOf(span, answer.value)
  }
  return ok({
    answer: ({ stage, to, ...asked }) => {
      const span = readSpan(stage, to)
      if (!span.ok) return span
      const start = readPosition(asked)
      if (!start.ok) return start
      const error = whyNoStart(span.value.from, start.value)
      if (error !== undefined) return ok({ output: { error }, exit: EXIT.no })
      if (!isLookedUp(start.value, span.value.to)) return ok(answerLater(span.value, start.value))
      return ok(answerOf(span.value, lookUpShortest(start.value, span.value.to, solutions.value)))
    },
    close: async () => search?.close(),
  })
}

function answerOf({ from, to }: StageSpan, { turns, proven, lowerBound }: ShortestAnswer): Answer {
  const output = { stage: from, to, par: turns.length, proven, lowerBound, solution: formatTurns(turns) }
  return { output, exit: EXIT.yes }
}
