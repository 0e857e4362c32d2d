/** Writes entries into the tables. Runs inside one transaction per batch, in the writer's thread. */

import type Database from 'better-sqlite3'
import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { Entry, Outcome, StepsEntry } from './record.ts'

/** Tries whose key and length are remembered between batches: twice the students of a busy school. */
const REMEMBERED_TRIES_MAX = 4_096

export type Committer = {
  /** Commits all entries or none. Throws when the disk refuses; then nothing of the batch is stored. */
  commit(entries: readonly Entry[]): Outcome[]
}

export function makeCommitter(database: Database.Database): Committer {
  const sql = statements(database)
  /** Key and number of stored steps by try, so that a turn costs one insert. */
  const tries = new Map<string, { key: number; nSteps: number }>()

  function storeSteps(entry: StepsEntry): Outcome {
    const round = sql.roundClosed.get(entry.roundId) as { closed_ms: number | null } | undefined
    if (round === undefined) return 'conflict'
    if (round.closed_ms !== null) return 'closed'
    const known = tryOf(entry)
    if (known === null || known.nSteps !== entry.from) return 'conflict'
    for (const [index, step] of entry.steps.entries()) {
      sql.addStep.run(known.key, entry.from + index, step, entry.momentMs, entry.atMs)
    }
    known.nSteps += entry.steps.length
    const { kept, written } = entry.how
    if (kept || written) sql.markTry.run(kept ? 1 : 0, written ? 1 : 0, known.key)
    return 'stored'
  }

  /** The try of these steps, opened if they are its first; null when there is no such try and they are not. */
  function tryOf(entry: StepsEntry): { key: number; nSteps: number } | null {
    const { roundId, seatId, tryNumber } = entry
    const name = `${roundId} ${seatId} ${tryNumber}`
    const known = tries.get(name)
    if (known !== undefined) return known
    let found = sql.findTry.get(roundId, seatId, tryNumber) as { key: number; n_steps: number } | undefined
    if (found === undefined) {
      const { last } = sql.lastTry.get(roundId, seatId) as { last: number | null }
      // Who starts again before the first turn leaves no first try behind.
      const isNext = tryNumber === (last ?? 1) + 1 || (last === null && tryNumber === 1)
      if (entry.from > 0 || !isNext) return null
      const opened = sql.addTry.run(roundId, seatId, tryNumber, entry.late ? 1 : 0, entry.atMs)
      found = { key: Number(opened.lastInsertRowid), n_steps: 0 }
    }
    if (tries.size >= REMEMBERED_TRIES_MAX) tries.clear()
    const remembered = { key: found.key, nSteps: found.n_steps }
    tries.set(name, remembered)
    return remembered
  }

  function storeClockEvent(entry: Extract<Entry, { kind: 'clock-event' }>): Outcome {
    const next = sql.nextOrdinal.get(entry.roundId) as { next: number }
    if (next.next !== entry.order) return 'conflict'
    const round = sql.roundClosed.get(entry.roundId) as { closed_ms: number | null } | undefined
    if (round === undefined) return 'conflict'
    // What has ended can still be struck out, and nothing else.
    if (round.closed_ms !== null && entry.event.kind !== 'voided') return 'closed'
    sql.addClockEvent.run(entry.roundId, entry.order, JSON.stringify(entry.event), entry.atMs)
    if (closes(entry.event)) sql.closeRound.run(entry.atMs, entry.roundId)
    return 'stored'
  }

  function store(entry: Entry): Outcome {
    switch (entry.kind) {
      case 'steps':
        return storeSteps(entry)
      case 'clock-event':
        return storeClockEvent(entry)
      case 'round-drawn':
        return changed(
          sql.addRound.run(
            entry.roundId,
            entry.roomId,
            entry.number,
            JSON.stringify(entry.settings),
            entry.start,
            entry.atMs,
          ),
        )
      case 'seat-joined':
        return changed(
          sql.addSeat.run(
            entry.seatId,
            entry.roomId,
            entry.name,
            entry.tokenHash,
            entry.pretend ? 1 : 0,
            entry.pupilId,
            entry.atMs,
          ),
        )
      case 'seat-moved':
        return changed(sql.moveSeat.run(entry.tokenHash, entry.seatId))
      case 'seat-renamed':
        return changed(sql.renameSeat.run(entry.name, entry.seatId))
      case 'seat-removed':
        return changed(sql.removeSeat.run(entry.atMs, entry.seatId))
      case 'room-opened':
        return changed(
          sql.addRoom.run(
            entry.roomId,
            entry.code,
            entry.teacherId,
            entry.viewerKey,
            JSON.stringify(entry.settings),
            entry.atMs,
          ),
        )
      case 'room-settings':
        return changed(sql.setRoom.run(JSON.stringify(entry.settings), entry.roomId))
      case 'room-locked':
        return changed(sql.lockRoom.run(entry.locked ? 1 : 0, entry.roomId))
      case 'room-entry':
        return changed(sql.setEntry.run(JSON.stringify(entry.entry), entry.roomId))
      case 'room-plan':
        return changed(sql.setPlan.run(entry.plan === null ? null : JSON.stringify(entry.plan), entry.roomId))
      case 'room-deadline':
        return changed(sql.setDeadline.run(entry.deadlineMs, entry.roomId))
      case 'par-shown':
        return changed(sql.showPar.run(entry.shown ? 1 : 0, entry.roundId))
      case 'nudge':
        return changed(
          sql.addNudge.run(
            entry.roundId,
            entry.seatId,
            entry.tryNumber,
            entry.afterSteps,
            JSON.stringify(entry.nudge),
            entry.atMs,
          ),
        )
      case 'handed-in':
        return changed(
          sql.handIn.run(entry.roundId, entry.seatId, entry.tryNumber, JSON.stringify(entry.steps), entry.atMs),
        )
      case 'plan-kept':
        return changed(sql.keepPlan.run(entry.planId, entry.teacherId, JSON.stringify(entry.plan), entry.atMs))
      case 'plan-removed':
        return changed(sql.removePlan.run(entry.planId, entry.teacherId))
      case 'roster-kept':
        return changed(sql.keepRoster.run(entry.rosterId, entry.teacherId, JSON.stringify(entry.roster), entry.atMs))
      case 'roster-removed':
        return changed(sql.removeRoster.run(entry.rosterId, entry.teacherId))
      case 'room-closed':
        return changed(sql.closeRoom.run(entry.atMs, entry.roomId))
      case 'desk-session':
        return changed(sql.addSession.run(entry.tokenHash, entry.teacherId, entry.atMs))
      case 'names-forgotten':
        sql.forgetNames.run(entry.closedBeforeMs)
        return 'stored'
      case 'alive':
        return changed(sql.setAlive.run(String(entry.atMs)))
      default:
        return entry satisfies never
    }
  }

  const inOneTransaction = database.transaction((entries: readonly Entry[]) => entries.map(store))
  const one = database.transaction(store)
  const apart = database.transaction((entries: readonly Entry[]) =>
    entries.map((entry) => {
      try {
        return one(entry)
      } catch (fault) {
        if (!isAgainstTheTables(fault)) throw fault
        tries.clear()
        return 'conflict'
      }
    }),
  )

  return {
    commit(entries) {
      try {
        return inOneTransaction(entries)
      } catch (fault) {
        // What was remembered may never have been stored.
        tries.clear()
        if (!isAgainstTheTables(fault)) throw fault
        // One entry that cannot be stored must not cost the others of its commit anything.
        return apart(entries)
      }
    },
  }
}

