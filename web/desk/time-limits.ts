/** The lengths of the clock that are offered, and how a teacher's own is read. */

import { ROUND_TIME_MS_MAX, ROUND_TIME_MS_MIN } from '../../engine/contest/limits.ts'

export const MINUTE_MS = 60_000
export const OFFERED_MINUTES = [1, 2, 3, 5, 10] as const

export function isOffered(timeLimitMs: number): boolean {
  return OFFERED_MINUTES.some((minutes) => minutes * MINUTE_MS === timeLimitMs)
}

/** Reads typed minutes, with a point or a comma, and brings them within the limits. Null when it is no number. */
export function readMinutes(typed: string): number | null {
  const minutes = Number(typed.trim().replace(',', '.'))
  if (typed.trim() === '' || !Number.isFinite(minutes)) return null
  const wholeSeconds = Math.round(minutes * 60) * 1000
  return Math.min(Math.max(wholeSeconds, ROUND_TIME_MS_MIN), ROUND_TIME_MS_MAX)
}

export function formatMinutes(timeLimitMs: number): string {
  return String(Math.round((timeLimitMs / MINUTE_MS) * 100) / 100)
}
