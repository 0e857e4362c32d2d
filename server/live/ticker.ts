/**
 * Ten times a second: tells each room's screens what has changed, rings the clocks, and now and then notes that the server
 * is alive. Nothing is sent for one turn alone; a class of thirty costs one message a tick, however fast it turns.
 */

import { boardGroup, type Connection, deskGroup, homeGroup, type LiveServer } from './connection.ts'
import type { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import type { Rooms } from './rooms.ts'
import { benchViewFor, boardViewFor, deskViewFor, isCoveredOnBoard, tickFor } from './view-for.ts'

const TICK_EVERY_MS = 100
/** Rooms take turns within a tick, so that a school's worth of ticks never holds up a turn that comes in meanwhile. */
const SLICES = 10
const ALIVE_EVERY_MS = 1_000
/** Packets that wait for a reader. A healthy one has none; over this its ticks are left out and it gets one whole view later. */
const LAGGING_PACKETS_MAX = 32
const LAGGING_MS_MAX = 30_000

/** Starts the ticker; returns its stop. */
export function startTicker(live: LiveServer, rooms: Rooms, parts: LiveParts): () => void {
  let lastAliveMs = 0
  let slice = 0
  const tick = () => {
    const nowMs = parts.nowMs()
    let isAnyRunning = false
    let index = 0
    slice = (slice + 1) % SLICES
    for (const room of rooms.all()) {
      if (index++ % SLICES !== slice) continue
      if (room.round?.clock.phase === 'running') isAnyRunning = true
      endWhenTimeIsUp(room, nowMs)
      tellRoom(live, rooms, room, parts)
    }
    if (isAnyRunning && parts.record.saving && lastAliveMs + ALIVE_EVERY_MS <= nowMs) {
      lastAliveMs = nowMs
      parts.record
        .write({ kind: 'alive', atMs: nowMs })
        .catch((fault) => parts.log.warn({ reason: String(fault) }, 'sign of life not stored'))
    }
  }
  const timer = setInterval(tick, TICK_EVERY_MS / SLICES)
  const stopListening = parts.record.onSavingChanged(() => {
    for (const room of rooms.all()) room.changes.views = true
  })
  return () => {
    clearInterval(timer)
    stopListening()
  }
}

function endWhenTimeIsUp(room: LiveRoom, nowMs: number): void {
  const { round } = room
  if (round?.clock.phase !== 'running' || round.clock.endsAtMs === null || nowMs < round.clock.endsAtMs) return
  // Asking again while the first wish is being stored finds it done; see changeClock.
  void room.changeClock(round.id, { kind: 'ended', atMs: round.clock.endsAtMs, reason: 'time' })
}

function tellRoom(live: LiveServer, rooms: Rooms, room: LiveRoom, parts: LiveParts): void {
  const { changes } = room
  if (!changes.views && !changes.benches && changes.lanes.size === 0) return
  const lanes = [...changes.lanes]
  const isWhole = changes.views || changes.benches
  const hasBenchNews = changes.benches
  changes.views = false
  changes.benches = false
  changes.lanes.clear()
  room.version++
  const nowMs = parts.nowMs()
  const deskView = () => deskViewFor(room, parts.addresses(), parts.record.saving)
  const boardView = () => boardViewFor(room, parts.addresses())
  const tick = tickFor(room, lanes)
  const boardTick = isCoveredOnBoard(room) ? { ...tick, lanes: [] } : tick
  for (const connection of readersOf(live, deskGroup(room), nowMs)) {
    if (isWhole || connection.hasMissed) connection.to.emit('desk', deskView())
    else connection.to.emit('tick', tick)
  }
  for (const connection of readersOf(live, boardGroup(room), nowMs)) {
    if (isWhole || connection.hasMissed) connection.to.emit('board', boardView())
    else connection.to.emit('tick', boardTick)
  }
  if (isWhole) live.to(homeGroup(room.facts.teacherId)).emit('desk:home', rooms.homeOf(room.facts.teacherId))
  if (!hasBenchNews) return
  for (const seat of room.seats.values()) {
    const connection = seat.connection === null ? undefined : live.sockets.sockets.get(seat.connection)
    connection?.emit('bench', benchViewFor(room, seat))
  }
}

/** The connections of a group that read what they are sent; one that has caught up again is marked to get a whole view. */
function* readersOf(live: LiveServer, group: string, nowMs: number): Generator<{ to: Connection; hasMissed: boolean }> {
  for (const id of live.sockets.adapter.rooms.get(group) ?? []) {
    const to = live.sockets.sockets.get(id)
    if (to === undefined) continue
    const nWaiting = (to.conn as unknown as { writeBuffer: unknown[] }).writeBuffer.length
    if (nWaiting > LAGGING_PACKETS_MAX) {
      to.data.laggingSinceMs ??= nowMs
      if (to.data.laggingSinceMs + LAGGING_MS_MAX < nowMs) to.conn.close()
      continue
    }
    const hasMissed = to.data.laggingSinceMs !== null
    to.data.laggingSinceMs = null
    yield { to, hasMissed }
  }
}
