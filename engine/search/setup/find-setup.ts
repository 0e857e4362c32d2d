/** Finds a setup: face turns that bring a solved real cube, held home, to the start of a round. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { asHeldHome, type Hold, holdOf } from '../../cube/hold.ts'
import type { Turn } from '../../cube/turns.ts'
import { goalMet } from '../../method/goals.ts'
import { err, ok, type Result } from '../../result.ts'
import { NODES_PER_ASKING } from '../two-phase/node-budget.ts'
import { searchTwoPhase, TURNS_MAX, type TwoPhaseTables } from '../two-phase/two-phase-search.ts'
import { givesNothingAway, type RoundSecrets, setupTurnsMin, TURNS_OVER_PAR_MIN } from './gives-nothing-away.ts'
import { plainFaceTurns } from './plain-face-turns.ts'

/** What setup is wanted. */
export type SetupWish = {
  readonly tables: TwoPhaseTables
  /** Any legal position, in any hold. */
  readonly start: CubePosition
  /** What the setup must not give away, the lesson way in the hold of the start; when left out, any setup will do. */
  readonly secrets?: RoundSecrets
  /** A setup of at most so many turns ends the search; when left out it goes on for a shorter one while it may. */
  readonly turnsEnough?: number
  /** Asked every few thousand nodes: is the time up? */
  readonly isOver: () => boolean
}

/** A setup, to be turned on a solved cube held home. */
export type Setup = {
  readonly turns: readonly Turn[]
  /** How the cube is to be held after the setup. */
  readonly hold: Hold
}

/** Why there is no setup. */
export type SetupFault =
  /** The start meets the round's goal already, so any setup gives it away. Do: draw another start. */
  | { readonly code: 'setup/at-goal' }
  /** No setup is as long as this par asks for. Data: the longest par that can be kept. Do: play fewer stages at once. */
  | { readonly code: 'setup/par-too-long'; readonly parTurnsMax: number }
  /** None was found in the time and a bounded while after it. Data: how many nodes were looked at. Do: ask again with more time. */
  | { readonly code: 'setup/none-in-time'; readonly nNodes: number }

/**
 * When the time is up and nothing is found, the search goes on for any word at all, with one longest second phase after the
 * other, so many nodes each: some tenths of a second. Starts far from solved that look the same from every side, such as the
 * one with every edge flipped, need long second phases; some starts of stage 6 need short ones.
 */
const NODES_BEYOND_MAX = 3_000_000
const PHASE_2_TURNS_BEYOND = [10, 12] as const

/** @returns the shortest setup that was found and that gives nothing away */
export function findSetup(wish: SetupWish): Result<Setup, SetupFault> {
  const { tables, start, secrets, turnsEnough = 0, isOver } = wish
  const position = asHeldHome(start)
  const hold = holdOf(start)
  const kept = secrets && { ...secrets, lessonWay: plainFaceTurns(secrets.lessonWay, hold) }
  if (kept !== undefined && goalMet(position, kept.to)) return err({ code: 'setup/at-goal' })
  const turnsMin = kept === undefined ? 0 : setupTurnsMin(kept)
  if (turnsMin > TURNS_MAX) return err({ code: 'setup/par-too-long', parTurnsMax: TURNS_MAX - TURNS_OVER_PAR_MIN })
  const accepts = (turns: readonly Turn[]) => kept === undefined || givesNothingAway(position, turns, kept)
  const rules = { tables, position, turnsMin, accepts }
  const inTime = searchTwoPhase({ ...rules, turnsEnough, isOver })
  if (inTime.turns !== null) return ok({ turns: inTime.turns, hold })
  let { nNodes } = inTime
  for (const phase2TurnsMax of PHASE_2_TURNS_BEYOND) {
    const beyond = searchTwoPhase({
      ...rules,
      turnsEnough: TURNS_MAX,
      phase2TurnsMax,
      isOver: afterNodes(NODES_BEYOND_MAX),
    })
    if (beyond.turns !== null) return ok({ turns: beyond.turns, hold })
    nNodes += beyond.nNodes
  }
  return err({ code: 'setup/none-in-time', nNodes })
}

function afterNodes(nNodes: number): () => boolean {
  let nLeft = nNodes
  return () => {
    nLeft -= NODES_PER_ASKING
    return nLeft <= 0
  }
}
