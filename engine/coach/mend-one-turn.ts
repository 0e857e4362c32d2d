/**
 * A written solution that does not reach the goal: is there one turn that, written otherwise, left out or put in, makes it
 * reach it? Then this is most likely the slip of the pen.
 *
 * Positions are elements of a group, so the turns behind the place are made into one position once, and each try is one
 * composition: some 50 for each turn of the solution.
 */

import { afterTurns } from '../cube/apply-turn.ts'
import { composePositions } from '../cube/compose-positions.ts'
import { type CubePosition, solvedCube } from '../cube/cube-position.ts'
import { FACE_TURNS, type Turn, turnAxis, turnKind } from '../cube/turns.ts'
import { goalMet } from '../method/goals.ts'
import type { Stage } from '../method/stages.ts'

/** One turn to be written otherwise. */
export type OneTurnMend = {
  /** Index of the turn, or of the one in front of which one is missing. */
  readonly at: number
  /** The turn as it is written; null when one is missing. */
  readonly from: Turn | null
  /** What it should be; null when it is too many. */
  readonly to: Turn | null
}

/**
 * @param start stays as it is
 * @returns the mend; of several the one that changes a turn least: the same layer another amount, then another layer, then
 *   one too many, then one missing; among equals the first. Null when no single turn makes the solution reach the goal
 */
export function mendOneTurn(start: CubePosition, turns: readonly Turn[], to: Stage): OneTurnMend | null {
  const behind = endsOf(turns)
  const before = [start]
  for (const turn of turns) before.push(afterTurns(before[before.length - 1], [turn]))
  const reaches = (at: number, mended: Turn | null, from: number) => {
    const turned = mended === null ? before[at] : afterTurns(before[at], [mended])
    return goalMet(composePositions(turned, behind[from]), to)
  }
  const faceTurns = [...turns.keys()].filter((at) => turnKind(turns[at]) === 'face')
  const changed = (isLike: (a: Turn, b: Turn) => boolean) =>
    faceTurns.flatMap((at) =>
      FACE_TURNS.filter((turn) => turn !== turns[at] && isLike(turn, turns[at]) && reaches(at, turn, at + 1)).map(
        (turn): OneTurnMend => ({ at, from: turns[at], to: turn }),
      ),
    )
  const isOneLayer = (a: Turn, b: Turn) => turnAxis(a) === turnAxis(b)
  const [first] = [
    () => changed(isOneLayer),
    () => changed((a, b) => !isOneLayer(a, b)),
    () =>
      faceTurns.filter((at) => reaches(at, null, at + 1)).map((at): OneTurnMend => ({ at, from: turns[at], to: null })),
    () =>
      [...turns.keys(), turns.length].flatMap((at) =>
        FACE_TURNS.filter((turn) => reaches(at, turn, at)).map((turn): OneTurnMend => ({ at, from: null, to: turn })),
      ),
  ].flatMap((mends) => mends().slice(0, 1))
  return first ?? null
}

/** @returns by moment: what all turns from there on do to a solved cube held home */
function endsOf(turns: readonly Turn[]): CubePosition[] {
  const ends = [solvedCube()]
  for (let at = turns.length - 1; at >= 0; at--) {
    ends.push(composePositions(afterTurns(solvedCube(), [turns[at]]), ends[ends.length - 1]))
  }
  return ends.reverse()
}
