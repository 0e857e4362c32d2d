/**
 * A sequence that leads on, but with more turns than it takes: the top layer was turned without need, or a trigger was done
 * six times more, which does nothing.
 *
 *     U F A F'   at stage 4
 *     A^8        where A^2 brings the corner home
 */

import { type Turn, turnKind } from '../../cube/turns.ts'
import { goodChoicesAt } from '../advice.ts'
import { turnsLost } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'
import { sideOf } from './wrong-step.ts'

const ORDER_OF_A_TRIGGER = 6

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

export const topTurnAlone: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'turn' || segment.breaks) return null
  const token = track.tokens[track.firstToken[segment.from]]
  if (token >> 2 !== 0 || turnsLost(track, segment.from, segment.to) <= 0) return null
  return aboutSegment(segment, { key: 'coach/needless-top-turn', turn: topTurnIn(track.turns, segment.from) })
}

function topTurnIn(turns: readonly Turn[], from: number): Turn {
  return turns.slice(from).find((turn) => turnKind(turn) !== 're-hold') ?? turns[from]
}
