/** What the desk says: rooms, settings, seats, rounds. Every message names its room, and the room must be the teacher's. */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoomId, RoundId } from '../../engine/contest/ids.ts'
import { err, ok } from '../../engine/result.ts'
import { become, leaveDoor } from './change-role.ts'
import type { Connection, LiveServer } from './connection.ts'
import type { Handlers } from './gateway.ts'
import type { LiveRoom } from './live-room.ts'
import { inOwnRoom, ownRoom } from './own-room.ts'
import type { LiveParts } from './parts.ts'
import type { PretendClasses } from './pretend/pretend-classes.ts'
import type { AnsweredKnock } from './room-entrance.ts'
import type { Rooms } from './rooms.ts'
import { sendAway, takeSeat } from './seat-messages.ts'
import { benchViewFor, deskViewFor } from './view-for.ts'

type DeskMessages = Pick<
  Handlers,
  | 'desk:enter'
  | 'room:open'
  | 'room:watch'
  | 'room:set'
  | 'room:lock'
  | 'room:close'
  | 'room:entry'
  | 'room:take-home'
  | 'room:look-at'
  | 'seat:remove'
  | 'seat:rename'
  | 'knock:answer'
  | 'pretend:seat'
  | 'round:start'
  | 'round:deal'
  | 'round:pause'
  | 'round:resume'
  | 'round:add-time'
  | 'round:show-par'
  | 'round:end'
  | 'round:void'
>

export function deskMessages(live: LiveServer, rooms: Rooms, pretend: PretendClasses, parts: LiveParts): DeskMessages {
  const viewOf = (room: LiveRoom) => deskViewFor(room, parts.addresses(), parts.record.saving)
  const inRoom = inOwnRoom(rooms)

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
      return ok({ home: rooms.homeOf(teacherId), shelf: parts.shelf.of(teacherId) })
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

    'room:set': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.lesson.set(message.settings)),
    'room:lock': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.entrance.lock(message.locked)),

    'room:entry': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.entrance.setEntry(message.entry)),
    'room:take-home': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.takeHome.open(message.rounds, message.deadlineMs)),
    'room:look-at': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => room.lookAt(message.roundId)),

    'room:close': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        const closed = await room.close()
        if (!closed.ok) return closed
        pretend.sendHome(room)
        for (const seat of room.seats.values()) sendAway(live, seat.connection, 'room-closed')
        for (const { connectionId } of room.entrance.emptyDoor()) sendAway(live, connectionId, 'room-closed')
        return closed
      }),

    'seat:remove': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        const removed = await room.entrance.remove(message.seatId)
        if (removed.ok) sendAway(live, removed.value.connection, 'removed')
        return removed
      }),

    'seat:rename': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.entrance.rename(message.seatId, message.name)),

    'knock:answer': (connection, message) =>
      inRoom(connection, message.roomId, async (room) => {
        const answered = await room.entrance.answerKnock(message.knockId, message.letIn)
        if (answered.ok) await tellWhoWaited(live, room, answered.value)
        return answered
      }),

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

    async 'round:deal'(connection, message) {
      const room = ownRoom(connection, rooms, message.roomId)
      if (!room.ok) return room
      const dealt = await room.value.deal(message.number)
      return dealt.ok ? ok({ roundId: dealt.value }) : dealt
    },

    'round:pause': (connection, message) => changeClock(connection, message, (atMs) => ({ kind: 'paused', atMs })),
    'round:resume': (connection, message) => changeClock(connection, message, (atMs) => ({ kind: 'resumed', atMs })),
    'round:add-time': (connection, message) =>
      changeClock(connection, message, () => ({ kind: 'time-added', addedMs: message.addedMs })),
    'round:show-par': (connection, message) =>
      inRoom(connection, message.roomId, (room) => room.showPar(message.roundId, message.shown)),

    'round:end': (connection, message) =>
      changeClock(connection, message, (atMs) => ({ kind: 'ended', atMs, reason: 'teacher' })),
    'round:void': (connection, message) => changeClock(connection, message, (atMs) => ({ kind: 'voided', atMs })),
  }
}

/** The door has been opened for somebody, or not: their page hears of it, and holds the seat from now on. */
async function tellWhoWaited(live: LiveServer, room: LiveRoom, { knock, seat }: AnsweredKnock): Promise<void> {
  const connection = live.sockets.sockets.get(knock.connectionId)
  // Gone meanwhile: with the same secret the page finds its seat when it comes back.
  if (connection === undefined) return
  if (connection.data.waitsAt !== room) {
    // Told already by the other of two desks; or gave up while the seat was being stored: then nobody wants it, and its
    // name is free again.
    if (seat !== null && seat.connection === null && knock.moves === null) await room.entrance.remove(seat.id)
    return
  }
  if (seat === null) {
    leaveDoor(connection)
    connection.emit('seat:turned-away', {})
    return
  }
  takeSeat(live, connection, room, seat)
  connection.emit('seat:let-in', { token: knock.token, bench: benchViewFor(room, seat) })
}
