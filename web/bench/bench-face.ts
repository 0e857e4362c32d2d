/**
 * Which face the bench shows: one pure decision, so that every state has a face and no two are mixed.
 * Being without a connection is no face of its own: turning goes on, and a line says so.
 */

import { countdownMs, leftMs } from '../../engine/contest/round-clock.ts'
import { neverHappens } from '../../engine/result.ts'
import type { BenchView, RoundView } from '../../engine/wire/views.ts'
import type { BenchLive, LocalTry } from '../live/bench-live.ts'
import { cubeInHand, isCubeReady, type OwnChoices } from './own-choices.ts'

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
  /** In a take-home room: which of its rounds to play. */
  | { readonly kind: 'rounds'; readonly view: BenchView }
  /** The round leaves it open: a real cube or the one on the screen. */
  | { readonly kind: 'which-cube'; readonly view: BenchView; readonly round: RoundView }
  /** A real cube is being brought to the start. */
  | { readonly kind: 'setting-up'; readonly view: BenchView; readonly round: RoundView }
  /** It stands there, and the signal has not been given. */
  | { readonly kind: 'set-up'; readonly view: BenchView; readonly round: RoundView }
  | { readonly kind: 'voided'; readonly view: BenchView }
  | { readonly kind: 'ended'; readonly view: BenchView; readonly round: RoundView }
  | {
      /** `writing`: on a real cube, and the turns are written down. */
      readonly kind: 'playing' | 'writing'
      readonly view: BenchView
      readonly round: RoundView
      readonly mine: LocalTry
      readonly play: PlayPhase
    }

/** @param own what this child has chosen @param nowMs the server's clock */
export function benchFace(live: BenchLive, own: OwnChoices, nowMs: number): BenchFace {
  if (live.outOfDate) return { kind: 'out-of-date' }
  if (live.gone !== null) return { kind: 'gone', reason: live.gone }
  const { view, mine } = live
  if (view === null) return { kind: 'connecting' }
  if (view.room.closed) return { kind: 'gone', reason: 'room-closed' }
  const { round } = view
  // Where the server has moved on to another round than the one that was picked, the child picks again.
  if (view.room.deadlineMs !== null && own.pickedRound !== (round?.id ?? '')) return { kind: 'rounds', view }
  if (round === null) return { kind: 'waiting', view }
  switch (round.clock.phase) {
    case 'ready':
      return faceOfHand(view, round, mine, own) ?? { kind: 'waiting', view }
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
      return (
        faceOfHand(view, round, mine, own) ?? {
          kind: cubeInHand(round.settings, own, view, mine) === 'own' ? 'writing' : 'playing',
          view,
          round,
          mine,
          play: playPhase(round, mine, nowMs),
        }
      )
    default:
      return neverHappens(round.clock, 'benchFace')
  }
}

/** What has to be settled before the round can be played; null when all is, or when it is played on the screen. */
function faceOfHand(view: BenchView, round: RoundView, mine: LocalTry | null, own: OwnChoices): BenchFace | null {
  const cube = cubeInHand(round.settings, own, view, mine)
  if (cube === null) return { kind: 'which-cube', view, round }
  if (cube === 'screen') return null
  if (!isCubeReady(own, view, mine)) return { kind: 'setting-up', view, round }
  return round.clock.phase === 'ready' ? { kind: 'set-up', view, round } : null
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
