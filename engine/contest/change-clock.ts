/**
 * What a teacher, the clock itself or an outage does to a round: start, pause, resume, add time, end, void (rules RO1 to RO9).
 * Pure: each event carries its moment.
 */

import { err, neverHappens, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import type { EndReason, RoundClock } from './round-clock.ts'
import type { Round } from './round-state.ts'

/** What happens to a clock. All moments are milliseconds of the server's clock. */
export type ClockEvent =
  /** The signal falls at `startsAtMs`; until then it is the countdown. */
  | { readonly kind: 'started'; readonly startsAtMs: number }
  | { readonly kind: 'paused'; readonly atMs: number }
  | { readonly kind: 'resumed'; readonly atMs: number }
  | { readonly kind: 'time-added'; readonly addedMs: number }
  | { readonly kind: 'ended'; readonly atMs: number; readonly reason: EndReason }
  | { readonly kind: 'voided'; readonly atMs: number }
  /** The server was away between the two moments: nobody could play, so the clock stood still. */
  | { readonly kind: 'outage'; readonly fromMs: number; readonly toMs: number }

/**
 * @returns the round with its clock after the event, everything else as it was; refused with `contest/wrong-phase` where
 *   the phase does not allow it
 */
export function changeClock(round: Round, event: ClockEvent): Result<Round, ContestRefusal> {
  const clock = nextClock(round, event)
  if (clock === null) return err({ code: 'contest/wrong-phase', phase: round.clock.phase })
  return ok({ ...round, clock, signalAtMs: signalAfter(round, event) })
}

/** The signal keeps its moment once it has fallen; a pause or an outage that began before it puts it off. */
function signalAfter({ clock, signalAtMs }: Round, event: ClockEvent): number | null {
  if (event.kind === 'started') return event.startsAtMs
  const stood = standstill(clock, event)
  if (signalAtMs === null || stood === null || signalAtMs <= stood.fromMs) return signalAtMs
  return signalAtMs + stood.toMs - stood.fromMs
}

/** The time that the event takes out of the clock. */
function standstill(clock: RoundClock, event: ClockEvent): { fromMs: number; toMs: number } | null {
  if (event.kind === 'resumed' && clock.phase === 'paused') return { fromMs: clock.pausedAtMs, toMs: event.atMs }
  return event.kind === 'outage' && clock.phase === 'running' ? event : null
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
      if (clock.phase !== 'running') return null
      return { ...clock, phase: 'paused', pausedAtMs: notAfterEnd(clock, event.atMs) }
    case 'resumed':
      if (clock.phase !== 'paused') return null
      return { phase: 'running', ...shifted(clock, event.atMs - clock.pausedAtMs) }
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
      return clock.phase === 'running' ? { phase: 'running', ...shifted(clock, event.toMs - event.fromMs) } : null
    default:
      return neverHappens(event, 'nextClock')
  }
}

/** Shifts start and end by the time in which nobody could play; so played time needs no second account. */
function shifted(clock: { startsAtMs: number; endsAtMs: number | null }, byMs: number) {
  return { startsAtMs: clock.startsAtMs + byMs, endsAtMs: clock.endsAtMs === null ? null : clock.endsAtMs + byMs }
}

function ended(clock: RoundClock, atMs: number, reason: EndReason): RoundClock | null {
  if (clock.phase === 'paused')
    return { phase: 'ended', startsAtMs: clock.startsAtMs, endedAtMs: clock.pausedAtMs, reason }
  if (clock.phase !== 'running') return null
  return { phase: 'ended', startsAtMs: clock.startsAtMs, endedAtMs: notAfterEnd(clock, atMs), reason }
}

/** The end by the clock falls on its own moment, however late the timer rang; what comes behind it cannot play on. */
function notAfterEnd({ endsAtMs }: { endsAtMs: number | null }, atMs: number): number {
  return endsAtMs === null ? atMs : Math.min(atMs, endsAtMs)
}
