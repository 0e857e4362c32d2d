/**
 * How long a message takes to each bench and back, so that a teacher in a video call sees who is far away. Measured by the
 * server; it judges nothing.
 */

import type { LiveServer } from './connection.ts'
import type { Rooms } from './rooms.ts'

const ASK_EVERY_MS = 5_000
/** A page that answers later than this is not slow but away. */
const ANSWER_MS_MAX = 4_000
/** A change smaller than this is noise: the desk is not told. */
const WORTH_TELLING = { ms: 20, share: 0.2 }

/** Asks every bench; returns its stop. */
export function startMeasuringDelays(live: LiveServer, rooms: Rooms, everyMs = ASK_EVERY_MS): () => void {
  const timer = setInterval(() => {
    for (const room of rooms.all()) {
      if (room.closed) continue
      for (const seat of room.seats.values()) {
        const connection = seat.connection === null ? undefined : live.sockets.sockets.get(seat.connection)
        if (connection === undefined || connection.data.isPretend) continue
        const askedAt = performance.now()
        connection.timeout(ANSWER_MS_MAX).emit('delay:ask', {}, (late: Error | null) => {
          const delayMs = late === null ? Math.round(performance.now() - askedAt) : null
          if (!isWorthTelling(seat.delayMs, delayMs)) return
          seat.delayMs = delayMs
          room.changes.lanes.add(seat.id)
        })
      }
    }
  }, everyMs)
  return () => clearInterval(timer)
}

function isWorthTelling(before: number | null, now: number | null): boolean {
  if (before === null || now === null) return before !== now
  return Math.abs(now - before) >= Math.max(WORTH_TELLING.ms, before * WORTH_TELLING.share)
}
