/** What a student's page says: come in, come back, turn, ask for help, leave. */

import type { SeatId } from '../../engine/contest/ids.ts'
import { readRoomCode } from '../../engine/contest/room-code.ts'
import { stepOf } from '../../engine/contest/steps.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Parsed } from '../../engine/wire/from-browser.ts'
import type { GoneReason } from '../../engine/wire/from-server.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Door } from '../../engine/wire/views.ts'
import { hashSecret } from '../secrets.ts'
import { become, leaveDoor, waitAtDoor } from './change-role.ts'
import type { Connection, LiveServer } from './connection.ts'
import type { Handlers } from './gateway.ts'
import type { LiveRoom } from './live-room.ts'
import type { MessageLimits } from './message-limits.ts'
import type { RoomEntrance } from './room-entrance.ts'
import type { Seat } from './room-seats.ts'
import type { Rooms } from './rooms.ts'
import { benchViewFor } from './view-for.ts'

type SeatMessages = Pick<
  Handlers,
  | 'room:ask'
  | 'seat:join'
  | 'seat:resume'
  | 'seat:give-up'
  | 'seat:leave'
  | 'turns:send'
  | 'turns:hand-in'
  | 'cube:ready'
  | 'round:choose'
  | 'help:ask'
>

export function seatMessages(live: LiveServer, rooms: Rooms, limits: MessageLimits): SeatMessages {
  /** Finds the room of a typed code. Wrong codes are counted, so that nobody reads them all. */
  async function roomOfCode(connection: Connection, typed: string): Promise<Result<LiveRoom, Refusal>> {
    const waitMs = await limits.codeWaitMs(connection)
    if (waitMs !== null) return err({ code: 'room/too-many-wrong-codes', retryAfterMs: waitMs })
    const code = readRoomCode(typed)
    const room = code === null ? null : rooms.byCode(code)
    if (room !== null) return ok(room)
    await limits.countWrongCode(connection)
    return err({ code: 'room/unknown-code' })
  }

  return {
    async 'room:ask'(connection, message) {
      const room = await roomOfCode(connection, message.code)
      return room.ok ? ok({ door: doorFor(room.value) }) : room
    },

    async 'seat:join'(connection, message) {
      const found = await roomOfCode(connection, message.code)
      if (!found.ok) return found
      const room = found.value
      const joinWaitMs = await limits.joinWaitMs(connection)
      if (joinWaitMs !== null) return err({ code: 'wire/too-fast', retryAfterMs: joinWaitMs })
      const own = message.token === undefined ? null : room.entrance.seatOfTokenHash(hashSecret(message.token))
      if (own !== null && message.token !== undefined) {
        // The seat was taken before, and the answer was lost.
        takeSeat(live, connection, room, own)
        return ok({ kind: 'in', token: message.token, bench: benchViewFor(room, own) })
      }
      const came = await comeIn(connection, room, message)
      if (!came.ok) return came
      if (came.value.kind === 'waiting') {
        waitAtDoor(connection, room)
        return ok({ kind: 'waiting' })
      }
      const { seat, token } = came.value
      if (room.closed) return err({ code: 'room/closed' })
      if (!connection.connected) {
        // Hung up while the seat was being stored: nobody has its token, so nobody could ever give its name back.
        await room.entrance.remove(seat.id)
        return err({ code: 'seat/gone' })
      }
      takeSeat(live, connection, room, seat)
      return ok({ kind: 'in', token, bench: benchViewFor(room, seat) })
    },

    'seat:give-up'(connection) {
      leaveDoor(connection)
      return ok({})
    },

    'seat:resume'(connection, message) {
      const found = connection.data.isPretend ? pretendSeat(rooms, message.token) : rooms.bySeatToken(message.token)
      if (found === null) return err({ code: 'seat/gone' })
      if (found.room.closed) return err({ code: 'room/closed' })
      takeSeat(live, connection, found.room, found.seat)
      return ok({ bench: benchViewFor(found.room, found.seat) })
    },

    async 'seat:leave'(connection) {
      const at = seatOf(connection)
      if (!at.ok) return at
      const removed = await at.value.room.entrance.remove(at.value.seat.id)
      if (!removed.ok) return removed
      become(connection, { role: 'nobody' })
      return ok({})
    },

    async 'turns:send'(connection, message) {
      const at = seatOf(connection)
      if (!at.ok) return at
      const { roundId, tryNumber, from, kept = false, written = false } = message
      const steps = message.steps.map(stepOf)
      return at.value.room.takeTurns(at.value.seat, { roundId, tryNumber, from, steps, how: { kept, written } })
    },

    async 'turns:hand-in'(connection, message) {
      const at = seatOf(connection)
      if (!at.ok) return at
      const { roundId, tryNumber } = message
      return at.value.room.handIn(at.value.seat, roundId, { tryNumber, steps: message.steps.map(stepOf) })
    },

    'cube:ready'(connection, message) {
      const at = seatOf(connection)
      if (!at.ok) return at
      const said = at.value.room.setReady(at.value.seat, message.roundId, message.ready)
      return said.ok ? ok({}) : said
    },

    'round:choose'(connection, message) {
      const at = seatOf(connection)
      if (!at.ok) return at
      const { room, seat } = at.value
      const chosen = room.chooseRound(seat, message.roundId)
      return chosen.ok ? ok({ bench: benchViewFor(room, seat) }) : chosen
    },

    'help:ask'(connection, message) {
      const at = seatOf(connection)
      if (!at.ok) return at
      at.value.room.askForHelp(at.value.seat, message.wanted)
      return ok({})
    },
  }
}

