/**
 * Turns as the cube feels them, whoever holds it how: each is a quarter, a half or a quarter back of one of the six layers,
 * named by its centre. Re-holds vanish, a wide turn is the turn of the far layer, a slice turn that of its two neighbours.
 * So `R y F` and `R R` read alike, and a sequence is recognised from any hold.
 *
 * A token is one number: 4 times the home face of the layer's centre, plus clockwise quarters 1..3.
 */

import { CENTRES_AT, type CubePosition } from '../cube/cube-position.ts'
import { faceIndex, oppositeFace } from '../cube/faces.ts'
import { type Turn, turnAxis, turnKind, turnQuarters } from '../cube/turns.ts'

/** 4 * face + quarters. */
export type Token = number

/** Tokens of one layer share this. */
export function layerOf(token: Token): number {
  return token >> 2
}

/** @returns clockwise quarters 1..3 */
export function quartersOf(token: Token): number {
  return token & 3
}

/** @param layer home face 0..5 @param quarters 1..3 */
function tokenOf(layer: number, quarters: number): Token {
  return 4 * layer + quarters
}

/** @returns the same turn of the layer that stands at that place in another hold: `centres` by the face it had */
export function seenFrom(token: Token, centres: ArrayLike<number>, centresAt: number): Token {
  return tokenOf(centres[centresAt + layerOf(token)], quartersOf(token))
}

/**
 * @param position before the turn: only its centres are looked at
 * @param tokens gets what the turn does to layers: nothing for a re-hold, two tokens for a slice turn
 */
export function pushTokens(position: CubePosition, turn: Turn, tokens: Token[]): void {
  const axis = turnAxis(turn)
  const quarters = turnQuarters(turn)
  const near = position[CENTRES_AT + faceIndex(axis)]
  const far = position[CENTRES_AT + faceIndex(oppositeFace(axis))]
  switch (turnKind(turn)) {
    case 'face':
      tokens.push(tokenOf(near, quarters))
      return
    case 'wide':
      // The whole cube goes along, but for the far layer, which is as good as turned back.
      tokens.push(tokenOf(far, quarters))
      return
    case 'slice':
      tokens.push(tokenOf(near, 4 - quarters), tokenOf(far, quarters))
      return
    case 're-hold':
  }
}

/** @returns quarters 0..3 of several tokens of one layer together */
export function quartersTogether(tokens: ArrayLike<Token>, from: number, to: number): number {
  let sum = 0
  for (let index = from; index < to; index++) sum += quartersOf(tokens[index])
  return sum & 3
}

/**
 * Of `U U' U` the last two undo each other, and so do the first two: of pairs that are equally good the first one made is the
 * one that was needless.
 *
 * @param from first of some tokens that undo each other, up to `to` @param least where nothing before may be looked at
 * @returns by how many tokens earlier there are as many of the same
 */
export function nTokensEarlier(tokens: ArrayLike<Token>, least: number, from: number, to: number): number {
  let n = 0
  while (from - n > least && tokens[from - n - 1] === tokens[to - n - 1]) n++
  return n
}
