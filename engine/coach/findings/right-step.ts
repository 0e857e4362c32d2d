/**
 * A sequence that leads on, but with more turns than it takes: the top layer was turned without need, or a trigger was done
 * six times more, which does nothing.
 *
 *     U F A F'   at stage 4
 *     A^8        where A^2 brings the corner home
 */

import { faceIndex } from '../../cube/faces.ts'
import { type Turn, turnKind } from '../../cube/turns.ts'
import { goodChoicesAt } from '../advice.ts'
import { layerOf } from '../turn-tokens.ts'
import { isMending, turnsLost } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'
import { sideOf } from './wrong-step.ts'

const ORDER_OF_A_TRIGGER = 6
const TOP_LAYER = faceIndex('U')
const NO_TOKEN = -1

/** A trigger that came more than six times, six of which did nothing. */
export const roundAgain: Finder = ({ segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'sequence' || !segment.leadsOn) return null
  const { done } = segment
  const side = sideOf(done)
  if (side === null || done.nTimes <= ORDER_OF_A_TRIGGER) return null
  return aboutSegment(segment, {
    key: 'coach/too-often',
    side,
    nDone: done.nTimes,
    nAdvised: done.nTimes - ORDER_OF_A_TRIGGER,
  })
}

/** At stages 4 to 6: a top turn in front of a sequence that would have done without. */
export const topTurnBefore: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'sequence' || !segment.leadsOn) return null
  const { done } = segment
  // At stages 1 to 3 a top turn may be for another piece.
  if (done.pattern.stage <= 3 || done.nTops !== 1 || turnsLost(track, segment.from, segment.to) <= 0) return null
  const isNeeded = goodChoicesAt(track, segment.from).every(({ topQuarters }) => topQuarters !== 0)
  if (isNeeded) return null
  const turn = topTurnIn(track.turns, segment.from)
  return { ...aboutSegment(segment, { key: 'coach/needless-top-turn', turn }), to: segment.from + 1 }
}

/** A top turn that stands alone and leads away. */
export const topTurnAlone: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'turn' || segment.breaks || isMending(track, segment.from)) return null
  const at = track.firstToken[segment.from]
  const isTop = layerOf(track.tokens[at]) === TOP_LAYER
  // Two turns of the top layer in a row are told as two for one.
  const isInRow = [at - 1, at + 1].some((beside) => layerOf(track.tokens[beside] ?? NO_TOKEN) === TOP_LAYER)
  if (!isTop || isInRow || turnsLost(track, segment.from, segment.to) <= 0) return null
  return aboutSegment(segment, { key: 'coach/needless-top-turn', turn: topTurnIn(track.turns, segment.from) })
}

function topTurnIn(turns: readonly Turn[], from: number): Turn {
  return turns.slice(from).find((turn) => turnKind(turn) !== 're-hold') ?? turns[from]
}
