/** What the desk says: rooms, settings, seats, rounds. Every message names its room, and the room must be the teacher's. */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoomId, RoundId } from '../../engine/contest/ids.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { become } from './change-role.ts'
import type { Connection, LiveServer } from './connection.ts'
import type { Handlers } from './gateway.ts'
import type { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import type { PretendClasses } from './pretend/pretend-classes.ts'
import type { Rooms } from './rooms.ts'
import { sendAway } from './seat-messages.ts'
import { deskViewFor } from './view-for.ts'

type DeskMessages = Omit<
  Handlers,
  'clock:ask' | 'seat:join' | 'seat:resume' | 'seat:leave' | 'turns:send' | 'help:ask' | 'viewer:enter' | 'viewer:again'
>

export function deskMessages(live: LiveServer, rooms: Rooms, pretend: PretendClasses, parts: LiveParts): DeskMessages {
  const viewOf = (room: LiveRoom) => deskViewFor(room, parts.addresses(), parts.record.saving)

  /** Finds the teacher's room, acts on it, and answers without a value. */
  async function inRoom(
    connection: Connection,
    roomId: RoomId,
    act: (room: LiveRoom) => Promise<Result<unknown, Refusal>>,
  ): Promise<Result<Record<never, never>, Refusal>> {
    const room = ownRoom(connection, rooms, roomId)
    if (!room.ok) return room
    const done = await act(room.value)
    return done.ok ? ok({}) : done
  }

  function changeClock(
    connection: Connection,
    message: { roomId: RoomId; roundId: RoundId },
    event: (nowMs: number) => ClockEvent,
  ) {
    return inRoom(connection, message.roomId, (room) => room.changeClock(message.roundId, event(parts.nowMs())))
  }

  function watch(connection: Connection, room: LiveRoom): void {
    const { who } = connection.data
    if (who.role !== 'teacher') return
    become(connection, { ...who, watching: room })
  }

  return {
    'desk:enter'(connection) {
      const { teacherId } = connection.data
      if (teacherId === null) return err({ code: 'desk/not-signed-in' })
      become(connection, { role: 'teacher', teacherId, watching: null })
      return ok({ home: rooms.homeOf(teacherId) })
    },

    async 'room:open'(connection) {
      const { teacherId } = connection.data
      if (teacherId === null) return err({ code: 'desk/not-signed-in' })
      const opened = await rooms.open(teacherId)
      if (!opened.ok) return opened
      watch(connection, opened.value)
      return ok({ desk: viewOf(opened.value) })
    },

    'room:watch'(connection, message) {
      const room = ownRoom(connection, rooms, message.roomId)
      if (!room.ok) return room
      watch(connection, room.value)
      return ok({ desk: viewOf(room.value) })
    },

    'room:set': (connection, message) => inRoom(connection, message.roomId, (room) => room.set(message.settings)),
    'room:lock': (connection, message) => inRoom(connection, message.roomId, (room) => room.lock(message.locked)),

    'room:close': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        const closed = await room.close()
        if (!closed.ok) return closed
        pretend.sendHome(room)
        for (const seat of room.seats.values()) sendAway(live, seat.connection, 'room-closed')
        return closed
      }),

    'seat:remove': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        const removed = await room.remove(message.seatId)
        if (removed.ok) sendAway(live, removed.value.connection, 'removed')
        return removed
      }),

    'seat:rename': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.rename(message.seatId, message.name)),

    'pretend:seat': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        if (message.seated) return pretend.seat(room)
        return pretend.unseat(room)
      }),

    async 'round:start'(connection, message) {
      const room = ownRoom(connection, rooms, message.roomId)
      if (!room.ok) return room
      const started = await room.value.start(message.number)
      return started.ok ? ok({ roundId: started.value }) : started
    },

    'round:pause': (connection, message) => changeClock(connection, message, (atMs) => ({ kind: 'paused', atMs })),
    'round:resume': (connection, message) => changeClock(connection, message, (atMs) => ({ kind: 'resumed', atMs })),
    'round:add-time': (connection, message) =>
      changeClock(connection, message, () => ({ kind: 'time-added', addedMs: message.addedMs })),
    'round:show-par': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => room.showPar(message.roundId, message.shown)),

    'round:end': (connection, message) =>
      changeClock(connection, message, (atMs) => ({ kind: 'ended', atMs, reason: 'teacher' })),
    'round:void': (connection, message) => changeClock(connection, message, (atMs) => ({ kind: 'voided', atMs })),
  }
}

function ownRoom(connection: Connection, rooms: Rooms, roomId: RoomId): Result<LiveRoom, Refusal> {
  const { who } = connection.data
  if (who.role !== 'teacher') return err({ code: 'desk/not-signed-in' })
  return rooms.ofTeacher(who.teacherId, roomId)
}
