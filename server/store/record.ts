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
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
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
  | { kind: 'room-closed'; roomId: RoomId; atMs: number }
  | {
      kind: 'seat-joined'
      seatId: SeatId
      roomId: RoomId
      name: string
      tokenHash: string
      pretend: boolean
      atMs: number
    }
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
  /** Erases the names and tokens of rooms that were closed before that moment; their turns stay without them. */
  | { kind: 'names-forgotten'; closedBeforeMs: number }
  /** "I was alive at": read after a crash, to take the outage out of the clocks. */
  | { kind: 'alive'; atMs: number }

export type StepsEntry = {
  kind: 'steps'
  roundId: RoundId
  seatId: SeatId
  tryNumber: number
  /** Steps of this try that are on record before these. */
  from: number
  steps: readonly Step[]
  late: boolean
  /** Played milliseconds of the round's clock, so that a replay needs no clock. */
  momentMs: number
  atMs: number
}

/** `stored`: it is on the disk. `closed`: its round is over. `conflict`: somebody else has written there, or a step is missing before it. */
export type Outcome = 'stored' | 'closed' | 'conflict'

export type StoredSeat = { seatId: SeatId; name: string; tokenHash: string; pretend: boolean; joinedAtMs: number }

export type StoredSteps = {
  seatId: SeatId
  tryNumber: number
  late: boolean
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
  tries: readonly { seatId: SeatId; tryNumber: number; late: boolean; atMs: number }[]
  /** By seat, try and number. */
  steps: readonly StoredSteps[]
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
  /** The round that is or was played last. */
  lastRound: StoredRound | null
}

/** Writing failed as a whole: the disk is full, gone or read-only. Nothing of the entry is stored. */
export class SavingPaused extends Error {}

export interface DurableRecord {
  /** Queues an entry; entries are committed in the order in which they were queued, many at a time. Rejects with `SavingPaused`. */
  write(entry: Entry): Promise<Outcome>
  /** Every room that has not been closed, with its last round. */
  loadOpenRooms(): Promise<StoredRoom[]>
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
