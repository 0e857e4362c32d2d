/** Builds a room again from the record, as it stood. */

import type { StoredRoom } from '../store/record.ts'
import { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import { replayRound } from './replay-round.ts'
import { AN_EMPTY_SEAT } from './room-seats.ts'

export function restoreRoom(parts: LiveParts, stored: StoredRoom): LiveRoom {
  const { roomId: id, code, teacherId, viewerKey, openedAtMs, rounds, locked } = stored
  const room = new LiveRoom(parts, { id, code, teacherId, viewerKey, openedAtMs }, stored)
  room.restore({
    seats: stored.seats.map(({ seatId, ...seat }) => ({ ...AN_EMPTY_SEAT, id: seatId, ...seat })),
    rounds,
    held: stored.held.map((each) => ({
      standing: { round: replayRound(each), nClockEvents: each.events.length },
      parShown: each.parShown,
    })),
    locked,
  })
  return room
}