/** A simulated student sits down; everybody else comes in by the door. */
async function comeIn(
  connection: Connection,
  room: LiveRoom,
  message: Parsed<'seat:join'>,
): ReturnType<RoomEntrance['comeIn']> {
  const { name, pupilId, moves = false, token } = message
  if (!connection.data.isPretend) return room.entrance.comeIn({ name, pupilId, moves }, connection.id, token)
  const seated = await room.entrance.seatPretender(name ?? '', token)
  return seated.ok ? ok({ kind: 'in', ...seated.value }) : seated
}

function doorFor({ facts, entrance }: LiveRoom): Door {
  const { seats, roster, entry, locked } = entrance
  const here = new Set([...seats.values()].map(({ pupilId }) => pupilId))
  const pupils = roster?.pupils ?? []
  return {
    code: facts.code,
    names: entry.names === 'roster' && roster === null ? 'typed' : entry.names,
    pupils: pupils.map(({ pupilId, name }) => ({ pupilId, name, isHere: here.has(pupilId) })),
    approve: entry.approve,
    locked,
  }
}

/** Tells the page on `connection` that it no longer holds its seat, and takes the rights from it. */
export function sendAway(live: LiveServer, connectionId: string | null, reason: GoneReason): void {
  if (connectionId === null) return
  const connection = live.sockets.sockets.get(connectionId)
  if (connection === undefined) return
  become(connection, { role: 'nobody' })
  connection.emit('seat:gone', { reason })
}

/** The newest connection holds the seat; the one before is told so at once. */
export function takeSeat(live: LiveServer, connection: Connection, room: LiveRoom, seat: Seat): void {
  if (seat.connection !== null && seat.connection !== connection.id) sendAway(live, seat.connection, 'taken-over')
  become(connection, { role: 'student', room, seatId: seat.id })
  seat.connection = connection.id
  room.changes.views = true
}

function seatOf(connection: Connection): Result<{ room: LiveRoom; seat: Seat }, Refusal> {
  const { who } = connection.data
  if (who.role !== 'student') return err({ code: 'seat/none' })
  if (who.room.closed) return err({ code: 'room/closed' })
  const seat = who.room.seats.get(who.seatId)
  if (seat === undefined) return err({ code: 'seat/gone' })
  if (seat.connection !== connection.id) return err({ code: 'seat/taken-over' })
  return ok({ room: who.room, seat })
}

/** After a restart our own simulated students come back by their seat's identifier: their tokens were never kept. */
function pretendSeat(rooms: Rooms, seatId: string): { room: LiveRoom; seat: Seat } | null {
  for (const room of rooms.all()) {
    const seat = room.seats.get(seatId as SeatId)
    if (seat?.pretend) return { room, seat }
  }
  return null
}
