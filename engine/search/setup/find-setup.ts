/** Finds a setup: face turns that bring a solved real cube, held home, to the start of a round. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { asHeldHome, type Hold, holdOf } from '../../cube/hold.ts'
import type { Turn } from '../../cube/turns.ts'
import { err, ok, type Result } from '../../result.ts'
import { NODES_PER_ASKING } from '../two-phase/node-budget.ts'
import { searchTwoPhase, TURNS_MAX, type TwoPhaseTables } from '../two-phase/two-phase-search.ts'
import { givesNothingAway, type RoundSecrets, setupTurnsMin } from './gives-nothing-away.ts'
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
  /** None was found in the time and a bounded while after it. Data: how many nodes were looked at. Do: ask again with more time. */
  { readonly code: 'setup/none-in-time'; readonly nNodes: number }

/**
 * When the time is up and nothing is found, so many nodes more are looked at, some tenths of a second, for any word at all.
 * It takes longer second phases to find one quickly for the few positions that look the same from every side and are far
 * from solved, such as the one with every edge flipped.
 */
const NODES_BEYOND_MAX = 4_000_000
const PHASE_2_TURNS_MAX_BEYOND = 12

/** @returns the shortest setup that was found and that gives nothing away */
export function findSetup(wish: SetupWish): Result<Setup, SetupFault> {
  const { tables, start, secrets, turnsEnough = 0, isOver } = wish
  const position = asHeldHome(start)
  const hold = holdOf(start)
  const kept = secrets && { ...secrets, lessonWay: plainFaceTurns(secrets.lessonWay, hold) }
  const rules = {
    tables,
    position,
    turnsMin: kept === undefined ? 0 : setupTurnsMin(kept),
    accepts: (turns: readonly Turn[]) => kept === undefined || givesNothingAway(position, turns, kept),
  }
  const inTime = searchTwoPhase({ ...rules, turnsEnough, isOver })
  if (inTime.turns !== null) return ok({ turns: inTime.turns, hold })
  let nNodesLeft = NODES_BEYOND_MAX
  const beyond = searchTwoPhase({
    ...rules,
    turnsEnough: TURNS_MAX,
    phase2TurnsMax: PHASE_2_TURNS_MAX_BEYOND,
    isOver: () => {
      nNodesLeft -= NODES_PER_ASKING
      return nNodesLeft <= 0
    },
  })
  if (beyond.turns !== null) return ok({ turns: beyond.turns, hold })
  return err({ code: 'setup/none-in-time', nNodes: inTime.nNodes + beyond.nNodes })
}
