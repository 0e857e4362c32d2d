/**
 * One turn inside a sequence is another one: the layer was turned the other way round, or half for a quarter, or it was
 * another layer.
 *
 *     F U R U' R F'     where the book has F U R U' R' F': "R should be R'"
 *     F U L U' R' F'    "L was turned in place of R"
 */

import { layerOf, quartersOf, quartersTogether, type Token } from '../turn-tokens.ts'
import { type Begun, endOfRest, type Slip, type SlipFinder, wantedToken } from './slip.ts'

/** One turn in place of another; the rest is as in the book. */
export const wrongTurn: SlipFinder = (begun) => {
  const { track, at, nRight } = begun
  const fromToken = at + nRight
  const wanted = wantedToken(begun, nRight)
  const done = track.tokens[fromToken]
  if (wanted === undefined || done === undefined) return null
  const isSameLayer = layerOf(done) === layerOf(wanted)
  if (!isSameLayer || quartersOf(done) !== quartersOf(wanted)) {
    const endToken = endOfRest(begun, fromToken + 1, nRight + 1)
    if (endToken !== null) return slip(begun, keyFor(done, wanted), fromToken + 1, endToken)
  }
  return isSameLayer ? doneTwice(begun, wanted) : null
}

/** The same quarter turn made twice is half a turn too. */
function doneTwice(begun: Begun, wanted: Token): Slip | null {
  const { track, at, nRight } = begun
  const [fromToken, toToken] = [at + nRight, at + nRight + 2]
  const isOneLayer = toToken <= track.tokens.length && layerOf(track.tokens[toToken - 1]) === layerOf(wanted)
  if (!isOneLayer || quartersTogether(track.tokens, fromToken, toToken) !== 2) return null
  const endToken = endOfRest(begun, toToken, nRight + 1)
  return endToken === null ? null : slip(begun, 'coach/wrong-amount', toToken, endToken)
}

type TurnKey = 'coach/wrong-way' | 'coach/wrong-amount' | 'coach/wrong-layer'

function keyFor(done: Token, wanted: Token): TurnKey {
  if (layerOf(done) !== layerOf(wanted)) return 'coach/wrong-layer'
  return quartersOf(done) + quartersOf(wanted) === 4 ? 'coach/wrong-way' : 'coach/wrong-amount'
}

function slip({ track, pattern, at, nRight }: Begun, key: TurnKey, toToken: number, endToken: number): Slip {
  const fromToken = at + nRight
  const turn = track.turns[track.turnOfToken[fromToken]]
  return { details: { key, turn, shouldBe: pattern.turnOfToken[nRight] }, fromToken, toToken, endToken }
}
