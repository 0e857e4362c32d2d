/**
 * Every message from a browser, as a schema. Each is one object with exactly these keys; the answer comes through the
 * acknowledgement as `Answer<T>`. PROTOCOL.md shows a round in messages.
 */

import { z } from 'zod'
import type { RoomId, RoundId, SeatId } from '../contest/ids.ts'
import { ADDED_TIME_MS_MAX, MESSAGE_STEPS_MAX, TRIES_MAX, TRY_STEPS_MAX } from '../contest/limits.ts'
import { STEP_NAMES } from '../contest/steps.ts'
import type { TurnsAnswer } from '../contest/take-turns.ts'
import type { Result } from '../result.ts'
import { ID_LENGTH_MAX, SECRET_LENGTH_MAX, TYPED_CODE_LENGTH_MAX, TYPED_NAME_LENGTH_MAX } from './limits.ts'
import type { Refusal } from './refusal.ts'
import { roundSettingsSchema } from './round-settings-schema.ts'
import type { BenchView, BoardView, DeskHome, DeskView } from './views.ts'

const id = z.string().min(1).max(ID_LENGTH_MAX)
const roomId = id.transform((text) => text as RoomId)
const roundId = id.transform((text) => text as RoundId)
const seatId = id.transform((text) => text as SeatId)
const secret = z.string().min(1).max(SECRET_LENGTH_MAX)
const typedName = z.string().max(TYPED_NAME_LENGTH_MAX)

/** The schema of each message, by its name. */
export const FROM_BROWSER = {
  /** Asks the time, several times after connecting; from the answers the page estimates how its clock differs. */
  'clock:ask': z.strictObject({}),

  /** A student comes in. */
  'seat:join': z.strictObject({
    code: z.string().max(TYPED_CODE_LENGTH_MAX),
    name: typedName,
    /** The seat's secret, when the page has made one: then asking again, because the answer was lost, takes no second seat. */
    token: z
      .string()
      .regex(/^[\w-]{43}$/)
      .optional(),
  }),
  /** A student comes back: after a reload, on a lost connection, in another tab. The newest connection holds the seat. */
  'seat:resume': z.strictObject({ token: secret }),
  /** Steps of a try. `from` counts the steps of this try that came before. */
  'turns:send': z.strictObject({
    roundId,
    tryNumber: z
      .int()
      .min(1)
      .max(TRIES_MAX + 1),
    from: z.int().min(0).max(TRY_STEPS_MAX),
    steps: z.array(z.enum(STEP_NAMES)).max(MESSAGE_STEPS_MAX),
  }),
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
  'room:close': z.strictObject({ roomId }),
  'seat:remove': z.strictObject({ roomId, seatId }),
  'seat:rename': z.strictObject({ roomId, seatId, name: typedName }),
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
  'seat:join': { token: string; bench: BenchView }
  'seat:resume': { bench: BenchView }
  'turns:send': TurnsAnswer
  'help:ask': Done
  'seat:leave': Done
  'viewer:enter': { board: BoardView }
  'viewer:again': { board: BoardView }
  'desk:enter': { home: DeskHome }
  'room:open': { desk: DeskView }
  'room:watch': { desk: DeskView }
  'room:set': Done
  'room:lock': Done
  'room:close': Done
  'seat:remove': Done
  'seat:rename': Done
  'pretend:seat': Done
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
