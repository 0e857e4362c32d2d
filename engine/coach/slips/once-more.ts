/**
 * A quarter turn of a sequence was made once more, which is half a turn; the sequence goes on behind it, or is at its end.
 *
 *     F U R R U' R' F'    where the book has F U R U' R' F': "R once was enough"
 */

import { quartersOf } from '../turn-tokens.ts'
import { endOfRest, type SlipFinder } from './slip.ts'

/** A quarter turn that comes twice; never a half turn, which would undo itself. */
export const onceMore: SlipFinder = (begun) => {
  const { track, pattern, at, nRight } = begun
  const again = at + nRight
  const isAgain = nRight > 0 && track.tokens[again] === track.tokens[again - 1]
  if (!isAgain || quartersOf(track.tokens[again]) === 2) return null
  const endToken = endOfRest(begun, again + 1, nRight)
  if (endToken === null) return null
  const turn = track.turns[track.turnOfToken[again]]
  const details = { key: 'coach/wrong-amount', turn, shouldBe: pattern.turnOfToken[nRight - 1] } as const
  return { details, fromToken: again - 1, toToken: again + 1, endToken }
}
