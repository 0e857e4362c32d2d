/**
 * What a teacher, the clock itself or an outage does to a round: start, pause, resume, add time, end, void (rules RO1 to RO9).
 * Pure: each event carries its moment.
 */

import { err, neverHappens, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import type { EndReason, RoundClock } from './round-clock.ts'
import type { Round } from './round-state.ts'

export type ClockEvent =
  /** The signal falls at `startsAtMs`. */
  | { readonly kind: 'started'; readonly startsAtMs: number }
  | { readonly kind: 'paused'; readonly atMs: number }
  | { readonly kind: 'resumed'; readonly atMs: number }
  | { readonly kind: 'time-added'; readonly addedMs: number }
  | { readonly kind: 'ended'; readonly atMs: number; readonly reason: EndReason }
  | { readonly kind: 'voided'; readonly atMs: number }
  /** The server was away between the two moments: nobody could play, so the clock stood still. */
  | { readonly kind: 'outage'; readonly fromMs: number; readonly toMs: number }

export function changeClock(round: Round, event: ClockEvent): Result<Round, ContestRefusal> {
  const clock = nextClock(round, event)
  return clock === null ? err({ code: 'contest/wrong-phase', phase: round.clock.phase }) : ok({ ...round, clock })
}

/** The clock after the event, or null when this phase does not allow it. */
function nextClock(round: Round, event: ClockEvent): RoundClock | null {
  const { clock, settings } = round
  switch (event.kind) {
    case 'started': {
      if (clock.phase !== 'ready') return null
      const endsAtMs = settings.timeLimitMs === null ? null : event.startsAtMs + settings.timeLimitMs
      return { phase: 'running', startsAtMs: event.startsAtMs, endsAtMs }
    }
    case 'paused':
      return clock.phase === 'running' ? { ...clock, phase: 'paused', pausedAtMs: event.atMs } : null
    case 'resumed':
      if (clock.phase !== 'paused') return null
      return { phase: 'running', ...moved(clock, event.atMs - clock.pausedAtMs) }
    case 'time-added':
      if ((clock.phase !== 'running' && clock.phase !== 'paused') || clock.endsAtMs === null) return null
      return { ...clock, endsAtMs: clock.endsAtMs + event.addedMs }
    case 'ended':
      return ended(clock, event.atMs, event.reason)
    case 'voided':
      return clock.phase === 'void' ? null : { phase: 'void', atMs: event.atMs }
    case 'outage':
      // A paused clock stands still anyway.
      if (clock.phase === 'paused') return clock
      return clock.phase === 'running' ? { phase: 'running', ...moved(clock, event.toMs - event.fromMs) } : null
    default:
      return neverHappens(event, 'nextClock')
  }
}

/** Moves start and end by the time in which nobody could play; so played time needs no second account. */
function moved(clock: { startsAtMs: number; endsAtMs: number | null }, byMs: number) {
  return { startsAtMs: clock.startsAtMs + byMs, endsAtMs: clock.endsAtMs === null ? null : clock.endsAtMs + byMs }
}

function ended(clock: RoundClock, atMs: number, reason: EndReason): RoundClock | null {
  if (clock.phase === 'paused')
    return { phase: 'ended', startsAtMs: clock.startsAtMs, endedAtMs: clock.pausedAtMs, reason }
  if (clock.phase !== 'running') return null
  // The end by the clock falls on its own moment, however late the timer rang.
  const endedAtMs = clock.endsAtMs === null ? atMs : Math.min(atMs, clock.endsAtMs)
  return { phase: 'ended', startsAtMs: clock.startsAtMs, endedAtMs, reason }
}
