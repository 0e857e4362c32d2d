/**
 * `read --stage K [--to M] --scramble "TURNS" --solution "TURNS"`: what a solution did, step by step, and why it took the
 * turns that it took. A solution that does not reach the goal is read as far as it goes.
 */

import { readSolution } from '../../engine/coach/read-solution.ts'
import { whereAstray } from '../../engine/coach/where-astray.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { type Turn, turnName } from '../../engine/cube/turns.ts'
import { formatRepeated } from '../../engine/method/book/format-book.ts'
import { LESSON_BOOK } from '../../engine/method/book/lesson-book.ts'
import type { StageSpan } from '../../engine/method/stages.ts'
import { writeStep } from '../../engine/method/way/lesson-steps.ts'
import { assert, ok, type Result } from '../../engine/result.ts'
import { openParTables, type ParTables } from '../../engine/search/par/open-par-tables.ts'
import { EXIT } from './exit-codes.ts'
import type { Answer, Answerer } from './question.ts'
import { readSpan, readTurns, whyNoStart } from './read-input.ts'
import { readPosition } from './read-position.ts'

/** Opens the command, and the tables of par; it has no options beside the question. */
export async function openRead(): Promise<Result<Answerer, never>> {
  const pars = await openParTables()
  assert(pars.ok, 'the shipped pars can be read')
  return ok({
    answer: ({ stage, to, solution, ...asked }) => {
      const span = readSpan(stage, to)
      if (!span.ok) return span
      const start = readPosition(asked)
      if (!start.ok) return start
      const turns = readTurns('--solution', solution)
      return turns.ok ? ok(read(span.value, start.value, turns.value, pars.value)) : turns
    },
    close: () => Promise.resolve(),
  })
}

function read(span: StageSpan, start: CubePosition, turns: readonly Turn[], pars: ParTables): Answer {
  const error = whyNoStart(span.from, start)
  if (error !== undefined) return { output: { error }, exit: EXIT.no }
  const { isReached, nTurns, overPar, episodes, notes } = readSolution({ start, turns, span, pars })
  const astray = isReached ? null : whereAstray({ start, turns, span })
  const output = {
    reached: isReached,
    turns: nTurns,
    overPar,
    episodes: episodes.map((episode) => ({
      from: episode.fromTurn,
      to: episode.toTurn,
      stage: episode.stage,
      case: episode.caseId,
      done: episode.done.map(({ stage, sequenceIndex, nTimes, isExact }) => ({
        stage,
        sequence: formatRepeated(LESSON_BOOK.stages[stage][sequenceIndex].written, nTimes),
        exact: isExact,
      })),
      advised: writeStep(episode.advised),
      turns: episode.nTurns,
      parBefore: episode.parBefore,
      parAfter: episode.parAfter,
      overPar: episode.overPar,
      wasted: episode.nWasted,
      open: episode.isOpen,
    })),
    notes: notes.map(({ key, fromTurn, toTurn, costTurns, isOpen, stage, caseId, becomes, broken, sequence }) => ({
      key,
      from: fromTurn,
      to: toTurn,
      cost: costTurns,
      open: isOpen,
      stage,
      case: caseId,
      becomes,
      broken,
      sequence,
    })),
    ...(astray === null
      ? {}
      : {
          astray: {
            after: astray.turnIndex,
            why: astray.note?.key ?? null,
            mend:
              astray.mend === null
                ? null
                : { at: astray.mend.at, from: nameOrNull(astray.mend.from), to: nameOrNull(astray.mend.to) },
          },
        }),
  }
  return { output, exit: isReached ? EXIT.yes : EXIT.no }
}

function nameOrNull(turn: Turn | null): string | null {
  return turn === null ? null : turnName(turn)
}
