/**
 * Every message from a browser, as a schema. Each is one object with exactly these keys; the answer comes through the
 * acknowledgement as `Answer<T>`. PROTOCOL.md shows a round in messages.
 */

import { z } from 'zod'
import type { RoomId, RoundId, SeatId } from '../contest/ids.ts'
import {
  ADDED_TIME_MS_MAX,
  MESSAGE_STEPS_MAX,
  ROOM_SEATS_MAX,
  TAKE_HOME_ROUNDS_MAX,
  TRIES_MAX,
  TRY_STEPS_MAX,
} from '../contest/limits.ts'
import { NUDGE_WORDS, PIECE_NAMES } from '../contest/nudges.ts'
import { lessonPlanSchema } from '../contest/plans/lesson-plan.ts'
import { NAME_WAYS } from '../contest/room-entry.ts'
import { classRosterSchema } from '../contest/rosters/class-roster.ts'
import type { Reached } from '../contest/round-state.ts'
import { STEP_NAMES } from '../contest/steps.ts'
import type { TurnsAnswer } from '../contest/take-turns.ts'
import { HINT_LEVELS } from '../method/way/hint-level.ts'
import type { Result } from '../result.ts'
import { ID_LENGTH_MAX, SECRET_LENGTH_MAX, TYPED_CODE_LENGTH_MAX, TYPED_NAME_LENGTH_MAX } from './limits.ts'
import type { Refusal } from './refusal.ts'
import { roundSettingsSchema } from './round-settings-schema.ts'
import { showingAtSchema, shownSchema } from './shown.ts'
import type { BenchView, BoardView, DeskHome, DeskView, Door, ReviewView, Shelf, TryLook } from './views.ts'

const id = z.string().min(1).max(ID_LENGTH_MAX)
const roomId = id.transform((text) => text as RoomId)
const roundId = id.transform((text) => text as RoundId)
const seatId = id.transform((text) => text as SeatId)
const secret = z.string().min(1).max(SECRET_LENGTH_MAX)
const typedName = z.string().max(TYPED_NAME_LENGTH_MAX)
const typedCode = z.string().max(TYPED_CODE_LENGTH_MAX)
const steps = z.enum(STEP_NAMES)
const tryNumber = z
  .int()
  .min(1)
  .max(TRIES_MAX + 1)
const nudge = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('hint'), level: z.literal([...HINT_LEVELS]) }),
  z.strictObject({ kind: z.literal('words'), words: z.enum(NUDGE_WORDS) }),
  z.strictObject({ kind: z.literal('point'), piece: z.enum(PIECE_NAMES as [string, ...string[]]) }),
])

