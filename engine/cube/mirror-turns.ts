/**
 * The mirror image of turns in the plane between left and right, as one sees them in a mirror standing at one's side.
 */

import { oppositeFace } from './faces.ts'
import { inverseTurn, type Turn, type TurnName, turnAxis, turnKind, turnName, turnOf } from './turns.ts'

/**
 * @returns each turn's mirror image: R becomes L', U becomes U', while M and x look the same in the mirror
 */
export function mirrorTurns(turns: readonly Turn[]): Turn[] {
  return turns.map(mirrorTurn)
}

function mirrorTurn(turn: Turn): Turn {
  const axis = turnAxis(turn)
  const isAcross = axis === 'R' || axis === 'L'
  if (!isAcross) return inverseTurn(turn)
  const isOneSided = turnKind(turn) === 'face' || turnKind(turn) === 'wide'
  // The mirror swaps the ends of the axis and the sense of turning; a layer in the middle is met by both at once.
  return isOneSided ? inverseTurn(onOppositeFace(turn)) : turn
}

function onOppositeFace(turn: Turn): Turn {
  const axis = turnAxis(turn)
  return turnOf(turnName(turn).replace(axis, oppositeFace(axis)) as TurnName)
}
