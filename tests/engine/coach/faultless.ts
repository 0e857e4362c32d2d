/** Solutions in which nothing goes wrong, of several kinds: the coach has nothing to say about them. */

import { below, type RandomSource } from '../../../engine/chance/random-source.ts'
import { afterTurns, applyTurns } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { type Turn, turnOf } from '../../../engine/cube/turns.ts'
import { firstStageToDo, goalMet } from '../../../engine/method/goals.ts'
import { isPieceStage } from '../../../engine/method/piece-cases.ts'
import type { StageSpan } from '../../../engine/method/stages.ts'
import { turnsOfStep } from '../../../engine/method/way/lesson-step.ts'
import { nextLessonStep } from '../../../engine/method/way/lesson-steps.ts'
import { allPieceSteps } from './other-pieces.ts'

const SIDE_RE_HOLDS: ReadonlyArray<readonly Turn[]> = [[], [turnOf('y')], [turnOf("y'")], [turnOf('y2')]]

/**
 * The lesson way of a student who is free where the lesson leaves it free: any of the four holds where the lesson says that
 * the hold does not matter, and the pieces of stages 1 to 3 in any order.
 */
export function freeLessonWay(start: CubePosition, span: StageSpan, random: RandomSource): Turn[] {
  const position = copyCube(start)
  const turns: Turn[] = []
  while (!goalMet(position, span.to)) {
    const next = freeStep(position, span, random)
    turns.push(...next)
    applyTurns(position, next)
  }
  return turns
}

function freeStep(position: CubePosition, span: StageSpan, random: RandomSource): readonly Turn[] {
  const stage = firstStageToDo(position, span.to)
  const step = nextLessonStep(position, span)
  if (stage === undefined || step === undefined) throw new Error('before the goal there is a step')
  if (isPieceStage(stage)) {
    const all = allPieceSteps(position, stage)
    return all[below(random, all.length)]
  }
  if (step.hold.mark.key !== 'hold/any' || step.do.sequenceIndex === null) return turnsOfStep(step)
  const reHold = SIDE_RE_HOLDS[below(random, SIDE_RE_HOLDS.length)]
  return [...reHold, ...step.do.turns]
}

/** The same solution for somebody who holds the cube another way at the beginning. */
export function heldOtherwise(start: CubePosition, random: RandomSource): CubePosition {
  return afterTurns(start, SIDE_RE_HOLDS[below(random, SIDE_RE_HOLDS.length)])
}
