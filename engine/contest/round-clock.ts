/**
 * The clock of a round as a tagged union: each phase holds only what exists then.
 * All moments are milliseconds of the server's clock. Pauses move the start and the end along, so that
 * `now - startsAtMs` is always the time that was really played.
 *
 *   ready --start--> running <--pause/resume--> paused
 *                       |  end, time, void         |
 *                       +------> ended / void <----+
 */

import { neverHappens } from '../result.ts'

/** Who ended a round: the clock itself, or the teacher before it. */
export type EndReason = 'time' | 'teacher'

/** The five phases. */
export type RoundClock =
  /** Drawn, but the signal has not been given. */
  | { readonly phase: 'ready' }
  /** The signal falls, or fell, at `startsAtMs`: until then it is the countdown. */
  | { readonly phase: 'running'; readonly startsAtMs: number; readonly endsAtMs: number | null }
  | {
      readonly phase: 'paused'
      readonly startsAtMs: number
      readonly endsAtMs: number | null
      readonly pausedAtMs: number
    }
  | { readonly phase: 'ended'; readonly startsAtMs: number; readonly endedAtMs: number; readonly reason: EndReason }
  /** Struck out by the teacher: it counts for nobody. */
  | { readonly phase: 'void'; readonly atMs: number }

/** Played milliseconds at `nowMs`: 0 before the signal, standing still while paused and after the end. */
export function playedMs(clock: RoundClock, nowMs: number): number {
  switch (clock.phase) {
    case 'ready':
    case 'void':
      return 0
    case 'running':
      return Math.max(0, Math.min(nowMs, clock.endsAtMs ?? nowMs) - clock.startsAtMs)
    case 'paused':
      return Math.max(0, clock.pausedAtMs - clock.startsAtMs)
    case 'ended':
      return Math.max(0, clock.endedAtMs - clock.startsAtMs)
    default:
      return neverHappens(clock, 'playedMs')
  }
}

/** Milliseconds left at `nowMs`, never below 0; null when the round has no clock or does not run. */
export function leftMs(clock: RoundClock, nowMs: number): number | null {
  if (clock.phase === 'running') {
    if (clock.endsAtMs === null) return null
    return Math.max(0, clock.endsAtMs - Math.max(nowMs, clock.startsAtMs))
  }
  if (clock.phase === 'paused') {
    if (clock.endsAtMs === null) return null
    return Math.max(0, clock.endsAtMs - Math.max(clock.pausedAtMs, clock.startsAtMs))
  }
  return clock.phase === 'ended' ? 0 : null
}

/** Milliseconds until the signal; 0 once it has been given. */
export function countdownMs(clock: RoundClock, nowMs: number): number {
  if (clock.phase !== 'running') return 0
  return Math.max(0, clock.startsAtMs - nowMs)
}

/** Whether the round still decides something: it may be played, paused, ended or voided. */
export function isOpen(clock: RoundClock): boolean {
  return clock.phase === 'ready' || clock.phase === 'running' || clock.phase === 'paused'
}