/** The schema of each message, by its name. */
export const FROM_BROWSER = {
  /** Asks the time, several times after connecting; from the answers the page estimates how its clock differs. */
  'clock:ask': z.strictObject({}),

  /** What the door of a room asks for: a name of one's own, one from a list, or none. */
  'room:ask': z.strictObject({ code: typedCode }),
  /** A student comes in. Where the teacher opens the door, or another device holds the name, the answer is `waiting`. */
  'seat:join': z.strictObject({
    code: typedCode,
    /** Typed; left out where the room gives names, or a pupil is picked. */
    name: typedName.optional(),
    /** From the roster. */
    pupilId: id.optional(),
    /** "That is me, on another device": asks the teacher to let this one take the seat over. */
    moves: z.boolean().optional(),
    /** The seat's secret, when the page has made one: then asking again, because the answer was lost, takes no second seat. */
    token: z
      .string()
      .regex(/^[\w-]{43}$/)
      .optional(),
  }),
  /** A student comes back: after a reload, on a lost connection, in another tab. The newest connection holds the seat. */
  'seat:resume': z.strictObject({ token: secret }),
  /** Whoever waits at the door goes away. */
  'seat:give-up': z.strictObject({}),
  /** Steps of a try. `from` counts the steps of this try that came before. */
  'turns:send': z.strictObject({
    roundId,
    tryNumber,
    from: z.int().min(0).max(TRY_STEPS_MAX),
    steps: z.array(steps).max(MESSAGE_STEPS_MAX),
    /** They were kept on the device while there was no connection. Only a mark: moments are the server's. */
    kept: z.boolean().optional(),
    /** They were made on a real cube and written down. */
    written: z.boolean().optional(),
  }),
  /** A whole try that was made without a connection, after the round has ended: judged and shown, never ranked. */
  'turns:hand-in': z.strictObject({ roundId, tryNumber, steps: z.array(steps).min(1).max(TRY_STEPS_MAX) }),
  /** "My cube is ready": a real cube shows the start. */
  'cube:ready': z.strictObject({ roundId, ready: z.boolean() }),
  /** In a take-home room: which of its rounds to play. */
  'round:choose': z.strictObject({ roundId }),
  /** "I am stuck", or no longer. */
  'help:ask': z.strictObject({ wanted: z.boolean() }),
  /** Gives the seat up and forgets its token. */
  'seat:leave': z.strictObject({}),

  'viewer:enter': z.strictObject({ key: secret }),
  /** The viewer met a gap in the versions and asks for the whole view. */
  'viewer:again': z.strictObject({}),

  'desk:enter': z.strictObject({}),
  'room:open': z.strictObject({}),
  /** Watch this room from the desk; the answer is the whole view, ticks follow. Also asked after a gap. */
  'room:watch': z.strictObject({ roomId }),
  'room:set': z.strictObject({ roomId, settings: roundSettingsSchema }),
  'room:lock': z.strictObject({ roomId, locked: z.boolean() }),
  'room:entry': z.strictObject({
    roomId,
    entry: z
      .strictObject({ names: z.enum(NAME_WAYS), rosterId: id.nullable(), approve: z.boolean() })
      .refine(({ names, rosterId }) => (names === 'roster') === (rosterId !== null), { path: ['rosterId'] }),
  }),
  /** The plan of this lesson, or none. */
  'room:use-plan': z.strictObject({ roomId, plan: lessonPlanSchema.nullable() }),
  /** The part of the plan that the class is at; a round's settings become those of the next round. */
  'room:plan-at': z.strictObject({ roomId, at: z.int().min(0) }),
  /** Makes the room one to play in alone, for days: all rounds are dealt and open at once, until the deadline. */
  'room:take-home': z.strictObject({
    roomId,
    rounds: z.array(roundSettingsSchema).min(1).max(TAKE_HOME_ROUNDS_MAX),
    deadlineMs: z.int().min(0),
  }),
  /** In a take-home room: which round desk and board look at. */
  'room:look-at': z.strictObject({ roomId, roundId }),
  'room:close': z.strictObject({ roomId }),
  'seat:remove': z.strictObject({ roomId, seatId }),
  'seat:rename': z.strictObject({ roomId, seatId, name: typedName }),
  /** Opens the door for whoever waits there, or not. */
  'knock:answer': z.strictObject({ roomId, knockId: id, letIn: z.boolean() }),
  /** What one student has turned so far, for the teacher alone. */
  'seat:look': z.strictObject({ roomId, roundId, seatId }),
  'nudge:send': z.strictObject({
    roomId,
    roundId,
    to: z.union([z.literal('all'), z.array(seatId).min(1).max(ROOM_SEATS_MAX)]),
    nudge,
  }),
  'plan:keep': z.strictObject({ planId: id.nullable(), plan: lessonPlanSchema }),
  'plan:remove': z.strictObject({ planId: id }),
  'roster:keep': z.strictObject({ rosterId: id.nullable(), roster: classRosterSchema }),
  'roster:remove': z.strictObject({ rosterId: id }),
  /** What the class is shown; null ends it. */
  'show:whole': z.strictObject({ roomId, shown: shownSchema.nullable(), at: showingAtSchema }),
  'show:at': z.strictObject({ roomId, at: showingAtSchema }),
  /** All solutions of a round of this room, for the teacher to choose from. */
  'review:ask': z.strictObject({ roomId, roundId }),
  /** Deals the next round without a signal, so that real cubes can be brought to its start first. */
  'round:deal': z.strictObject({ roomId, number: z.int().min(1) }),
  /** Seats simulated students, or sends them home. */
  'pretend:seat': z.strictObject({ roomId, seated: z.boolean() }),
  /** Deals the next round and gives the signal. `number` makes pressing twice start one round only. */
  'round:start': z.strictObject({ roomId, number: z.int().min(1) }),
  'round:pause': z.strictObject({ roomId, roundId }),
  'round:resume': z.strictObject({ roomId, roundId }),
  'round:add-time': z.strictObject({ roomId, roundId, addedMs: z.int().min(1).max(ADDED_TIME_MS_MAX) }),
  /** Shows par to the class before the end, or hides it again. */
  'round:show-par': z.strictObject({ roomId, roundId, shown: z.boolean() }),
  'round:end': z.strictObject({ roomId, roundId }),
  'round:void': z.strictObject({ roomId, roundId }),
} as const

/** The name of a message from a browser. */
export type MessageName = keyof typeof FROM_BROWSER
/** A message as the server has parsed it. */
export type Parsed<Name extends MessageName> = z.output<(typeof FROM_BROWSER)[Name]>
/** A message as a browser sends it. */
export type Sent<Name extends MessageName> = z.input<(typeof FROM_BROWSER)[Name]>

/** What the server answers to each message when it does not refuse. */
export type Answers = {
  'clock:ask': { serverMs: number }
  'room:ask': { door: Door }
  'seat:join': { kind: 'in'; token: string; bench: BenchView } | { kind: 'waiting' }
  'seat:give-up': Done
  'seat:resume': { bench: BenchView }
  'turns:send': TurnsAnswer
  'turns:hand-in': { reached: Reached | null }
  'cube:ready': Done
  'round:choose': { bench: BenchView }
  'help:ask': Done
  'seat:leave': Done
  'viewer:enter': { board: BoardView }
  'viewer:again': { board: BoardView }
  'desk:enter': { home: DeskHome; shelf: Shelf }
  'room:open': { desk: DeskView }
  'room:watch': { desk: DeskView }
  'room:set': Done
  'room:lock': Done
  'room:entry': Done
  'room:use-plan': Done
  'room:plan-at': Done
  'room:take-home': Done
  'room:look-at': Done
  'room:close': Done
  'seat:remove': Done
  'seat:rename': Done
  'knock:answer': Done
  'seat:look': { look: TryLook }
  'nudge:send': Done
  'plan:keep': { planId: string }
  'plan:remove': Done
  'roster:keep': { rosterId: string }
  'roster:remove': Done
  'show:whole': Done
  'show:at': Done
  'review:ask': { review: ReviewView }
  'pretend:seat': Done
  'round:deal': { roundId: RoundId }
  'round:start': { roundId: RoundId }
  'round:pause': Done
  'round:resume': Done
  'round:add-time': Done
  'round:show-par': Done
  'round:end': Done
  'round:void': Done
}
/** An answer that says no more than that it was done. */
export type Done = Record<never, never>

/** What comes back through the acknowledgement of a message. */
export type Answer<T> = Result<T, Refusal>

/** The event map that Socket.IO types the connection with. */
export type BrowserEvents = {
  [Name in MessageName]: (message: Sent<Name>, answer: (answer: Answer<Answers[Name]>) => void) => void
}