/** The entry is wrong, not the disk. */
function isAgainstTheTables(fault: unknown): boolean {
  return ((fault as { code?: string }).code ?? '').startsWith('SQLITE_CONSTRAINT')
}

function closes(event: ClockEvent): boolean {
  return event.kind === 'ended' || event.kind === 'voided'
}

function changed(result: Database.RunResult): Outcome {
  return result.changes === 0 ? 'conflict' : 'stored'
}

function statements(database: Database.Database) {
  const of = (text: string) => database.prepare(text)
  return {
    roundClosed: of('SELECT closed_ms FROM round WHERE id = ?'),
    addTry: of('INSERT INTO try (round_id, seat_id, number, late, opened_ms) VALUES (?, ?, ?, ?, ?)'),
    findTry: of(
      'SELECT key, (SELECT count(*) FROM step WHERE try_key = key) AS n_steps FROM try WHERE round_id = ? AND seat_id = ? AND number = ?',
    ),
    lastTry: of('SELECT max(number) AS last FROM try WHERE round_id = ? AND seat_id = ?'),
    addStep: of('INSERT INTO step (try_key, number, step, moment_ms, at_ms) VALUES (?, ?, ?, ?, ?)'),
    nextOrdinal: of('SELECT count(*) AS next FROM clock_event WHERE round_id = ?'),
    addClockEvent: of('INSERT INTO clock_event (round_id, ordinal, event, at_ms) VALUES (?, ?, ?, ?)'),
    closeRound: of('UPDATE round SET closed_ms = ? WHERE id = ? AND closed_ms IS NULL'),
    addRound: of(
      'INSERT OR IGNORE INTO round (id, room_id, number, settings, start, drawn_ms) VALUES (?, ?, ?, ?, ?, ?)',
    ),
    addSeat: of(
      'INSERT OR IGNORE INTO seat (id, room_id, name, token_hash, pretend, pupil_id, joined_ms) VALUES (?, ?, ?, ?, ?, ?, ?)',
    ),
    moveSeat: of('UPDATE seat SET token_hash = ? WHERE id = ? AND removed_ms IS NULL'),
    markTry: of('UPDATE try SET kept = max(kept, ?), written = max(written, ?) WHERE key = ?'),
    setEntry: of('UPDATE room SET entry = ? WHERE id = ?'),
    setPlan: of('UPDATE room SET plan = ? WHERE id = ?'),
    setDeadline: of('UPDATE room SET deadline_ms = ? WHERE id = ?'),
    showPar: of('UPDATE round SET par_shown = ? WHERE id = ?'),
    addNudge: of(
      'INSERT INTO nudge (round_id, seat_id, try_number, after_steps, nudge, at_ms) VALUES (?, ?, ?, ?, ?, ?)',
    ),
    handIn: of(
      'INSERT INTO handed_in (round_id, seat_id, try_number, steps, at_ms) VALUES (?, ?, ?, ?, ?) ON CONFLICT (round_id, seat_id) DO UPDATE SET try_number = excluded.try_number, steps = excluded.steps, at_ms = excluded.at_ms',
    ),
    keepPlan: of(
      'INSERT INTO lesson_plan (id, teacher_id, plan, kept_ms) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET plan = excluded.plan WHERE lesson_plan.teacher_id = excluded.teacher_id',
    ),
    removePlan: of('DELETE FROM lesson_plan WHERE id = ? AND teacher_id = ?'),
    keepRoster: of(
      'INSERT INTO class_roster (id, teacher_id, roster, kept_ms) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET roster = excluded.roster WHERE class_roster.teacher_id = excluded.teacher_id',
    ),
    removeRoster: of('DELETE FROM class_roster WHERE id = ? AND teacher_id = ?'),
    renameSeat: of('UPDATE seat SET name = ? WHERE id = ? AND removed_ms IS NULL'),
    removeSeat: of("UPDATE seat SET removed_ms = ?, name = '', token_hash = '' WHERE id = ? AND removed_ms IS NULL"),
    forgetNames: of(
      "UPDATE seat SET name = '', token_hash = '' WHERE name <> '' AND room_id IN (SELECT id FROM room WHERE closed_ms < ?)",
    ),
    addRoom: of(
      'INSERT OR IGNORE INTO room (id, code, teacher_id, viewer_key, settings, opened_ms) VALUES (?, ?, ?, ?, ?, ?)',
    ),
    setRoom: of('UPDATE room SET settings = ? WHERE id = ?'),
    lockRoom: of('UPDATE room SET locked = ? WHERE id = ?'),
    closeRoom: of('UPDATE room SET closed_ms = ? WHERE id = ? AND closed_ms IS NULL'),
    addSession: of('INSERT OR IGNORE INTO desk_session (token_hash, teacher_id, opened_ms) VALUES (?, ?, ?)'),
    setAlive: of(
      "INSERT INTO meta (name, value) VALUES ('alive_ms', ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
    ),
  }
}
