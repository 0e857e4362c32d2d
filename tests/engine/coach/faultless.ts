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
 * the hold does not matter, and the pieces of stages 1 to 3 in any order, one after the other.
 */
export function freeLessonWay(start: CubePosition, span: StageSpan, random: RandomSource): Turn[] {
  const position = copyCube(start)
  const turns: Turn[] = []
  let home: string | null = null
  while (!goalMet(position, span.to)) {
    const next = freeStep(position, span, home, random)
    home = next.home
    turns.push(...next.turns)
    applyTurns(position, next.turns)
  }
  return turns
}

type FreeStep = { readonly turns: readonly Turn[]; readonly home: string | null }

/** @param home of the piece that was begun with, which is gone on with until it is home */
function freeStep(position: CubePosition, span: StageSpan, home: string | null, random: RandomSource): FreeStep {
  const stage = firstStageToDo(position, span.to)
  const step = nextLessonStep(position, span)
  if (stage === undefined || step === undefined) throw new Error('before the goal there is a step')
  if (isPieceStage(stage)) {
    const all = allPieceSteps(position, stage)
    return all.find((each) => each.home === home) ?? all[below(random, all.length)]
  }
  if (step.hold.mark.key !== 'hold/any' || step.do.sequenceIndex === null)
    return { turns: turnsOfStep(step), home: null }
  const reHold = SIDE_RE_HOLDS[below(random, SIDE_RE_HOLDS.length)]
  return { turns: [...reHold, ...step.do.turns], home: null }
}

/** The same solution for somebody who holds the cube another way at the beginning. */
export function heldOtherwise(start: CubePosition, random: RandomSource): CubePosition {
  return afterTurns(start, SIDE_RE_HOLDS[below(random, SIDE_RE_HOLDS.length)])
}
