/** Reads the record back into what a restarted server needs. Runs in the writer's thread, which alone holds the file. */

import type Database from 'better-sqlite3'
import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import { DEFAULT_ROOM_ENTRY, type RoomEntry } from '../../engine/contest/room-entry.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import { type RoundSettings, withLaterSettings } from '../../engine/contest/round-settings.ts'
import type { HowSent } from '../../engine/contest/round-state.ts'
import type { Step } from '../../engine/contest/steps.ts'
import type { PlanUnderWay, RoundOnRecord, StoredRoom, StoredRound, StoredSeat, StoredShelf } from './record.ts'

type RoomRow = {
  id: string
  code: string
  teacher_id: string
  viewer_key: string
  locked: number
  settings: string
  opened_ms: number
  entry: string | null
  plan: string | null
  deadline_ms: number | null
}
type SeatRow = {
  id: string
  name: string
  token_hash: string
  pretend: number
  pupil_id: string | null
  joined_ms: number
}
type RoundRow = {
  id: string
  number: number
  settings: string
  start: string
  par_shown: number
}
type EventRow = { event: string; at_ms: number }
type TryRow = { seat_id: string; number: number; late: number; kept: number; written: number; opened_ms: number }
type StepRow = {
  seat_id: string
  try_number: number
  late: number
  kept: number
  written: number
  step: number
  moment_ms: number
  at_ms: number
}
type NudgeRow = { seat_id: string; try_number: number; after_steps: number; nudge: string; at_ms: number }
type HandedInRow = { seat_id: string; try_number: number; steps: string }
type PlanRow = { id: string; teacher_id: string; plan: string; kept_ms: number }
type RosterRow = { id: string; teacher_id: string; roster: string; kept_ms: number }

export type Reader = {
  openRooms(): StoredRoom[]
  round(roundId: RoundId): StoredRound | null
  shelf(): StoredShelf
  teacherOfSession(tokenHash: string, openedSinceMs: number): TeacherId | null
  lastAliveMs(): number | null
}

