/**
 * Takes the steps that a student sent (rules TU1 to TU9). Pure: the moment comes in with the event.
 *
 * A message says which try it belongs to and how many steps of that try came before it (`from`). What is new is appended,
 * what is known is skipped, a gap is refused with the number to send from. So sending again is always safe.
 * A message is taken as a whole or not at all; only steps after the goal are left off, for the try ends there.
 */

import { applyTurn } from '../cube/apply-turn.ts'
import { copyCube } from '../cube/cube-position.ts'
import { outerBlockCost } from '../cube/outer-block-turns.ts'
import { inverseTurn, type Turn } from '../cube/turns.ts'
import { goalMet, stageProgress } from '../method/goals.ts'
import { err, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import type { SeatId } from './ids.ts'
import { TRIES_MAX, TRY_STEPS_MAX } from './limits.ts'
import { playedMs } from './round-clock.ts'
import { anEmptyTry, type Player, type Reached, type Round, type Try } from './round-state.ts'
import { type Step, TAKE_BACK } from './steps.ts'

export type TurnsSent = {
  readonly seatId: SeatId
  /** Whether the student came in after the signal; only read at the first turn. */
  readonly late: boolean
  readonly tryNumber: number
  /** Steps of this try that came before these. */
  readonly from: number
  readonly steps: readonly Step[]
  readonly atMs: number
}

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

export function takeTurns(round: Round, event: TurnsSent): Result<TurnsTaken, ContestRefusal> {
  const { clock } = round
  const player = round.players.get(event.seatId) ?? aNewPlayer(round, event)
  if (isKnown(player, event)) return ok({ round, fresh: null, answer: answerFor(player, event.tryNumber) })

  if (clock.phase === 'ready') return err({ code: 'contest/not-started' })
  if (clock.phase === 'paused') return err({ code: 'contest/paused' })
  if (clock.phase !== 'running') return err({ code: 'contest/round-over' })
  if (event.atMs < clock.startsAtMs) return err({ code: 'contest/not-started' })
  if (clock.endsAtMs !== null && clock.endsAtMs <= event.atMs) return err({ code: 'contest/round-over' })

  return playSteps(round, { ...event, momentMs: playedMs(clock, event.atMs) })
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
  const player = round.players.get(event.seatId) ?? aNewPlayer(round, event)
  const open = tryFor(round, player, event)
  if (!open.ok) return open
  const held = open.value.steps.length
  if (held < event.from) return err({ code: 'contest/gap', held })
  const fresh = event.steps.slice(held - event.from)
  if (open.value.reached !== null && fresh.length > 0) return err({ code: 'contest/try-over', held })

  const taken = append(round, open.value, fresh, event.momentMs)
  if (!taken.ok) return taken
  const next = taken.value.after
  const opensTry = player.current.number !== next.number || !round.players.has(event.seatId)
  const after: Player = {
    ...player,
    current: next,
    heldBefore:
      player.current.number === next.number ? player.heldBefore : [...player.heldBefore, player.current.steps.length],
    best: better(player.best, next),
    bestProgress: Math.max(player.bestProgress, taken.value.progress),
    lastStepAtMs: event.atMs,
  }
  const kept = next.steps.slice(held)
  return ok({
    round: { ...round, players: new Map(round.players).set(event.seatId, after) },
    fresh: kept.length === 0 && !opensTry ? null : { tryNumber: next.number, from: held, steps: kept, opensTry },
    answer: answerFor(after, next.number),
  })
}

/** A student who has not turned yet stands at the start of the first try. */
function aNewPlayer(round: Round, event: { seatId: SeatId; late: boolean }): Player {
  const current = anEmptyTry(round, 1)
  return {
    seatId: event.seatId,
    late: event.late,
    current,
    heldBefore: [],
    best: null,
    bestProgress: stageProgress(round.start, round.settings),
    lastStepAtMs: null,
  }
}

/** Whether everything in the message is on record already: then it is answered, whatever the clock says. */
function isKnown(player: Player, event: TurnsSent): boolean {
  const held = heldOf(player, event.tryNumber)
  return held !== null && event.from + event.steps.length <= held
}

function heldOf(player: Player, tryNumber: number): number | null {
  if (tryNumber === player.current.number) return player.current.steps.length === 0 ? null : player.current.steps.length
  return player.heldBefore[tryNumber - 1] ?? null
}

function answerFor(player: Player, tryNumber: number): TurnsAnswer {
  const held = heldOf(player, tryNumber) ?? 0
  return { tryNumber, held, reached: tryNumber === player.current.number ? player.current.reached : null }
}

function tryFor(round: Round, player: Player, event: TurnsSent): Result<Try, ContestRefusal> {
  const { current } = player
  if (event.tryNumber === current.number) return ok(current)
  if (event.tryNumber < current.number) {
    return err({
      code: 'contest/try-closed',
      current: current.number,
      held: player.heldBefore[event.tryNumber - 1] ?? 0,
    })
  }
  if (event.tryNumber > current.number + 1) return err({ code: 'contest/try-gap', current: current.number })
  if (round.settings.tries === 'one') return err({ code: 'contest/one-try-only' })
  if (event.tryNumber > TRIES_MAX) return err({ code: 'contest/too-many-tries', max: TRIES_MAX })
  return ok(anEmptyTry(round, event.tryNumber))
}

/** Appends steps one by one until the goal is met; what comes after it is left off. */
function append(
  round: Round,
  before: Try,
  fresh: readonly Step[],
  momentMs: number,
): Result<{ after: Try; progress: number }, ContestRefusal> {
  const { settings } = round
  const held = before.steps.length
  const position = copyCube(before.position)
  const standing: Turn[] = [...before.standing]
  const steps: Step[] = [...before.steps]
  let turns = before.turns
  let progress = 0
  let reached: Reached | null = before.reached
  for (const step of fresh) {
    if (reached !== null) break
    if (steps.length === TRY_STEPS_MAX) return err({ code: 'contest/too-many-turns', max: TRY_STEPS_MAX, held })
    if (step === TAKE_BACK) {
      if (!settings.takeBack) return err({ code: 'contest/no-take-back', held })
      const last = standing.pop()
      if (last === undefined) return err({ code: 'contest/nothing-to-take-back', held })
      applyTurn(position, inverseTurn(last))
      turns -= outerBlockCost(last)
    } else {
      applyTurn(position, step)
      standing.push(step)
      turns += outerBlockCost(step)
    }
    steps.push(step)
    progress = Math.max(progress, stageProgress(position, settings))
    if (goalMet(position, settings.to)) reached = { turns, momentMs: cutToHundredths(momentMs) }
  }
  return ok({ after: { ...before, steps, standing, turns, position, reached }, progress })
}

/** Times are cut to hundredths of a second (WCA Regulations 2024, 9f1), so that equal means equal for everyone. */
function cutToHundredths(ms: number): number {
  return Math.floor(ms / 10) * 10
}

function better(best: Player['best'], next: Try): Player['best'] {
  if (next.reached === null) return best
  if (best !== null && best.turns < next.reached.turns) return best
  if (best !== null && best.turns === next.reached.turns && best.momentMs <= next.reached.momentMs) return best
  return { ...next.reached, tryNumber: next.number }
}
