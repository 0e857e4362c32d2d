/**
 * Two single turns of one sequence went otherwise, and every other turn is as the book has it: each was another turn, was
 * left out, or was made twice.
 *
 *     F U R' U' R' F     where the book has F U R U' R' F': "R' for R and F for F'"
 *
 * Two slips explain more than one does, so they are believed only where the sequence is long enough to be known by its other
 * turns, and where no other two slips explain the same turns as well.
 *
 * Source of the method: the alignment of two sequences with few differences, as in V. I. Levenshtein, Binary codes capable
 * of correcting deletions, insertions and reversals, 1966.
 */

import { FACES, faceIndex, oppositeFace } from '../../cube/faces.ts'
import type { SlippedTurn } from '../note.ts'
import { layerOf, quartersOf, type Token } from '../turn-tokens.ts'
import { type Begun, nAlike, type Slip, wantedToken } from './slip.ts'

const TOP_LAYER = faceIndex('U')

const N_SLIPS = 2

/** So many turns are as in the book for the sequence to be known by them. */
const RIGHT_MIN = 4

/** What follows a gap may look like what is missing, so that a slip is seen some turns late. */
const SEEN_LATE_MAX = 2

/** How unlikely a slip is beside the others. Hands are taken for each other sooner than neighbours. */
const ODDS = { sameLayer: 1, leftOut: 1, twice: 1, oppositeLayer: 1.2, otherLayer: 1.5 }

type Step = {
  readonly slip: Omit<SlippedTurn, 'atTurn' | 'turn' | 'shouldBe'> & { readonly token: number; readonly wanted: number }
  readonly odds: number
  /** Where try and sequence go on, in tokens. */
  readonly token: number
  readonly wanted: number
}

type Pair = { readonly first: Step; readonly second: Step; readonly endToken: number }

/** The two slips that explain the turns, if there are two and no others do. */
export function findTwoSlips(begun: Begun): Slip | null {
  const { pattern } = begun
  if (pattern.tokens.length < RIGHT_MIN + N_SLIPS || !hasThirdRight(begun)) return null
  const pairs = stepsFrom(begun, 0, 0).flatMap((first) =>
    stepsFrom(begun, first.token, first.wanted).flatMap((second): Pair[] => {
      const endToken = endOf(begun, second)
      return endToken === null ? [] : [{ first, second, endToken }]
    }),
  )
  const [best, next] = pairs.sort((a, b) => oddsOf(a) - oddsOf(b))
  if (best === undefined || (next !== undefined && oddsOf(next) - oddsOf(best) < CLEARLY)) return null
  return slipOf(begun, best)
}

const CLEARLY = 0.1

/**
 * Optimisation: two slips leave at least one third of the sequence as it is, two turns earlier or later at most. What lacks
 * that need not be looked into.
 */
function hasThirdRight({ track, pattern: { tokens }, held, at }: Begun): boolean {
  return [0, 1, 2].some((third) => {
    const from = Math.floor((tokens.length * third) / 3)
    const wanted = tokens.slice(0, Math.floor((tokens.length * (third + 1)) / 3))
    return [-2, -1, 0, 1, 2].some((shift) => {
      const start = at + from + shift
      return start >= 0 && nAlike(track, start, wanted, from, held) === wanted.length - from
    })
  })
}

function oddsOf({ first, second }: Pair): number {
  return first.odds + second.odds
}

/** Every slip that may come next, where from `token` on the turns are those of the sequence from `wanted` on. */
function stepsFrom(begun: Begun, token: number, wanted: number): Step[] {
  const { track, pattern, held, at } = begun
  const nRight = nAlike(track, at + token, pattern.tokens, wanted, held)
  return Array.from({ length: Math.min(SEEN_LATE_MAX, nRight) + 1 }, (_, late) => nRight - late).flatMap((n) =>
    stepsAt(begun, token + n, wanted + n),
  )
}

function stepsAt(begun: Begun, token: number, wanted: number): Step[] {
  const { track, pattern, at } = begun
  const shouldBe = wantedToken(begun, wanted)
  const done = track.tokens[at + token]
  const steps: Step[] = []
  // A turn of the top layer at the very beginning is told as what it also is: the top turn before the sequence.
  if (wanted === 0 && layerOf(pattern.tokens[0]) === TOP_LAYER) return steps
  if (shouldBe !== undefined && done !== undefined && done !== shouldBe) {
    steps.push({
      slip: { kind: 'instead', token, wanted },
      odds: oddsOfInstead(done, shouldBe),
      token: token + 1,
      wanted: wanted + 1,
    })
  }
  if (shouldBe !== undefined) {
    steps.push({ slip: { kind: 'leftOut', token, wanted }, odds: ODDS.leftOut, token, wanted: wanted + 1 })
  }
  // Half a turn twice is none.
  const before = track.tokens[at + token - 1]
  if (wanted > 0 && token > 0 && done !== undefined && done === before && quartersOf(done) !== 2) {
    const slip = { kind: 'twice', token, wanted: wanted - 1 } as const
    steps.push({ slip, odds: ODDS.twice, token: token + 1, wanted })
  }
  return steps
}

function oddsOfInstead(done: Token, shouldBe: Token): number {
  const [layer, meant] = [layerOf(done), layerOf(shouldBe)]
  if (layer === meant) return ODDS.sameLayer
  return FACES[layer] === oppositeFace(FACES[meant]) ? ODDS.oppositeLayer : ODDS.otherLayer
}

/** @returns one behind the last token when the rest is as in the book; what ends with a gap is unfinished, and told so */
function endOf({ track, pattern, held, at }: Begun, { slip, token, wanted }: Step): number | null {
  const nLeft = pattern.tokens.length - wanted
  if (nLeft === 0 && slip.kind === 'leftOut') return null
  return nAlike(track, at + token, pattern.tokens, wanted, held) === nLeft ? at + token + nLeft : null
}

function slipOf({ track, pattern, at }: Begun, { first, second, endToken }: Pair): Slip {
  const turnAt = (token: number) => track.turnOfToken[at + token]
  const slipped = ({ slip: { kind, token, wanted } }: Step): SlippedTurn => ({
    kind,
    turn: kind === 'leftOut' ? null : track.turns[turnAt(token)],
    shouldBe: pattern.turnOfToken[wanted],
    atTurn: turnAt(token),
  })
  return {
    details: { key: 'coach/two-slips', slips: [slipped(first), slipped(second)] },
    fromToken: at + Math.max(0, first.slip.token - (first.slip.kind === 'twice' ? 1 : 0)),
    toToken: at + second.slip.token + (second.slip.kind === 'leftOut' ? 0 : 1),
    endToken,
  }
}
