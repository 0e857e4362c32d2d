/** What may have been done at a moment besides sequences of the book: ways of one's own, turns undone, ways round and round. */

import { turnKind } from '../cube/turns.ts'
import { isPieceStage } from '../method/piece-cases.ts'
import { PRICE, type Segment } from './segment.ts'
import type { SegmentTaker } from './step-segments.ts'
import { layerOf, quartersTogether } from './turn-tokens.ts'
import { countBetween, momentBefore, type Standing, type TurnTrack, turnsLost } from './turn-track.ts'

/** Longest way of one's own that is taken as one, in entries of the row. */
const OWN_WAY_MAX = 40
const UNDONE_TOKENS = { least: 2, most: 4 } as const
const NOWHERE_TOKENS_MIN = 3

/** The turn by itself, when nothing explains it. */
export function singleTurn(track: TurnTrack, from: number, taker: SegmentTaker): void {
  taker.take(singleSegment(track, from))
}

function singleSegment(track: TurnTrack, from: number): Segment {
  const to = from + 1
  if (turnKind(track.turns[from]) === 're-hold') return { kind: 're-hold', from, to, price: 0 }
  const [before, after] = [track.standings[from], track.standings[to]]
  const isTopTurn = before.level <= after.level && before.stage !== null && before.stage > 3
  if (isTopTurn && turnsLost(track, from, to) <= 0) return { kind: 'top-turn', from, to, price: PRICE.leadsOn }
  const breaks = after.level < before.level
  return { kind: 'turn', from, to, price: breaks ? PRICE.breakingTurn : PRICE.turn, breaks }
}

/** Turns of one layer that undo each other at once. */
export function undoneTurns(track: TurnTrack, from: number, taker: SegmentTaker): void {
  const first = track.firstToken[from]
  for (let end = first + 1; end < track.tokens.length && end < first + UNDONE_TOKENS.most; end++) {
    if (layerOf(track.tokens[end]) !== layerOf(track.tokens[first])) return
    const to = momentBefore(track, end + 1)
    if (to !== null && quartersTogether(track.tokens, first, end + 1) === 0) {
      taker.take({ kind: 'undone', from, to, price: PRICE.undone })
    }
  }
}

/** @param later moments after `from` at which the puzzle stands as it does there */
export function nowhereWays(track: TurnTrack, from: number, later: readonly number[], taker: SegmentTaker): void {
  for (const to of later) {
    const nTokens = track.firstToken[to] - track.firstToken[from]
    if (nTokens < NOWHERE_TOKENS_MIN) continue
    taker.take({ kind: 'nowhere', from, to, price: PRICE.nowhere + PRICE.nowhereTurn * nTokens })
  }
}

/** Turns of any kind after which the lesson has less to do. */
export function ownWays(track: TurnTrack, from: number, taker: SegmentTaker): void {
  const before = track.standings[from]
  const last = Math.min(track.turns.length, from + OWN_WAY_MAX)
  for (let to = from + 1; to <= last; to++) {
    if (!isFurther(before, track.standings[to])) continue
    const nTurns = countBetween(track, from, to)
    if (!taker.isCheaper(to, PRICE.ownWay + PRICE.ownTurn * nTurns)) continue
    const isLong = turnsLost(track, from, to) > 0
    const price = isLong ? PRICE.longWay + PRICE.longTurn * nTurns : PRICE.ownWay + PRICE.ownTurn * nTurns
    taker.take({ kind: 'own-way', from, to, price, isLong })
  }
}

function isFurther(before: Standing, after: Standing): boolean {
  if (after.level !== before.level) return after.level > before.level
  if (before.stage === null) return false
  const { left } = before
  return isPieceStage(before.stage) ? after.left.nTurns < left.nTurns : after.left.nSequences < left.nSequences
}
