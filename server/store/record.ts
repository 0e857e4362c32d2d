/**
 * The durable record: what the server knows after it has been killed. One interface; SQLite stands behind it today.
 *
 * The record is append-only where the contest is concerned: rounds, their clock events and the steps of tries are added,
 * never changed. Only facts about people and rooms (a name, a lock, a closing) are updated in place, because they must be
 * erasable. A promise of `write` settles when its entry is on the disk (synced), not before: only then may anybody be told.
 *
 * The record is also the arbiter. A step is stored only if it directly follows the last one of its try and if its round is
 * not closed; a clock event only if its number is the next one. So two tabs, two retries or two nodes can never both win.
 */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { GivenNudge } from '../../engine/contest/nudges.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { HowSent } from '../../engine/contest/round-state.ts'
import type { Step } from '../../engine/contest/steps.ts'

export type Entry =
  | { kind: 'desk-session'; tokenHash: string; teacherId: TeacherId; atMs: number }
  | {
      kind: 'room-opened'
      roomId: RoomId
      code: RoomCode
      teacherId: TeacherId
      viewerKey: string
      settings: RoundSettings
      atMs: number
    }
  | { kind: 'room-settings'; roomId: RoomId; settings: RoundSettings }
  | { kind: 'room-locked'; roomId: RoomId; locked: boolean }
  | { kind: 'room-entry'; roomId: RoomId; entry: RoomEntry }
  | { kind: 'room-plan'; roomId: RoomId; plan: PlanUnderWay | null }
  | { kind: 'room-deadline'; roomId: RoomId; deadlineMs: number }
  | { kind: 'room-closed'; roomId: RoomId; atMs: number }
  | {
      kind: 'seat-joined'
      seatId: SeatId
      roomId: RoomId
      name: string
      tokenHash: string
      pretend: boolean
      pupilId: string | null
      atMs: number
    }
  /** Another device holds the seat from now on: the token of the one before finds nothing any more. */
  | { kind: 'seat-moved'; seatId: SeatId; tokenHash: string }
  | { kind: 'seat-renamed'; seatId: SeatId; name: string }
  | { kind: 'seat-removed'; seatId: SeatId; atMs: number }
  | {
      kind: 'round-drawn'
      roundId: RoundId
      roomId: RoomId
      number: number
      settings: RoundSettings
      start: string
      atMs: number
    }
  /** `order` counts the clock events of a round from 0. An event that ends or voids the round closes it for steps. */
  | { kind: 'clock-event'; roundId: RoundId; order: number; event: ClockEvent; atMs: number }
  | StepsEntry
  | { kind: 'par-shown'; roundId: RoundId; shown: boolean }
  | ({ kind: 'nudge'; roundId: RoundId; seatId: SeatId } & GivenNudge)
  /** A whole try that came in after the end; the last one of a student counts. */
  | {
      kind: 'handed-in'
      roundId: RoundId
      seatId: SeatId
      tryNumber: number
      steps: readonly Step[]
      atMs: number
    }
  | { kind: 'plan-kept'; planId: string; teacherId: TeacherId; plan: LessonPlan; atMs: number }
  | { kind: 'plan-removed'; planId: string; teacherId: TeacherId }
  | { kind: 'roster-kept'; rosterId: string; teacherId: TeacherId; roster: ClassRoster; atMs: number }
  | { kind: 'roster-removed'; rosterId: string; teacherId: TeacherId }
  /** Erases the names and tokens of rooms that were closed before that moment; their turns stay without them. */
  | { kind: 'names-forgotten'; closedBeforeMs: number }
  /** "I was alive at": read after a crash, to take the outage out of the clocks. */
  | { kind: 'alive'; atMs: number }

/** A lesson plan, and the part of it that the class is at. */
export type PlanUnderWay = { readonly plan: LessonPlan; readonly at: number }

