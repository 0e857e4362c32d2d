/** What happened between two states of a try, so that it can be shown and said: turns on, turns back, or something else. */

import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube, cubesEqual } from '../../engine/cube/cube-position.ts'
import { inverseTurns, type Turn } from '../../engine/cube/turns.ts'

/** A cube in a hand: where it stands, and the turns that brought it there from the start of try `tryNumber`. */
export type CubeInHand = {
  readonly tryNumber: number
  readonly standing: readonly Turn[]
  readonly position: CubePosition
}

export type TurnsBetween =
  | { readonly kind: 'none' }
  | { readonly kind: 'turned'; readonly turns: readonly Turn[] }
  /** `turns` are the ones carried out now: the inverses of what was taken back. */
  | { readonly kind: 'taken-back'; readonly turns: readonly Turn[] }
  /** Another try, another round, or the server knew better. */
  | { readonly kind: 'other' }

export function turnsBetween(before: CubeInHand, after: CubeInHand): TurnsBetween {
  const nBefore = before.standing.length
  const nAfter = after.standing.length
  const nShared = Math.min(nBefore, nAfter)
  for (let index = 0; index < nShared; index++) {
    if (before.standing[index] !== after.standing[index]) return { kind: 'other' }
  }
  const turns = nBefore < nAfter ? after.standing.slice(nBefore) : inverseTurns(before.standing.slice(nAfter))
  // The start is another one: same turns, other cube.
  if (before.tryNumber !== after.tryNumber || !leadsTo(before.position, turns, after.position)) return { kind: 'other' }
  if (turns.length === 0) return { kind: 'none' }
  return { kind: nBefore < nAfter ? 'turned' : 'taken-back', turns }
}

function leadsTo(from: CubePosition, turns: readonly Turn[], to: CubePosition): boolean {
  const position = copyCube(from)
  for (const turn of turns) applyTurn(position, turn)
  return cubesEqual(position, to)
}
