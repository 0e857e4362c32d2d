/**
 * Which face the bench shows: one pure decision, so that every state has a face and no two are mixed.
 * Being without a connection is no face of its own: turning goes on, and a line says so.
 */

import { countdownMs, leftMs } from '../../engine/contest/round-clock.ts'
import { neverHappens } from '../../engine/result.ts'
import type { BenchView, RoundView } from '../../engine/wire/views.ts'
import type { BenchLive, LocalTry } from '../live/bench-live.ts'

export type PlayPhase =
  /** The start is here but not shown; `seconds` are said aloud. */
  | { readonly phase: 'countdown'; readonly seconds: number }
  | { readonly phase: 'turning' }
  | { readonly phase: 'paused' }
  /** We see the goal, the server has not said so yet. */
  | { readonly phase: 'checking' }
  | { readonly phase: 'reached' }
  /** The clock stands at 0, the end has not been told yet. */
  | { readonly phase: 'time-up' }

export type BenchFace =
  | { readonly kind: 'connecting' }
  | { readonly kind: 'out-of-date' }
  | { readonly kind: 'gone'; readonly reason: 'taken-over' | 'removed' | 'room-closed' }
  | { readonly kind: 'waiting'; readonly view: BenchView }
  | { readonly kind: 'voided'; readonly view: BenchView }
  | { readonly kind: 'ended'; readonly view: BenchView; readonly round: RoundView }
  | {
      readonly kind: 'playing'
      readonly view: BenchView
      readonly round: RoundView
      readonly mine: LocalTry
      readonly play: PlayPhase
    }

export function benchFace(live: BenchLive, nowMs: number): BenchFace {
  if (live.outOfDate) return { kind: 'out-of-date' }
  if (live.gone !== null) return { kind: 'gone', reason: live.gone }
  const { view, mine } = live
  if (view === null) return { kind: 'connecting' }
  if (view.room.closed) return { kind: 'gone', reason: 'room-closed' }
  const { round } = view
  if (round === null) return { kind: 'waiting', view }
  switch (round.clock.phase) {
    case 'ready':
      return { kind: 'waiting', view }
    case 'void':
      return { kind: 'voided', view }
    case 'ended': {
      // Who came in after the end has no lane: that round was not theirs.
      const tookPart = view.lanes.some((lane) => lane.seatId === view.me.seatId)
      return tookPart ? { kind: 'ended', view, round } : { kind: 'waiting', view }
    }
    case 'running':
    case 'paused':
      if (mine === null) return { kind: 'waiting', view }
      return { kind: 'playing', view, round, mine, play: playPhase(round, mine, nowMs) }
    default:
      return neverHappens(round.clock, 'benchFace')
  }
}

function playPhase({ clock }: RoundView, mine: LocalTry, nowMs: number): PlayPhase {
  const untilSignalMs = countdownMs(clock, nowMs)
  if (untilSignalMs > 0) return { phase: 'countdown', seconds: Math.ceil(untilSignalMs / 1000) }
  if (clock.phase === 'paused') {
    // Paused during the countdown: the start stays hidden, or the pause would be time to think.
    if (clock.pausedAtMs < clock.startsAtMs) {
      return { phase: 'countdown', seconds: Math.ceil((clock.startsAtMs - clock.pausedAtMs) / 1000) }
    }
    return { phase: mine.reached === null ? 'paused' : 'reached' }
  }
  if (mine.reached !== null) return { phase: 'reached' }
  if (mine.reachedHere) return { phase: 'checking' }
  return leftMs(clock, nowMs) === 0 ? { phase: 'time-up' } : { phase: 'turning' }
}
