/**
 * Which hint stands on the screen. A hint is asked for at one position and must not vanish with the next turn, for every
 * sequence breaks something for a while: it stays until the step that it tells of is done, in whatever way. Pure.
 *
 * Re-holding the cube, or turning its top layer, leaves the step the same: then the next rung is the next one, and the
 * words follow the cube.
 */

import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, cubesEqual } from '../../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../../engine/cube/hold.ts'
import { caseOf, isLastLayerStage } from '../../../engine/method/cases.ts'
import { goalMet, goalsBeforeMet, nPartsDone } from '../../../engine/method/goals.ts'
import type { SequenceBook } from '../../../engine/method/sequence-book.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import type { HintLevel } from '../../../engine/method/way/hint-level.ts'
import { type LessonStep, turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { nextLessonStep } from '../../../engine/method/way/lesson-steps.ts'

/** What is played, and from which book the lesson is taught. */
export type Lesson = { readonly span: StageSpan; readonly book: SequenceBook }

/** A hint and where the cube stood when it was given. */
export type ShownHint = { readonly position: CubePosition; readonly level: HintLevel }

/**
 * @param before what stood there until now
 * @param position where the cube stands now
 * @param given levels of the hints that were given at this very position; what stood for the same step is kept with them
 * @returns what stands there from now on; asking twice changes nothing
 */
export function shownHint(
  before: ShownHint | null,
  position: CubePosition,
  given: readonly HintLevel[],
  lesson: Lesson,
): ShownHint | null {
  if (goalMet(position, lesson.span.to)) return null
  if (given.length > 0) {
    // A lower rung, from the teacher or asked for in another hold, takes none away that was given for the same step.
    const known = before !== null && isSameStep(before.position, position, lesson) ? before.level : 0
    const level = Math.max(...given, known) as HintLevel
    const isSame = before !== null && before.level === level && cubesEqual(before.position, position)
    return isSame ? before : { position, level }
  }
  return before === null || isStepDone(before.position, position, lesson) ? null : before
}

/** @returns the rung that asking would give now; null at the goal, and when the allowed rungs have all been given */
export function nextHintLevel(
  shown: ShownHint | null,
  position: CubePosition,
  levelMax: 0 | HintLevel,
  lesson: Lesson,
): HintLevel | null {
  if (goalMet(position, lesson.span.to)) return null
  const level = shown !== null && isSameStep(shown.position, position, lesson) ? shown.level + 1 : 1
  return level <= levelMax ? (level as HintLevel) : null
}

/** @returns the position that the words speak of: the present one as long as the step is the same there */
export function toldAt(shown: ShownHint, position: CubePosition, lesson: Lesson): CubePosition {
  return isSameStep(shown.position, position, lesson) ? position : shown.position
}

function isSameStep(one: CubePosition, other: CubePosition, lesson: Lesson): boolean {
  if (cubesEqual(one, other)) return true
  const [first, second] = [stepAt(one, lesson), stepAt(other, lesson)]
  return first !== undefined && second !== undefined && aboutOf(first) === aboutOf(second)
}

/** What a step is about: the same piece in the same case, or the same case of the last layer. */
function aboutOf({ stage, lookFor }: LessonStep): string {
  const piece = 'piece' in lookFor ? lookFor.piece : null
  return `${stage} ${lookFor.key} ${piece?.home ?? ''}`
}

function isStepDone(asked: CubePosition, position: CubePosition, lesson: Lesson): boolean {
  const step = stepAt(asked, lesson)
  if (step === undefined) return true
  const turns = turnsOfStep(step)
  const told = afterTurns(asked, turns)
  // The base is brought down by holding the cube otherwise: that step is done when the cube is held so.
  if (step.do.turns.length === 0) return cubesEqual(told, position)
  if (cubesEqual(asHeldHome(told), asHeldHome(position))) return true
  // On its way a step may bring another edge of the cross home, and take it along again.
  if (turns.some((_, nTurns) => cubesEqual(afterTurns(asked, turns.slice(0, nTurns)), position))) return false
  const { stage } = step
  if (!goalsBeforeMet(position, stage)) return false
  if (isLastLayerStage(stage)) return goalMet(position, stage) || caseOf(position, stage) !== caseOf(asked, stage)
  return nPartsDone(position, stage) > nPartsDone(asked, stage)
}

function stepAt(position: CubePosition, { span, book }: Lesson): LessonStep | undefined {
  return nextLessonStep(position, span, book)
}
