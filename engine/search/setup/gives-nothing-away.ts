/**
 * A setup is turned by the student, who may simply turn it back. That must be no way to win: it has to cost six turns more
 * than par at least, and it must not be what the lesson would show.
 */

import { applyTurn } from '../../cube/apply-turn.ts'
import { type CubePosition, copyCube } from '../../cube/cube-position.ts'
import { FACE_TURNS, inverseTurn, inverseTurns, type Turn } from '../../cube/turns.ts'
import { stepsBeforeGoal } from '../../method/goal-reached.ts'
import { goalMet } from '../../method/goals.ts'
import type { Stage } from '../../method/stages.ts'
import { plainFaceTurns } from './plain-face-turns.ts'

/** Undoing a setup meets the goal so many turns after par, or later. */
export const TURNS_OVER_PAR_MIN = 6

/** What a round wants kept from the students. */
export type RoundSecrets = {
  /** The stage whose goal ends the round. */
  readonly to: Stage
  /** Fewest turns from the start to that goal. */
  readonly parTurns: number
  /** What the lesson would do from the start; empty where there is none. */
  readonly lessonWay: readonly Turn[]
}

/** @returns the fewest turns that a setup must have */
export function setupTurnsMin({ parTurns }: RoundSecrets): number {
  return parTurns + TURNS_OVER_PAR_MIN
}

/**
 * @param start held home; the lesson way begins in this hold
 * @param setup face turns that lead from the solved cube to the start
 * @returns does undoing the setup meet the goal no earlier than `setupTurnsMin` turns, does it not pass so close by the goal
 *   that one other turn would meet it earlier, and does it not begin with the lesson way?
 */
export function givesNothingAway(start: CubePosition, setup: readonly Turn[], secrets: RoundSecrets): boolean {
  const undoing = inverseTurns(setup)
  const nBefore = stepsBeforeGoal(start, undoing, secrets.to)
  if (nBefore === null || nBefore < setupTurnsMin(secrets)) return false
  if (passesByTheGoal(start, undoing, secrets)) return false
  const lessonWay = plainFaceTurns(secrets.lessonWay, 0)
  if (lessonWay.length === 0) return true
  const plainUndoing = plainFaceTurns(undoing, 0)
  return lessonWay.some((turn, index) => turn !== plainUndoing[index])
}

/** A solution that is shown but for its last turn is shown. What is one turn away at the start everybody sees. */
function passesByTheGoal(start: CubePosition, undoing: readonly Turn[], secrets: RoundSecrets): boolean {
  const position = copyCube(start)
  return undoing.slice(0, setupTurnsMin(secrets) - 2).some((undone) => {
    applyTurn(position, undone)
    return FACE_TURNS.some((turn) => {
      applyTurn(position, turn)
      const isMet = goalMet(position, secrets.to)
      applyTurn(position, inverseTurn(turn))
      return isMet
    })
  })
}
