/** Any turns as face turns of a cube held home, so that two ways can be held against each other. */

import { applyTurn } from '../../cube/apply-turn.ts'
import { copyCube } from '../../cube/cube-position.ts'
import { type Face, faceIndex, oppositeFace } from '../../cube/faces.ts'
import { centreAt, HELD_CUBES, type Hold } from '../../cube/hold.ts'
import { type Turn, type TurnName, turnAxis, turnLayers, turnOf, turnQuarters } from '../../cube/turns.ts'

/** Clockwise quarter turns 0..3 of a face. */
type FaceQuarters = { readonly face: Face; readonly quarters: number }

const AMOUNTS = ['', '2', "'"] as const

/**
 * @param hold how the cube is held when the turns begin
 * @returns what the turns do to a cube held home, re-holds left out: wide and slice turns as the outer turns that they
 *   equal, turns of one face in a row as one or none, and of two opposite faces the earlier one in `FACES` first
 */
export function plainFaceTurns(turns: readonly Turn[], hold: Hold): Turn[] {
  const held = copyCube(HELD_CUBES[hold])
  const plain: FaceQuarters[] = []
  for (const turn of turns) {
    for (const { face, quarters } of outerTurnsOf(turn)) append(plain, { face: centreAt(held, face), quarters })
    applyTurn(held, turn)
  }
  return plain.map(({ face, quarters }) => turnOf(`${face}${AMOUNTS[quarters - 1]}` as TurnName))
}

/** Turning the middle layer one way is turning the whole cube that way and the two outer layers back. */
function outerTurnsOf(turn: Turn): FaceQuarters[] {
  const layers = turnLayers(turn)
  const amountOf = (layer: number) => (layers.includes(layer) ? turnQuarters(turn) : 0)
  const axis = turnAxis(turn)
  return [
    { face: axis, quarters: amountOf(1) - amountOf(0) },
    // Seen from the far side the turn goes the other way round.
    { face: oppositeFace(axis), quarters: amountOf(0) - amountOf(-1) },
  ]
}

/** Appends a turn; the last one or two of the row may be of the same axis and take it up. */
function append(plain: FaceQuarters[], { face, quarters }: FaceQuarters): void {
  const last = plain.at(-1)
  const isOpposite = last !== undefined && last.face === oppositeFace(face)
  const at = isOpposite ? plain.length - 2 : plain.length - 1
  const isTakenUp = plain[at]?.face === face
  const sum = (quarters + 8 + (isTakenUp ? plain[at].quarters : 0)) % 4
  if (isTakenUp) plain.splice(at, 1)
  if (sum === 0) return
  const isFirst = isOpposite && faceIndex(face) < faceIndex(last.face)
  plain.splice(isFirst ? plain.length - 1 : plain.length, 0, { face, quarters: sum })
}
