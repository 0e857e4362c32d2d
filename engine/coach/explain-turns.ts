/**
 * Explains a whole try as a row of segments, the cheapest one: a shortest way through the moments of the try.
 *
 * Source of the method: dynamic programming over a sequence, as in R. Bellman, Dynamic Programming, 1957; the cheapest
 * explanation as in C. S. Wallace and D. M. Boulton, An information measure for classification, 1968.
 */

import { turnKind } from '../cube/turns.ts'
import { assert } from '../result.ts'
import { nowhereWays, ownWays, singleTurn, undoneTurns } from './own-segments.ts'
import type { Segment } from './segment.ts'
import { type SegmentTaker, stepSegments } from './step-segments.ts'
import { puzzleKey, type TurnTrack } from './turn-track.ts'

/** @returns segments without gaps from the start to the end of what is read; none for no turns */
export function explainTurns(track: TurnTrack): Segment[] {
  const nTurns = track.turns.length
  const prices = new Float64Array(nTurns + 1).fill(Number.POSITIVE_INFINITY)
  const lastOf: (Segment | undefined)[] = new Array(nTurns + 1)
  const laterAlike = momentsAlike(track)
  prices[0] = 0
  let reached = 0
  for (let from = 0; from < nTurns; from++) {
    reached = Math.max(reached, track.standings[from].stage ?? 0)
    const isCheaper = (to: number, price: number) => prices[from] + price < prices[to]
    const take = (segment: Segment) => {
      if (!isCheaper(segment.to, segment.price)) return
      prices[segment.to] = prices[from] + segment.price
      lastOf[segment.to] = segment
    }
    const taker: SegmentTaker = { take, isCheaper }
    singleTurn(track, from, taker)
    if (turnKind(track.turns[from]) === 're-hold') continue
    undoneTurns(track, from, taker)
    ownWays(track, from, taker)
    nowhereWays(track, from, laterAlike[from], taker)
    stepSegments(track, from, reached, taker)
  }
  return backFrom(nTurns, lastOf)
}

function backFrom(end: number, lastOf: readonly (Segment | undefined)[]): Segment[] {
  const segments: Segment[] = []
  for (let moment = end; moment > 0; ) {
    const segment = lastOf[moment]
    assert(segment !== undefined, 'every moment is reached by single turns at least')
    segments.push(segment)
    moment = segment.from
  }
  return segments.reverse()
}

/** @returns by moment: the later ones at which the puzzle stands alike */
function momentsAlike({ standings }: TurnTrack): number[][] {
  const byKey = new Map<string, number[]>()
  const keys = standings.map(puzzleKey)
  keys.forEach((key, moment) => {
    const moments = byKey.get(key)
    if (moments === undefined) byKey.set(key, [moment])
    else moments.push(moment)
  })
  return keys.map((key, moment) => (byKey.get(key) ?? []).filter((other) => other > moment))
}
