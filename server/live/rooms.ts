/** All open rooms of this server: found by code, by viewer key, by teacher; opened, and read back at boot. */

import type { RoomCode, RoomId, TeacherId } from '../../engine/contest/ids.ts'
import { drawRoomCode } from '../../engine/contest/room-code.ts'
import { DEFAULT_ROOM_ENTRY } from '../../engine/contest/room-entry.ts'
import { isOpen } from '../../engine/contest/round-clock.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../engine/contest/round-settings.ts'
import type { Round } from '../../engine/contest/round-state.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskHome } from '../../engine/wire/views.ts'
import { hashSecret, newSecret, sameSecret } from '../secrets.ts'
import type { StoredRoom } from '../store/record.ts'
import { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import { restoreRoom } from './restore-room.ts'
import type { Seat } from './room-seats.ts'
import { storeInRoom } from './store-entry.ts'

export class Rooms {
  readonly #parts: LiveParts
  readonly #byId = new Map<RoomId, LiveRoom>()
  readonly #codesOnTheirWay = new Set<RoomCode>()

  constructor(parts: LiveParts) {
    this.#parts = parts
  }

  /** Reads the open rooms back and takes the time in which the server was away out of their clocks. */
  async restore(): Promise<void> {
    const stored = await this.#parts.record.loadOpenRooms()
    const lastAliveMs = (await this.#parts.record.lastAliveMs()) ?? 0
    for (const each of stored) {
      const room = this.#restoreRoom(each)
      if (room === null) continue
      this.#byId.set(room.facts.id, room)
      for (const round of room.heldRounds) {
        // A deadline is a day on the calendar: it does not move.
        if (round.clock.phase !== 'running' || round.settings.pace === 'alone') continue
        const lastEventAtMs = each.held.find(({ roundId }) => roundId === round.id)?.lastEventAtMs ?? 0
        const fromMs = Math.max(lastAliveMs, lastEventAtMs, lastSignOfLifeMs(room, round))
        // A clock that was set back while the server was away gives a negative time, which puts the round right all the same.
        await room.changeClock(round.id, { kind: 'outage', fromMs, toMs: this.#parts.nowMs() })
      }
    }
  }

  /** A room whose record makes no sense costs its own class the room, and nobody else anything. */
  #restoreRoom(stored: StoredRoom): LiveRoom | null {
    try {
      return restoreRoom(this.#parts, stored)
    } catch (fault) {
      this.#parts.log.error({ room: stored.roomId, fault: (fault as Error).stack }, 'a room could not be read back')
      return null
    }
  }

  async open(teacherId: TeacherId): Promise<Result<LiveRoom, Refusal>> {
    const { newId, nowMs } = this.#parts
    const code = this.#freeCode()
    const facts = { id: newId() as RoomId, code, teacherId, viewerKey: newSecret(), openedAtMs: nowMs() }
    const { id: roomId, viewerKey, openedAtMs: atMs } = facts
    const settings = DEFAULT_ROUND_SETTINGS
    this.#codesOnTheirWay.add(code)
    const stored = await storeInRoom(
      this.#parts,
      roomId,
    )({ kind: 'room-opened', roomId, code, teacherId, viewerKey, settings, atMs }).finally(() =>
      this.#codesOnTheirWay.delete(code),
    )
    if (!stored.ok) return stored
    const state = { settings, entry: DEFAULT_ROOM_ENTRY, plan: null, deadlineMs: null }
    const room = new LiveRoom(this.#parts, facts, state)
    this.#byId.set(roomId, room)
    return ok(room)
  }

  /** A closed room is kept until the process ends, so that its screens can say so; it is no longer found by its code. */
  all(): IterableIterator<LiveRoom> {
    return this.#byId.values()
  }

  byCode(code: RoomCode): LiveRoom | null {
    for (const room of this.#byId.values()) if (room.facts.code === code && !room.closed) return room
    return null
  }

  byViewerKey(key: string): LiveRoom | null {
    for (const room of this.#byId.values()) if (!room.closed && sameSecret(room.facts.viewerKey, key)) return room
    return null
  }

  bySeatToken(token: string): { room: LiveRoom; seat: Seat } | null {
    const tokenHash = hashSecret(token)
    for (const room of this.#byId.values()) {
      const seat = room.entrance.seatOfTokenHash(tokenHash)
      if (seat !== null) return { room, seat }
    }
    return null
  }

  ofTeacher(teacherId: TeacherId, roomId: RoomId): Result<LiveRoom, Refusal> {
    const room = this.#byId.get(roomId)
    if (room === undefined || room.facts.teacherId !== teacherId) return err({ code: 'room/not-yours' })
    return ok(room)
  }

  homeOf(teacherId: TeacherId): DeskHome {
    const rooms = [...this.#byId.values()].filter((room) => room.facts.teacherId === teacherId && !room.closed)
    return {
      rooms: rooms.map((room) => ({
        id: room.facts.id,
        code: room.facts.code,
        openedAtMs: room.facts.openedAtMs,
        nStudents: room.seats.size,
        nRounds: room.nRounds,
        playing: room.heldRounds.some((round) => isOpen(round.clock)),
        deadlineMs: room.deadlineMs,
      })),
    }
  }

  #freeCode(): RoomCode {
    const random = this.#parts.newRandom()
    for (;;) {
      const code = drawRoomCode(random)
      if (this.byCode(code) === null && !this.#codesOnTheirWay.has(code)) return code
    }
  }
}

/** When something was last stored of this room: a step, a nudge, somebody who came in. Then the server was not away. */
function lastSignOfLifeMs({ seats }: LiveRoom, { players, nudges }: Round): number {
  let lastMs = 0
  for (const { lastStepAtMs } of players.values()) lastMs = Math.max(lastMs, lastStepAtMs ?? 0)
  for (const given of nudges.values()) lastMs = Math.max(lastMs, given.at(-1)?.atMs ?? 0)
  for (const { joinedAtMs } of seats.values()) lastMs = Math.max(lastMs, joinedAtMs)
  return lastMs
}
