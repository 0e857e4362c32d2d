/**
 * How long a message takes to each bench and back, so that a teacher in a video call sees who is far away. Measured by the
 * server; it judges nothing.
 */

import type { LiveServer } from './connection.ts'
import type { LiveRoom } from './live-room.ts'
import type { Seat } from './room-seats.ts'
import type { Rooms } from './rooms.ts'

/** How often pages are asked; and a page that answers later than this is not slow but away. */
export type DelayTimes = { readonly askEveryMs: number; readonly answerMsMax: number }

const USUAL_TIMES: DelayTimes = { askEveryMs: 5_000, answerMsMax: 4_000 }
/** A change smaller than this is noise: the desk is not told. */
const WORTH_TELLING = { ms: 20, share: 0.2 }

/** Asks every bench; returns its stop. */
export function startMeasuringDelays(live: LiveServer, rooms: Rooms, times: DelayTimes = USUAL_TIMES): () => void {
  const timer = setInterval(() => {
    for (const room of rooms.all()) {
      if (room.closed) continue
      for (const seat of room.seats.values()) measure(live, room, seat, times)
    }
  }, times.askEveryMs)
  return () => clearInterval(timer)
}

function measure(live: LiveServer, room: LiveRoom, seat: Seat, { answerMsMax }: DelayTimes): void {
  const tell = (delayMs: number | null) => {
    if (!isWorthTelling(seat.delayMs, delayMs)) return
    seat.delayMs = delayMs
    room.changes.lanes.add(seat.id)
  }
  const connection = seat.connection === null ? undefined : live.sockets.sockets.get(seat.connection)
  // How far away somebody was says nothing once they are gone.
  if (connection === undefined) tell(null)
  if (connection === undefined || connection.data.isPretend) return
  const askedAt = performance.now()
  connection.timeout(answerMsMax).emit('delay:ask', {}, (late: Error | null) => {
    // Another device may hold the seat by now.
    if (seat.connection === connection.id) tell(late === null ? Math.round(performance.now() - askedAt) : null)
  })
}

function isWorthTelling(before: number | null, now: number | null): boolean {
  if (before === null || now === null) return before !== now
  return Math.abs(now - before) >= Math.max(WORTH_TELLING.ms, before * WORTH_TELLING.share)
}
