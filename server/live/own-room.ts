/** A teacher's own room: every message of the desk names one, and no desk reaches another's. */

import type { RoomId } from '../../engine/contest/ids.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Connection } from './connection.ts'
import type { LiveRoom } from './live-room.ts'
import type { Rooms } from './rooms.ts'

/** @returns the room, if it is one of the teacher on this connection */
export function ownRoom(connection: Connection, rooms: Rooms, roomId: RoomId): Result<LiveRoom, Refusal> {
  const { who } = connection.data
  if (who.role !== 'teacher') return err({ code: 'desk/not-signed-in' })
  return rooms.ofTeacher(who.teacherId, roomId)
}

/** @returns a function that finds the teacher's room, acts on it, and answers without a value */
export function inOwnRoom(rooms: Rooms) {
  return async (
    connection: Connection,
    roomId: RoomId,
    act: (room: LiveRoom) => Promise<Result<unknown, Refusal>>,
  ): Promise<Result<Record<never, never>, Refusal>> => {
    const room = ownRoom(connection, rooms, roomId)
    if (!room.ok) return room
    const done = await act(room.value)
    return done.ok ? ok({}) : done
  }
}
