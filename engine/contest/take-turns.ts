/**
 * Takes the steps that a student sent (rules TU1 to TU9). Pure: the moment comes in with the event.
 *
 * A message says which try it belongs to and how many steps of that try came before it (`from`). What is new is appended,
 * what is known is skipped, a gap is refused with the number to send from. So sending again is always safe.
 * A message is taken as a whole or not at all; only steps after the goal are left off, for the try ends there.
 */

import { stageProgress } from '../method/goals.ts'
import { err, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import type { SeatId } from './ids.ts'
import { TRIES_MAX } from './limits.ts'
import { playTry } from './play-try.ts'
import { playerOf, withPlayer } from './players.ts'
import { playedMs } from './round-clock.ts'
import {
  anEmptyTry,
  type HowSent,
  type PastTry,
  type Player,
  type Reached,
  type Round,
  type Try,
} from './round-state.ts'
import type { Step } from './steps.ts'

/** One message of turns, and when it came in. */
export type TurnsSent = {
  readonly seatId: SeatId
  /** Whether the student came in after the signal; only read at the first turn. */
  readonly late: boolean
  readonly tryNumber: number
  /** Steps of this try that came before these. */
  readonly from: number
  readonly steps: readonly Step[]
  readonly how: HowSent
  /** Milliseconds of the server's clock. */
  readonly atMs: number
}

/** What came of a message that was not refused. */
export type TurnsTaken = {
  readonly round: Round
  /** What has to be stored: nothing when all was known. */
  readonly fresh: {
    readonly tryNumber: number
    readonly from: number
    readonly steps: readonly Step[]
    readonly opensTry: boolean
  } | null
  /** What the student is told; the same again for the same steps. */
  readonly answer: TurnsAnswer
}

/** How far the server's record of a try goes. */
export type TurnsAnswer = {
  readonly tryNumber: number
  /** Steps of this try that the server holds. */
  readonly held: number
  readonly reached: Reached | null
}

/**
 * Judges a message as it comes in. The checks have a fixed order: is it known already, does the clock run, may this try go
 * on, may these steps be made.
 */
export function takeTurns(round: Round, event: TurnsSent): Result<TurnsTaken, ContestRefusal> {
  const { clock } = round
  const known = answerIfKnown(playerOf(round, event.seatId), event)
  if (known !== null) return ok({ round, fresh: null, answer: known })

  if (clock.phase === 'ready') return err({ code: 'contest/not-started' })
  if (clock.phase === 'paused') return err({ code: 'contest/paused' })
  if (clock.phase !== 'running') return err({ code: 'contest/round-over' })
  if (event.atMs < clock.startsAtMs) return err({ code: 'contest/not-started' })
  if (clock.endsAtMs !== null && clock.endsAtMs <= event.atMs) return err({ code: 'contest/round-over' })

  return playSteps(round, { ...event, momentMs: momentOf(round, event.atMs) })
}

/** @returns the played milliseconds that count for a step; 0 where each plays alone and the moment says nothing about anybody */
export function momentOf({ settings, clock }: Round, atMs: number): number {
  return settings.pace === 'alone' ? 0 : playedMs(clock, atMs)
}

/**
 * Plays steps whose moment is already known: the second half of `takeTurns`, and all of a replay from the record.
 * Asks nothing of the clock.
 *
 * @param event `momentMs`: played milliseconds at which these steps came in
 */
export function playSteps(
  round: Round,
  event: TurnsSent & { readonly momentMs: number },
): Result<TurnsTaken, ContestRefusal> {
  const known = playerOf(round, event.seatId)
  const player = known ?? aNewPlayer(round, event)
  const open = tryFor(round, player, event)
  if (!open.ok) return open
  const held = open.value.steps.length
  if (held < event.from) return err({ code: 'contest/gap', held })
  const fresh = event.steps.slice(held - event.from)
  if (open.value.reached !== null && fresh.length > 0) return err({ code: 'contest/try-over', held })

  const played = playTry(open.value, fresh, round.settings, event.momentMs)
  if (!played.ok) return played
  const { kept: keptBefore, written: writtenBefore } = open.value.how
  const next: Try = {
    ...played.value,
    how: { kept: keptBefore || event.how.kept, written: writtenBefore || event.how.written },
  }
  const isNextTry = player.current.number !== next.number
  const opensTry = isNextTry || known === undefined
  const after: Player = {
    ...player,
    current: next,
    triesBefore: isNextTry ? [...player.triesBefore, asPast(player.current)] : player.triesBefore,
    best: better(player.best, next),
    bestProgress: Math.max(player.bestProgress, next.progress),
    lastStepAtMs: event.atMs,
    // Opening a try is no turn: its moment is not on record.
    lastStepMomentMs: next.steps.length > held ? event.momentMs : player.lastStepMomentMs,
    lastGainMomentMs: gainMoment(player, open.value, next, event.momentMs),
    brokeMomentMs: brokeMoment(player, open.value, next, event.momentMs),
  }
  const kept = next.steps.slice(held)
  return ok({
    round: { ...round, players: withPlayer(round.players, after) },
    fresh: kept.length === 0 && !opensTry ? null : { tryNumber: next.number, from: held, steps: kept, opensTry },
    answer: { tryNumber: next.number, held: next.steps.length, reached: next.reached },
  })
}

/** A student who has not turned yet stands at the start of the first try. */
function aNewPlayer(round: Round, event: { seatId: SeatId; late: boolean }): Player {
  const current = anEmptyTry(round.start, 1)
  return {
    seatId: event.seatId,
    late: event.late,
    current,
    triesBefore: [],
    best: null,
    bestProgress: stageProgress(round.start, round.settings),
    lastStepAtMs: null,
    lastStepMomentMs: 0,
    lastGainMomentMs: 0,
    brokeMomentMs: null,
  }
}

/** When the try last came further; a new try begins where the last step of the one before ended. */
function gainMoment(player: Player, before: Try, after: Try, momentMs: number): number {
  if (after.progress > before.progress) return momentMs
  return player.current.number === after.number ? player.lastGainMomentMs : player.lastStepMomentMs
}

/** When the layer that is broken now broke; null when all are whole. */
function brokeMoment(player: Player, before: Try, after: Try, momentMs: number): number | null {
  if (after.brokeAfter === null) return null
  return after.brokeAfter === before.brokeAfter ? player.brokeMomentMs : momentMs
}

/**
 * The answer to a message that holds nothing new, whatever the clock says: its steps are on record, or they come behind
 * the goal and were left off when they first came. Null when there is something to take, or to refuse.
 */
function answerIfKnown(player: Player | undefined, { tryNumber, from, steps }: TurnsSent): TurnsAnswer | null {
  const known = player === undefined ? undefined : pastTry(player, tryNumber)
  if (known === undefined) return null
  const isOnRecord = from + steps.length <= known.nSteps
  const passesGoal = known.reached !== null && from < known.nSteps
  return isOnRecord || passesGoal ? { tryNumber, held: known.nSteps, reached: known.reached } : null
}

function pastTry(player: Player, tryNumber: number): PastTry | undefined {
  return tryNumber === player.current.number ? asPast(player.current) : player.triesBefore[tryNumber - 1]
}

function asPast({ steps, hints, reached }: Try): PastTry {
  return { nSteps: steps.length, nHints: hints.length, reached }
}

function tryFor(round: Round, player: Player, event: TurnsSent): Result<Try, ContestRefusal> {
  const { current } = player
  if (event.tryNumber === current.number) return ok(current)
  if (event.tryNumber < current.number) {
    return err({
      code: 'contest/try-closed',
      current: current.number,
      held: pastTry(player, event.tryNumber)?.nSteps ?? 0,
    })
  }
  if (event.tryNumber > current.number + 1) return err({ code: 'contest/try-gap', current: current.number })
  if (round.settings.tries === 'one') return err({ code: 'contest/one-try-only' })
  if (event.tryNumber > TRIES_MAX) return err({ code: 'contest/too-many-tries', max: TRIES_MAX })
  return ok(anEmptyTry(round.start, event.tryNumber))
}

function better(best: Player['best'], next: Try): Player['best'] {
  if (next.reached === null) return best
  if (best !== null && best.turns < next.reached.turns) return best
  if (best !== null && best.turns === next.reached.turns && best.momentMs <= next.reached.momentMs) return best
  const { standing, hints, how } = next
  return { ...next.reached, tryNumber: next.number, standing, hints, how }
}
