/**
 * Inside a sequence several turns of one layer stand for one, and the sequence goes on.
 *
 *     R U U R'    where the book has R U2 R': "one turn would do for these 2"
 */

import { layerOf, quartersTogether, type Token } from '../turn-tokens.ts'
import { endOfRest, type SlipFinder, wantedToken } from './slip.ts'

const RUN_MIN = 2
const RUN_MAX = 4

/** Two to four tokens of one layer that do together what the book does in one. */
export const twoForOneInside: SlipFinder = (begun) => {
  const { track, pattern, at, nRight } = begun
  const wanted = wantedToken(begun, nRight)
  const fromToken = at + nRight
  if (wanted === undefined || layerOf(wanted) !== layerOf(track.tokens[fromToken])) return null
  for (let toToken = fromToken + RUN_MIN; toToken <= fromToken + RUN_MAX; toToken++) {
    if (toToken > track.tokens.length || layerOf(track.tokens[toToken - 1]) !== layerOf(wanted)) return null
    if (quartersTogether(track.tokens, fromToken, toToken) !== (wanted & 3)) continue
    // Where some of them undo each other, that is said instead.
    if (undoesItself(track.tokens.slice(fromToken, toToken))) continue
    const endToken = endOfRest(begun, toToken, nRight + 1)
    if (endToken === null) continue
    const better = pattern.turnOfToken[nRight]
    return { details: { key: 'coach/two-for-one', nTurns: toToken - fromToken, better }, fromToken, toToken, endToken }
  }
  return null
}

function undoesItself(run: readonly Token[]): boolean {
  return run.some((_, from) => run.some((__, to) => from < to && quartersTogether(run, from, to + 1) === 0))
}
