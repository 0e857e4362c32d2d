/**
 * Ten times a second: tells each room's screens what has changed, rings the clocks, and now and then notes that the server
 * is alive. Nothing is sent for one turn alone; a class of thirty costs one message a tick, however fast it turns.
 */

import type { SeatId } from '../../engine/contest/ids.ts'
import { boardGroup, type Connection, deskGroup, homeGroup, type LiveServer } from './connection.ts'
import type { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import { Readers } from './readers.ts'
import type { Rooms } from './rooms.ts'
import type { Standstills } from './standstill.ts'
import { benchViewFor, boardViewFor, deskTickFor, deskViewFor, isCoveredOnBoard, tickFor } from './view-for.ts'

const TICK_EVERY_MS = 100
/** Rooms take turns within a tick, so that a school's worth of ticks never holds up a turn that comes in meanwhile. */
const SLICES = 10
const ALIVE_EVERY_MS = 1_000

/** Starts the ticker; returns its stop. */
export function startTicker(live: LiveServer, rooms: Rooms, standstills: Standstills, parts: LiveParts): () => void {
  const { nowMs, record, log } = parts
  const readers = new Readers(nowMs, (connection) => sendWholeView(connection, rooms, parts))
  let lastAliveMs = 0
  let slice = 0
  const tick = () => {
    standstills.look()
    let isAnyRunning = false
    let index = 0
    slice = (slice + 1) % SLICES
    if (slice === 0) readers.lookAfter()
    for (const room of rooms.all()) {
      if (index++ % SLICES !== slice) continue
      if (room.round?.clock.phase === 'running') isAnyRunning = true
      try {
        if (record.saving) endRoundsWhoseTimeIsUp(room, standstills, nowMs())
        tellRoom(live, rooms, room, parts, readers)
      } catch (fault) {
        // A fault of ours in one room must not reach the others.
        log.error({ room: room.facts.id, fault: (fault as Error).stack }, 'a room could not be told')
      }
    }
    if (isAnyRunning && record.saving && Math.abs(nowMs() - lastAliveMs) >= ALIVE_EVERY_MS) {
      lastAliveMs = nowMs()
      record
        .write({ kind: 'alive', atMs: lastAliveMs })
        .catch((fault) => log.warn({ reason: String(fault) }, 'sign of life not stored'))
    }
  }
  const timer = setInterval(tick, TICK_EVERY_MS / SLICES)
  const stopListening = record.onSavingChanged(() => {
    for (const room of rooms.all()) room.changes.views = true
  })
  return () => {
    clearInterval(timer)
    stopListening()
  }
}

function endRoundsWhoseTimeIsUp(room: LiveRoom, standstills: Standstills, nowMs: number): void {
  for (const { id, clock } of room.heldRounds) {
    if (clock.phase !== 'running' || clock.endsAtMs === null || nowMs < clock.endsAtMs) continue
    // Its clock may say too little yet.
    if (standstills.isUnsettled(id)) continue
    // Asking again while the first wish is being stored finds it done; see RoomRound.change.
    void room.changeClock(id, { kind: 'ended', atMs: clock.endsAtMs, reason: 'time' })
  }
}

function tellRoom(live: LiveServer, rooms: Rooms, room: LiveRoom, parts: LiveParts, readers: Readers): void {
  const { changes } = room
  if (changes.showing) tellShowing(live, room)
  const benches = changes.benches ? [...room.seats.keys()] : [...changes.seats]
  const lanes = [...changes.lanes]
  const isWhole = changes.views || changes.benches
  changes.views = false
  changes.benches = false
  changes.seats.clear()
  changes.lanes.clear()
  for (const seatId of benches) tellBench(live, rooms, room, seatId, parts, readers)
  if (!isWhole && lanes.length === 0) return
  room.version++
  const tick = tickFor(room, lanes)
  const boardTick = isCoveredOnBoard(room) ? { ...tick, lanes: [] } : tick
  const whole = (to: Connection) => sendWholeView(to, rooms, parts)
  const deskTick = deskTickFor(room, tick, lanes)
  const desks = isWhole ? whole : (to: Connection) => to.emit('desk:tick', deskTick)
  const boards = isWhole ? whole : (to: Connection) => to.emit('tick', boardTick)
  for (const each of inGroup(live, deskGroup(room))) readers.tell(each, desks)
  for (const each of inGroup(live, boardGroup(room))) readers.tell(each, boards)
  if (isWhole) for (const each of inGroup(live, homeGroup(room.facts.teacherId))) readers.tell(each, whole)
}

function tellBench(
  live: LiveServer,
  rooms: Rooms,
  room: LiveRoom,
  seatId: SeatId,
  parts: LiveParts,
  readers: Readers,
): void {
  const connectionId = room.seats.get(seatId)?.connection ?? null
  const connection = connectionId === null ? undefined : live.sockets.sockets.get(connectionId)
  if (connection !== undefined) readers.tell(connection, (to) => sendWholeView(to, rooms, parts))
}

/** How far the showing has gone, to everybody who sees it. A whole one travels with the views. */
function tellShowing(live: LiveServer, room: LiveRoom): void {
  room.changes.showing = false
  const { now } = room.showing
  if (now === null) return
  const message = { version: now.version, at: now.at }
  live.to(boardGroup(room)).emit('shown:at', message)
  for (const { connection } of room.seats.values()) {
    if (connection !== null) live.sockets.sockets.get(connection)?.volatile.emit('shown:at', message)
  }
}

function inGroup(live: LiveServer, group: string): Connection[] {
  const found = [...(live.sockets.adapter.rooms.get(group) ?? [])].map((id) => live.sockets.sockets.get(id))
  return found.filter((connection) => connection !== undefined)
}

/** Everything that a screen may see, whatever it was told before. */
function sendWholeView(connection: Connection, rooms: Rooms, parts: LiveParts): void {
  const { who } = connection.data
  switch (who.role) {
    case 'teacher':
      if (who.watching === null) connection.emit('desk:home', rooms.homeOf(who.teacherId))
      else connection.emit('desk', deskViewFor(who.watching, parts.addresses(), parts.record.saving))
      break
    case 'viewer':
      connection.emit('board', boardViewFor(who.room, parts.addresses()))
      break
    case 'student': {
      const seat = who.room.seats.get(who.seatId)
      if (seat !== undefined) connection.emit('bench', benchViewFor(who.room, seat))
      break
    }
    case 'nobody':
      break
    default:
      who satisfies never
  }
}
