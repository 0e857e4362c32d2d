/**
 * Every way in which the server says no, as one closed list. Codes are `area/reason`, cross the wire unchanged, and are
 * turned into words only by the language catalogue; the compiler checks that every code has some.
 */

import type { ContestRefusal } from '../contest/contest-refusal.ts'
import type { NameRefusal } from '../contest/student-name.ts'

/** The message itself, whoever sent it. */
export type WireRefusal =
  /** The page speaks another version of the protocol. Do: reload the page. */
  | { readonly code: 'wire/out-of-date'; readonly server: number }
  /** The message fits no schema. `at` names the field. Do: reload the page; report it when it stays. */
  | { readonly code: 'wire/malformed'; readonly at: string }
  /** No message has this name. Do: reload the page. */
  | { readonly code: 'wire/unknown-message' }
  /** More messages than fingers can make. Do: wait `retryAfterMs`. */
  | { readonly code: 'wire/too-fast'; readonly retryAfterMs: number }

/** A room: finding it, coming in, and what a teacher wants of it. */
export type RoomRefusal =
  /** No open room has this code. Do: read the code again. */
  | { readonly code: 'room/unknown-code' }
  /** Many wrong codes came in a short time. Do: wait `retryAfterMs`, then read the code again. */
  | { readonly code: 'room/too-many-wrong-codes'; readonly retryAfterMs: number }
  /** The teacher has locked the room. Do: ask the teacher. */
  | { readonly code: 'room/locked' }
  /** The room has been closed. Do: ask for a new code. */
  | { readonly code: 'room/closed' }
  /** Do: ask the teacher to open another room. */
  | { readonly code: 'room/full'; readonly max: number }
  /** No such room at this desk. Do: choose a room from the list. */
  | { readonly code: 'room/not-yours' }
  /** No such student in this room. */
  | { readonly code: 'room/no-such-seat' }
  /** A round is still open. Do: end it first. */
  | { readonly code: 'room/round-open' }
  /** The room has had its most rounds. Do: open a new room. */
  | { readonly code: 'room/too-many-rounds'; readonly max: number }
  /** The chosen cases, pars and stage leave no start to deal. Do: choose more of them. */
  | { readonly code: 'room/no-such-start' }
  /** The room has no such part of a plan. Do: look at the desk again. */
  | { readonly code: 'room/no-such-part' }
  /** This is for rooms in which nothing has been played yet. Do: open another room. */
  | { readonly code: 'room/already-used' }
  /** In a take-home room every round is open already; and only there may a student choose. Do: look at the screen again. */
  | { readonly code: 'room/not-that-kind' }
  /** The deadline has passed already, or is too far off. Do: choose another day. */
  | { readonly code: 'room/bad-deadline' }
  /** This room takes names from its list. Do: pick one, or ask the teacher to add yours. */
  | { readonly code: 'room/pick-a-name' }
  /** Too many wait at the door. Do: wait until the teacher has looked. */
  | { readonly code: 'room/door-crowded'; readonly max: number }
  /** Nobody waits there any more. */
  | { readonly code: 'room/nobody-there' }
  /** No such lesson plan or roster at this desk. Do: choose one from the list. */
  | { readonly code: 'shelf/not-yours' }
  /** Do: remove some that you no longer use. */
  | { readonly code: 'shelf/full'; readonly max: number }

/** What a connection may not do, because it does not hold the seat, the desk or the viewer link. */
export type SeatRefusal =
  /** This connection has no seat in a room. Do: come in with the room code. */
  | { readonly code: 'seat/none' }
  /** The teacher has removed this seat, or it has never been. Do: come in again with the room code. */
  | { readonly code: 'seat/gone' }
  /** Another tab or device has taken this seat over. Do: go on there, or take it back here. */
  | { readonly code: 'seat/taken-over' }
  /** The desk is for teachers. Do: open the desk link that the server printed. */
  | { readonly code: 'desk/not-signed-in' }
  /** The link was used, is too old or is wrong. Do: start the server again; it prints a new one. */
  | { readonly code: 'desk/link-used' }
  /** The viewer link is wrong or the room has been closed. Do: open it again from the desk. */
  | { readonly code: 'viewer/no-such-room' }

/** Outages and faults of ours. */
export type StoreRefusal =
  /** Turns cannot be saved just now; nothing is lost, the page sends them again. Do: wait. */
  | { readonly code: 'store/saving-paused' }
  /** No answer: the server is closing, starting again or out of reach. Turns are sent again by themselves. Do: try once more. */
  | { readonly code: 'server/going-away' }
  /** A fault of ours. It has been logged. Do: try again. */
  | { readonly code: 'server/fault' }

/** Every refusal with its data. */
export type Refusal = WireRefusal | RoomRefusal | SeatRefusal | StoreRefusal | ContestRefusal | NameRefusal
/** Every code; the language catalogues have a sentence for each. */
export type RefusalCode = Refusal['code']
