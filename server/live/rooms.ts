/** All open rooms of this server: found by code, by viewer key, by teacher; opened, and read back at boot. */

import type { RoomCode, RoomId, TeacherId } from '../../engine/contest/ids.ts'
import { drawRoomCode } from '../../engine/contest/room-code.ts'
import { isOpen } from '../../engine/contest/round-clock.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../engine/contest/round-settings.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { DeskHome } from '../../engine/wire/views.ts'
import { hashSecret, newSecret, sameSecret } from '../secrets.ts'
import { SavingPaused } from '../store/record.ts'
import { LiveRoom, type Seat } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import { restoreRoom } from './restore-room.ts'

export class Rooms {
  readonly #parts: LiveParts
  readonly #byId = new Map<RoomId, LiveRoom>()

  constructor(parts: LiveParts) {
    this.#parts = parts
  }

  /** Reads the open rooms back and takes the time in which the server was away out of their clocks. */
  async restore(): Promise<void> {
    const stored = await this.#parts.record.loadOpenRooms()
    const lastAliveMs = await this.#parts.record.lastAliveMs()
    const nowMs = this.#parts.nowMs()
    for (const each of stored) {
      const room = restoreRoom(this.#parts, each)
      this.#byId.set(room.facts.id, room)
      const { round } = room
      if (round?.clock.phase !== 'running') continue
      const lastSignMs = Math.max(lastAliveMs ?? 0, lastStepMs(room), 0)
      const fromMs = Math.min(nowMs, Math.max(lastSignMs, each.openedAtMs))
      if (lastSignMs > 0 && fromMs < nowMs) await room.changeClock(round.id, { kind: 'outage', fromMs, toMs: nowMs })
    }
  }

  async open(teacherId: TeacherId): Promise<Result<LiveRoom, Refusal>> {
    const { record, newId, nowMs } = this.#parts
    const facts = {
      id: newId() as RoomId,
      code: this.#freeCode(),
      teacherId,
      viewerKey: newSecret(),
      openedAtMs: nowMs(),
    }
    const room = new LiveRoom(this.#parts, facts, DEFAULT_ROUND_SETTINGS)
    this.#byId.set(facts.id, room)
    try {
      const { id: roomId, code, viewerKey, openedAtMs: atMs } = facts
      await record.write({ kind: 'room-opened', roomId, code, teacherId, viewerKey, settings: room.settings, atMs })
      return ok(room)
    } catch (fault) {
      this.#byId.delete(facts.id)
      if (!(fault instanceof SavingPaused)) throw fault
      return err({ code: 'store/saving-paused' })
    }
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
      const seat = room.seatOfTokenHash(tokenHash)
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
        playing: room.round !== null && isOpen(room.round.clock),
      })),
    }
  }

  #freeCode(): RoomCode {
    const random = this.#parts.newRandom()
    for (;;) {
      const code = drawRoomCode(random)
      if (this.byCode(code) === null) return code
    }
  }
}

function lastStepMs(room: LiveRoom): number {
  let lastMs = 0
  for (const player of room.round?.players.values() ?? []) lastMs = Math.max(lastMs, player.lastStepAtMs ?? 0)
  return lastMs
}
