/** Limits that several files of the contest and the wire share. Each has its unit in its name and its reason beside it. */

import { assert } from '../result.ts'

/** Steps (turns, re-holds, take-backs) of one try. The slowest taught way of one stage needs under 150 turns; a span of all seven under 450. */
export const TRY_STEPS_MAX = 600

/** Steps in one message. A client's window of unacknowledged turns is 32; after an outage it sends its queue in such parts. */
export const MESSAGE_STEPS_MAX = 64

/** Tries of one student in one round. */
export const TRIES_MAX = 99

/** Students in a room: ten classes of thirty. The board is drawn for as many. */
export const ROOM_SEATS_MAX = 300

/** Rounds in a room: a school day of one-minute rounds. */
export const ROOM_ROUNDS_MAX = 500

/** Characters (grapheme clusters) of a student's name. Longer ones do not fit a lane for thirty. */
export const NAME_LENGTH_MAX = 16

/** The clock of a round, when it has one: not over before a child has looked at the start, */
export const ROUND_TIME_MS_MIN = 30_000
/** and no longer than a club's afternoon. */
export const ROUND_TIME_MS_MAX = 3 * 60 * 60_000

/** Between the teacher's press and the signal: long enough for the start to reach a slow phone, short enough to hold one's breath. */
export const COUNTDOWN_MS = 3_000

/** One press of "add time" may add no more than this. */
export const ADDED_TIME_MS_MAX = 30 * 60_000

/** Counted turns that a hint may cost: more than a whole stage takes would only punish. */
export const HINT_COST_MAX = 20

/** The largest par of a single stage is 16 (stage 7); a range may name no more than this. */
export const PAR_MAX = 30

/** Nudges that one student gets in one round: one a minute for a club's afternoon. */
export const NUDGES_MAX = 200

/** A take-home room is open for no longer than a term's holidays. */
export const TAKE_HOME_MS_MAX = 60 * 24 * 60 * 60_000

/** Rounds of a take-home room, all open at once. */
export const TAKE_HOME_ROUNDS_MAX = 20

assert(MESSAGE_STEPS_MAX <= TRY_STEPS_MAX, 'one message fits a try')
assert(COUNTDOWN_MS < ROUND_TIME_MS_MIN, 'the countdown is shorter than any round')
