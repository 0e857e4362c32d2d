/**
 * Ways that do what the step of the lesson does, with more turns: another sequence of the book, or the same one so often
 * that it comes home all the same; or a trigger run backwards, six times less often as it would have been forwards.
 */

import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { inverseTurns, type Turn, turnOf } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { goalsBeforeMet, nPartsDone } from '../../../engine/method/goals.ts'
import { isPieceStage } from '../../../engine/method/piece-cases.ts'
import { RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'
import { type LessonStep, turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { repeated } from '../cube/arbitraries.ts'
import { allPieceSteps, helpsAnotherPiece } from './other-pieces.ts'
import { type Form, replaced, runs, whole } from './plant-forms.ts'
import type { Place } from './plant-place.ts'

const N_TRIGGER = RIGHT_TRIGGER.length
const ORDER_OF_A_TRIGGER = 6
/** Stage 2 is taught so. */
const TIMES_MAX = 5

const SIDE_HOLDS: ReadonlyArray<readonly Turn[]> = [[], [turnOf('y')], [turnOf("y'")], [turnOf('y2')]]
const TOP_TURNS: ReadonlyArray<readonly Turn[]> = [[], [turnOf('U')], [turnOf("U'")], [turnOf('U2')]]

/** @returns every such way at a place */
export function longWays(place: Place): Form[] {
  return [...byAnotherSequence(place), ...backwards(place)]
}

/** At stage 2 the right trigger and the left one can each bring a corner home; one of them takes longer. */
function byAnotherSequence(place: Place): Form[] {
  const { position, step } = place
  if (step.stage !== 2) return []
  const nLessonTurns = nLessonTurnsForPiece(place)
  return SIDE_HOLDS.flatMap((hold) =>
    TOP_TURNS.flatMap((top) =>
      LESSON_BOOK.stages[2].flatMap((sequence) =>
        Array.from({ length: TIMES_MAX }, (_, times) => [...hold, ...top, ...repeated(sequence.turns, times + 1)]),
      ),
    ),
  )
    .filter((turns) => countOuterBlockTurns(turns) > nLessonTurns && bringsItHome(place, afterTurns(position, turns)))
    .filter((turns) => !helpsOnTheWay(place, turns))
    .map(whole)
}

/** Is it a right step for another piece after fewer triggers? */
function helpsOnTheWay({ position, step }: Place, turns: readonly Turn[]): boolean {
  if (!isPieceStage(step.stage)) return false
  const { stage, lookFor } = step
  const nFront = turns.length % N_TRIGGER
  return Array.from({ length: TIMES_MAX }, (_, index) => index + 1).some((times) => {
    const after = afterTurns(position, turns.slice(0, nFront + times * N_TRIGGER))
    return helpsAnotherPiece(position, after, stage, lookFor, times)
  })
}

/** A piece that has to come out first takes two steps. */
function nLessonTurnsForPiece({ step, rest }: Place): number {
  const end = rest.findIndex((other) => homeOf(other) !== homeOf(step))
  return countOuterBlockTurns([step, ...rest.slice(0, end < 0 ? rest.length : end)].flatMap(turnsOfStep))
}

function homeOf({ lookFor }: LessonStep): string | undefined {
  return 'piece' in lookFor ? lookFor.piece?.home : undefined
}

function bringsItHome({ position, step }: Place, after: Place['position']): boolean {
  const { stage } = step
  if (!isPieceStage(stage) || !goalsBeforeMet(after, stage)) return false
  const isStillOut = allPieceSteps(after, stage).some((each) => each.home === homeOf(step))
  return !isStillOut && nPartsDone(after, stage) === nPartsDone(position, stage) + 1
}

/**
 * Only where the trigger stands alone, since inside a sequence so many turns look like anything; and without a top turn, which
 * looks like the beginning of the trigger forwards.
 */
function backwards(place: Place): Form[] {
  if (place.step.stage !== 2 || place.step.do.topTurn !== null) return []
  const all = turnsOfStep(place.step)
  return runs(place)
    .filter(({ n }) => ORDER_OF_A_TRIGGER - n > n)
    .map(({ at, n }) =>
      replaced(place, at, n * N_TRIGGER, repeated(inverseTurns(all.slice(at, at + N_TRIGGER)), ORDER_OF_A_TRIGGER - n)),
    )
}
