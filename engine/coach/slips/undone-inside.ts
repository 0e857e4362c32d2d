/**
 * Inside a sequence a turn is undone at once, and the sequence goes on.
 *
 *     F U R R' R U' R' F'    "R was turned and turned back, which takes 2 turns"
 */

import { layerOf, nTokensEarlier, quartersTogether } from '../turn-tokens.ts'
import { endOfRest, type SlipFinder } from './slip.ts'

const RUN_MIN = 2
const RUN_MAX = 4

/** Two to four tokens of one layer that undo each other, wherever in the sequence. */
export const undoneInside: SlipFinder = (begun) => {
  const { track, at, nRight } = begun
  const fromToken = at + nRight
  for (let toToken = fromToken + RUN_MIN; toToken <= fromToken + RUN_MAX; toToken++) {
    if (toToken > track.tokens.length) return null
    if (layerOf(track.tokens[toToken - 1]) !== layerOf(track.tokens[fromToken])) return null
    if (quartersTogether(track.tokens, fromToken, toToken) !== 0) continue
    const endToken = endOfRest(begun, toToken, nRight)
    if (endToken === null) continue
    const nEarlier = nTokensEarlier(track.tokens, at, fromToken, toToken)
    const turn = track.turns[track.turnOfToken[fromToken - nEarlier]]
    const details = { key: 'coach/undone', turn, nTurns: toToken - fromToken } as const
    return { details, fromToken: fromToken - nEarlier, toToken: toToken - nEarlier, endToken }
  }
  return null
}
