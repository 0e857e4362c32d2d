/** The names of a class leave the record within a day after its room was closed. */

import type { LiveParts } from './parts.ts'

const KEPT_MS = 20 * 3_600_000
const LOOK_EVERY_MS = 3_600_000

/** Forgets at once and then every hour; returns the stop. */
export function startForgettingNames({ record, nowMs, log }: LiveParts): () => void {
  const forget = () => {
    record
      .write({ kind: 'names-forgotten', closedBeforeMs: nowMs() - KEPT_MS })
      .catch((fault) => log.warn({ reason: String(fault) }, 'names of closed rooms were not forgotten'))
  }
  forget()
  const timer = setInterval(forget, LOOK_EVERY_MS)
  return () => clearInterval(timer)
}