export type StepsEntry = {
  kind: 'steps'
  roundId: RoundId
  seatId: SeatId
  tryNumber: number
  /** Steps of this try that are on record before these. */
  from: number
  steps: readonly Step[]
  late: boolean
  how: HowSent
  /** Played milliseconds of the round's clock, so that a replay needs no clock. */
  momentMs: number
  atMs: number
}

/** `stored`: it is on the disk. `closed`: its round is over. `conflict`: somebody else has written there, or a step is missing before it. */
export type Outcome = 'stored' | 'closed' | 'conflict'

export type StoredSeat = {
  seatId: SeatId
  name: string
  tokenHash: string
  pretend: boolean
  pupilId: string | null
  joinedAtMs: number
}

export type StoredSteps = {
  seatId: SeatId
  tryNumber: number
  late: boolean
  how: HowSent
  step: Step
  momentMs: number
  atMs: number
}

export type StoredRound = {
  roundId: RoundId
  number: number
  settings: RoundSettings
  start: string
  events: readonly ClockEvent[]
  /** When the last of them was stored: a sign of life of the server. 0 without one. */
  lastEventAtMs: number
  /** Tries without a step are here too, so that a start-again is not forgotten. */
  tries: readonly { seatId: SeatId; tryNumber: number; late: boolean; how: HowSent; atMs: number }[]
  /** By seat, try and number. */
  steps: readonly StoredSteps[]
  parShown: boolean
  /** In the order in which they were sent. */
  nudges: readonly ({ seatId: SeatId } & GivenNudge)[]
  handedIn: readonly { seatId: SeatId; tryNumber: number; steps: readonly Step[] }[]
}

/** A round of a room, as a list needs it. */
export type RoundOnRecord = {
  roundId: RoundId
  number: number
  settings: RoundSettings
  isVoid: boolean
}

/** Everything that all teachers have put by. `keptAtMs`: when it was put by first; a change leaves it. */
export type StoredShelf = {
  plans: readonly { planId: string; teacherId: TeacherId; plan: LessonPlan; keptAtMs: number }[]
  rosters: readonly { rosterId: string; teacherId: TeacherId; roster: ClassRoster; keptAtMs: number }[]
}

export type StoredRoom = {
  roomId: RoomId
  code: RoomCode
  teacherId: TeacherId
  viewerKey: string
  locked: boolean
  settings: RoundSettings
  openedAtMs: number
  seats: readonly StoredSeat[]
  entry: RoomEntry
  plan: PlanUnderWay | null
  deadlineMs: number | null
  /** All rounds, the first one first. */
  rounds: readonly RoundOnRecord[]
  /** The rounds to hold: of a take-home room all of them, of any other the one that is or was played last. */
  held: readonly StoredRound[]
}

/** Writing failed as a whole: the disk is full, gone or read-only. Nothing of the entry is stored. */
export class SavingPaused extends Error {}

export interface DurableRecord {
  /** Queues an entry; entries are committed in the order in which they were queued, many at a time. Rejects with `SavingPaused`. */
  write(entry: Entry): Promise<Outcome>
  /** Every room that has not been closed, with its last round. */
  loadOpenRooms(): Promise<StoredRoom[]>
  /** A round of an open room, or null. */
  loadRound(roundId: RoundId): Promise<StoredRound | null>
  loadShelf(): Promise<StoredShelf>
  /** The teacher of a desk session that was opened since that moment, or null. */
  teacherOfSession(tokenHash: string, openedSinceMs: number): Promise<TeacherId | null>
  /** The last moment at which the server is known to have been alive, or null in a new record. */
  lastAliveMs(): Promise<number | null>
  /** Whether the last commit succeeded. */
  readonly saving: boolean
  /** Tells when `saving` changes; returns the stop. */
  onSavingChanged(listener: (saving: boolean) => void): () => void
  /** Commits what is queued, then lets go of the file. */
  close(): Promise<void>
}
