/**
 * Where written turns go astray, when they do not reach the goal: the turn after which an earlier layer is broken and stays
 * so, or how far they came. Every sequence breaks a layer for a while, so only what is never whole again counts. Pure.
 */

import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../../engine/cube/cube-position.ts'
import { type Turn, turnKind } from '../../../engine/cube/turns.ts'
import { goalsBeforeMet, stageProgress } from '../../../engine/method/goals.ts'
import type { Stage, StageSpan } from '../../../engine/method/stages.ts'
import { brokenStage } from '../../../engine/method/way/lesson-steps.ts'

/** A moment of the written turns: how many turns were made, re-holds not counted, and how the cube stands then. */
export type WrittenMoment = { readonly turnNumber: number; readonly position: CubePosition }

export type Astray =
  /** `stage` is the first one that is broken at the end; it broke with `turn`. */
  | {
      readonly kind: 'broken'
      readonly stage: Stage
      readonly turn: Turn
      readonly lastWhole: WrittenMoment
      readonly broken: WrittenMoment
    }
  /** All earlier layers are whole, but once there was more done than at the end. */
  | { readonly kind: 'was-further'; readonly furthest: WrittenMoment; readonly end: WrittenMoment }
  /** All earlier layers are whole; the goal is simply not there yet. */
  | { readonly kind: 'not-there'; readonly end: WrittenMoment }

/**
 * @param start meets the goals before `span.from`, as every start does; stays as it is
 * @param turns do not reach the goal of the span
 */
export function whereAstray(start: CubePosition, turns: readonly Turn[], span: StageSpan): Astray {
  const moments = momentsOf(start, turns)
  const end = moments[moments.length - 1]
  const lastWholeAt = moments.findLastIndex(({ position }) => goalsBeforeMet(position, span.from))
  const stage = brokenStage(end.position, span.from)
  if (stage !== null && lastWholeAt >= 0) {
    return {
      kind: 'broken',
      stage,
      turn: turns[lastWholeAt],
      lastWhole: moments[lastWholeAt],
      broken: moments[lastWholeAt + 1],
    }
  }
  const progress = moments.map(({ position }) => stageProgress(position, span))
  const furthestAt = progress.lastIndexOf(Math.max(...progress))
  if (progress[furthestAt] > progress[progress.length - 1]) {
    return { kind: 'was-further', furthest: moments[furthestAt], end }
  }
  return { kind: 'not-there', end }
}

/** @returns one moment more than there are turns: the first is the start */
function momentsOf(start: CubePosition, turns: readonly Turn[]): WrittenMoment[] {
  const position = copyCube(start)
  let turnNumber = 0
  const moments = [{ turnNumber, position: copyCube(position) }]
  for (const turn of turns) {
    applyTurn(position, turn)
    if (turnKind(turn) !== 're-hold') turnNumber++
    moments.push({ turnNumber, position: copyCube(position) })
  }
  return moments
}
