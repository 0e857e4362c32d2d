/** Reads the record back into what a restarted server needs. Runs in the writer's thread, which alone holds the file. */

import type Database from 'better-sqlite3'
import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Step } from '../../engine/contest/steps.ts'
import type { StoredRoom, StoredRound, StoredSeat } from './record.ts'

type RoomRow = {
  id: string
  code: string
  teacher_id: string
  viewer_key: string
  locked: number
  settings: string
  opened_ms: number
}
type SeatRow = { id: string; name: string; token_hash: string; pretend: number; joined_ms: number }
type RoundRow = { id: string; number: number; settings: string; start: string }
type EventRow = { event: string; at_ms: number }
type TryRow = { seat_id: string; number: number; late: number; opened_ms: number }
type StepRow = { seat_id: string; try_number: number; late: number; step: number; moment_ms: number; at_ms: number }

export type Reader = {
  openRooms(): StoredRoom[]
  teacherOfSession(tokenHash: string, openedSinceMs: number): TeacherId | null
  lastAliveMs(): number | null
}

export function makeReader(database: Database.Database): Reader {
  const of = (text: string) => database.prepare(text)
  const rooms = of('SELECT * FROM room WHERE closed_ms IS NULL ORDER BY opened_ms, id')
  const seats = of('SELECT * FROM seat WHERE room_id = ? AND removed_ms IS NULL ORDER BY joined_ms, id')
  const lastRound = of('SELECT * FROM round WHERE room_id = ? ORDER BY number DESC LIMIT 1')
  const events = of('SELECT event, at_ms FROM clock_event WHERE round_id = ? ORDER BY ordinal')
  const tries = of('SELECT seat_id, number, late, opened_ms FROM try WHERE round_id = ? ORDER BY seat_id, number')
  const steps = of(`SELECT try.seat_id, try.number AS try_number, try.late, step.step, step.moment_ms, step.at_ms
    FROM try JOIN step ON step.try_key = try.key WHERE try.round_id = ? ORDER BY try.seat_id, try.number, step.number`)
  const session = of('SELECT teacher_id FROM desk_session WHERE token_hash = ? AND opened_ms >= ?')
  const alive = of("SELECT value FROM meta WHERE name = 'alive_ms'")

  function readRound(row: RoundRow | undefined): StoredRound | null {
    if (row === undefined) return null
    const eventRows = events.all(row.id) as EventRow[]
    return {
      roundId: row.id as RoundId,
      number: row.number,
      settings: JSON.parse(row.settings) as RoundSettings,
      start: row.start,
      events: eventRows.map((each) => JSON.parse(each.event) as ClockEvent),
      lastEventAtMs: eventRows.at(-1)?.at_ms ?? 0,
      tries: (tries.all(row.id) as TryRow[]).map((each) => ({
        seatId: each.seat_id as SeatId,
        tryNumber: each.number,
        late: each.late === 1,
        atMs: each.opened_ms,
      })),
      steps: (steps.all(row.id) as StepRow[]).map((each) => ({
        seatId: each.seat_id as SeatId,
        tryNumber: each.try_number,
        late: each.late === 1,
        step: each.step as Step,
        momentMs: each.moment_ms,
        atMs: each.at_ms,
      })),
    }
  }

  function readSeat(row: SeatRow): StoredSeat {
    return {
      seatId: row.id as SeatId,
      name: row.name,
      tokenHash: row.token_hash,
      pretend: row.pretend === 1,
      joinedAtMs: row.joined_ms,
    }
  }

  return {
    openRooms() {
      return (rooms.all() as RoomRow[]).map((row) => ({
        roomId: row.id as RoomId,
        code: row.code as RoomCode,
        teacherId: row.teacher_id as TeacherId,
        viewerKey: row.viewer_key,
        locked: row.locked === 1,
        settings: JSON.parse(row.settings) as RoundSettings,
        openedAtMs: row.opened_ms,
        seats: (seats.all(row.id) as SeatRow[]).map(readSeat),
        lastRound: readRound(lastRound.get(row.id) as RoundRow | undefined),
      }))
    },
    teacherOfSession(tokenHash, openedSinceMs) {
      const row = session.get(tokenHash, openedSinceMs) as { teacher_id: string } | undefined
      return row === undefined ? null : (row.teacher_id as TeacherId)
    },
    lastAliveMs() {
      const row = alive.get() as { value: string } | undefined
      return row === undefined ? null : Number(row.value)
    },
  }
}
