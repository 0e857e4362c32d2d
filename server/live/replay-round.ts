/** Builds a round again from the record, as it stood, by the same pure functions that made it. */

import { type ClockEvent, changeClock } from '../../engine/contest/change-clock.ts'
import { judgeHandedIn, type TryHandedIn } from '../../engine/contest/hand-in.ts'
import { withNudge } from '../../engine/contest/nudges.ts'
import { aNewRound, type Round } from '../../engine/contest/round-state.ts'
import { playSteps } from '../../engine/contest/take-turns.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import { assert } from '../../engine/result.ts'
import type { StoredRound, StoredSteps } from '../store/record.ts'

/** Replays a round: its clock events give the clock, its steps give the tries. Every step was checked when it came in. */
export function replayRound(stored: StoredRound): Round {
  const start = parseStickers(stored.start)
  assert(start.ok, `the start of round ${stored.roundId} is a legal position`)
  let round = aNewRound({ id: stored.roundId, number: stored.number, settings: stored.settings, start: start.value })
  for (const event of stored.events) round = after(round, event)
  const stepsOfTry = groupByTry(stored.steps)
  for (const each of stored.tries) {
    const steps = stepsOfTry.get(`${each.seatId} ${each.tryNumber}`) ?? []
    round = play(round, { ...each, momentMs: 0 }, [], 0)
    for (const [from, step] of steps.entries()) round = play(round, step, [step.step], from)
  }
  for (const { seatId, ...given } of stored.nudges) round = withNudge(round, seatId, given)
  for (const { seatId, ...sent } of stored.handedIn) round = judgedAgain(round, { ...sent, seatId })
  return round
}

function judgedAgain(round: Round, sent: TryHandedIn): Round {
  const judged = judgeHandedIn(round, sent)
  assert(judged.ok, `what was handed in of round ${round.id} follows the rules`)
  return judged.value.round
}

function after(round: Round, event: ClockEvent): Round {
  const changed = changeClock(round, event)
  assert(changed.ok, `clock event ${event.kind} of round ${round.id} fits its clock`)
  return changed.value
}

function play(round: Round, at: Omit<StoredSteps, 'step'>, steps: readonly StoredSteps['step'][], from: number): Round {
  const { seatId, tryNumber, late, how, momentMs, atMs } = at
  const played = playSteps(round, { seatId, tryNumber, late, how, from, steps, momentMs, atMs })
  assert(played.ok, `a stored step of round ${round.id} follows the rules`)
  return played.value.round
}

function groupByTry(steps: readonly StoredSteps[]): Map<string, StoredSteps[]> {
  const groups = new Map<string, StoredSteps[]>()
  for (const step of steps) {
    const name = `${step.seatId} ${step.tryNumber}`
    const group = groups.get(name)
    if (group === undefined) groups.set(name, [step])
    else group.push(step)
  }
  return groups
}
