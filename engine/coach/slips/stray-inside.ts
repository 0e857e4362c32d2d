/**
 * A turn too many inside a sequence, which goes on behind it.
 *
 *     F U R D U' R' F'    where the book has F U R U' R' F': "D does not belong there"
 */

import { endOfRest, type SlipFinder } from './slip.ts'

/** One turn too many; the rest is as in the book. */
export const strayInside: SlipFinder = (begun) => {
  const { track, at, nRight } = begun
  const fromToken = at + nRight
  if (nRight === 0 || fromToken >= track.tokens.length) return null
  const endToken = endOfRest(begun, fromToken + 1, nRight)
  if (endToken === null) return null
  const turn = track.turns[track.turnOfToken[fromToken]]
  return { details: { key: 'coach/layer-broken', turn }, fromToken, toToken: fromToken + 1, endToken }
}