export function makeReader(database: Database.Database): Reader {
  const of = (text: string) => database.prepare(text)
  const rooms = of('SELECT * FROM room WHERE closed_ms IS NULL ORDER BY opened_ms, id')
  const seats = of('SELECT * FROM seat WHERE room_id = ? AND removed_ms IS NULL ORDER BY joined_ms, id')
  const rounds = of('SELECT * FROM round WHERE room_id = ? ORDER BY number')
  const round = of('SELECT * FROM round WHERE id = ?')
  const lastEvent = of('SELECT event FROM clock_event WHERE round_id = ? ORDER BY ordinal DESC LIMIT 1')
  const nudges = of('SELECT seat_id, try_number, after_steps, nudge, at_ms FROM nudge WHERE round_id = ? ORDER BY key')
  const handedIn = of('SELECT seat_id, try_number, steps FROM handed_in WHERE round_id = ? ORDER BY seat_id')
  const plans = of('SELECT id, teacher_id, plan, kept_ms FROM lesson_plan ORDER BY kept_ms, id')
  const rosters = of('SELECT id, teacher_id, roster, kept_ms FROM class_roster ORDER BY kept_ms, id')
  const events = of('SELECT event, at_ms FROM clock_event WHERE round_id = ? ORDER BY ordinal')
  const tries = of(
    'SELECT seat_id, number, late, kept, written, opened_ms FROM try WHERE round_id = ? ORDER BY seat_id, number',
  )
  const steps =
    of(`SELECT try.seat_id, try.number AS try_number, try.late, try.kept, try.written, step.step, step.moment_ms, step.at_ms
    FROM try JOIN step ON step.try_key = try.key WHERE try.round_id = ? ORDER BY try.seat_id, try.number, step.number`)
  const session = of('SELECT teacher_id FROM desk_session WHERE token_hash = ? AND opened_ms >= ?')
  const alive = of("SELECT value FROM meta WHERE name = 'alive_ms'")

  function readRound(row: RoundRow): StoredRound {
    const eventRows = events.all(row.id) as EventRow[]
    return {
      roundId: row.id as RoundId,
      number: row.number,
      settings: settingsOf(row),
      start: row.start,
      events: eventRows.map((each) => JSON.parse(each.event) as ClockEvent),
      lastEventAtMs: eventRows.at(-1)?.at_ms ?? 0,
      tries: (tries.all(row.id) as TryRow[]).map((each) => ({
        seatId: each.seat_id as SeatId,
        tryNumber: each.number,
        late: each.late === 1,
        how: howOf(each),
        atMs: each.opened_ms,
      })),
      steps: (steps.all(row.id) as StepRow[]).map((each) => ({
        seatId: each.seat_id as SeatId,
        tryNumber: each.try_number,
        late: each.late === 1,
        how: howOf(each),
        step: each.step as Step,
        momentMs: each.moment_ms,
        atMs: each.at_ms,
      })),
      parShown: row.par_shown === 1,
      nudges: (nudges.all(row.id) as NudgeRow[]).map((each) => ({
        seatId: each.seat_id as SeatId,
        tryNumber: each.try_number,
        afterSteps: each.after_steps,
        nudge: JSON.parse(each.nudge) as Nudge,
        atMs: each.at_ms,
      })),
      handedIn: (handedIn.all(row.id) as HandedInRow[]).map((each) => ({
        seatId: each.seat_id as SeatId,
        tryNumber: each.try_number,
        steps: JSON.parse(each.steps) as Step[],
      })),
    }
  }

  function readInList(row: RoundRow): RoundOnRecord {
    const last = lastEvent.get(row.id) as { event: string } | undefined
    const isVoid = last !== undefined && (JSON.parse(last.event) as ClockEvent).kind === 'voided'
    return { roundId: row.id as RoundId, number: row.number, settings: settingsOf(row), isVoid }
  }

  function readSeat(row: SeatRow): StoredSeat {
    return {
      seatId: row.id as SeatId,
      name: row.name,
      tokenHash: row.token_hash,
      pretend: row.pretend === 1,
      pupilId: row.pupil_id,
      joinedAtMs: row.joined_ms,
    }
  }

  return {
    openRooms() {
      return (rooms.all() as RoomRow[]).map((row) => {
        const all = rounds.all(row.id) as RoundRow[]
        return {
          roomId: row.id as RoomId,
          code: row.code as RoomCode,
          teacherId: row.teacher_id as TeacherId,
          viewerKey: row.viewer_key,
          locked: row.locked === 1,
          settings: settingsOf(row),
          openedAtMs: row.opened_ms,
          seats: (seats.all(row.id) as SeatRow[]).map(readSeat),
          entry: row.entry === null ? DEFAULT_ROOM_ENTRY : (JSON.parse(row.entry) as RoomEntry),
          plan: row.plan === null ? null : (JSON.parse(row.plan) as PlanUnderWay),
          deadlineMs: row.deadline_ms,
          rounds: all.map(readInList),
          held: (row.deadline_ms === null ? all.slice(-1) : all).map(readRound),
        }
      })
    },
    round(roundId) {
      const row = round.get(roundId) as RoundRow | undefined
      return row === undefined ? null : readRound(row)
    },
    shelf() {
      return {
        plans: (plans.all() as PlanRow[]).map((row) => ({
          planId: row.id,
          teacherId: row.teacher_id as TeacherId,
          plan: JSON.parse(row.plan) as LessonPlan,
          keptAtMs: row.kept_ms,
        })),
        rosters: (rosters.all() as RosterRow[]).map((row) => ({
          rosterId: row.id,
          teacherId: row.teacher_id as TeacherId,
          roster: JSON.parse(row.roster) as ClassRoster,
          keptAtMs: row.kept_ms,
        })),
      }
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

function settingsOf(row: { settings: string }): RoundSettings {
  return withLaterSettings(JSON.parse(row.settings) as Partial<RoundSettings>)
}

function howOf(row: { kept: number; written: number }): HowSent {
  return { kept: row.kept === 1, written: row.written === 1 }
}
