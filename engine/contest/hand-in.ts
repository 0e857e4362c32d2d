/**
 * Turns that were made while there was no connection and come in after the end. The clock cannot vouch for them, so they
 * take no place; but they are judged, kept and shown, marked for what they are: nothing that a child has done is lost.
 */

import { err, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import type { SeatId } from './ids.ts'
import { playTry } from './play-try.ts'
import { playerOf } from './players.ts'
import { anEmptyTry, type HandedIn, type Round } from './round-state.ts'
import type { Step } from './steps.ts'

/** A whole try, from its first step on. */
export type TryHandedIn = { readonly seatId: SeatId; readonly tryNumber: number; readonly steps: readonly Step[] }

/**
 * @returns the round with that try beside the ranking, if it is the student's best of those; handed in again it changes
 *   nothing. Refused while the round runs, when the try differs from what is on record of it, and by the round's own rules
 */
export function handIn(
  round: Round,
  { seatId, tryNumber, steps }: TryHandedIn,
): Result<{ readonly round: Round; readonly judged: HandedIn; readonly isKept: boolean }, ContestRefusal> {
  if (round.clock.phase !== 'ended') {
    const isOver = round.clock.phase === 'void'
    return err(isOver ? { code: 'contest/round-over' } : { code: 'contest/still-open' })
  }
  return judgeHandedIn(round, { seatId, tryNumber, steps })
}

/** Asks nothing of the clock: the second half of `handIn`, and all of a replay, in which the round may have been struck out since. */
export function judgeHandedIn(round: Round, { seatId, tryNumber, steps }: TryHandedIn): ReturnType<typeof handIn> {
  const onRecord = stepsOnRecord(round, seatId, tryNumber)
  if (onRecord === null || !onRecord.every((step, index) => steps[index] === step))
    return err({ code: 'contest/not-the-same-try' })
  const played = playTry(anEmptyTry(round.start, tryNumber), steps, round.settings, 0)
  if (!played.ok) return played
  const { number, standing, turns, reached, progress, hints } = played.value
  const judged: HandedIn = { number, steps: played.value.steps, standing, turns, reached, progress, hints }
  const before = round.handedIn.get(seatId)
  const isKept = onRecord.length < judged.steps.length && (before === undefined || isBetter(judged, before))
  return ok({ round: isKept ? withHandedIn(round, seatId, judged) : round, judged, isKept })
}

/** Puts back what is on record. */
export function withHandedIn(round: Round, seatId: SeatId, judged: HandedIn): Round {
  return { ...round, handedIn: new Map(round.handedIn).set(seatId, judged) }
}

/** What the record holds of a try that can have gone on: the last one, or the one that would have come next. Null for others. */
function stepsOnRecord(round: Round, seatId: SeatId, tryNumber: number): readonly Step[] | null {
  const current = playerOf(round, seatId)?.current ?? anEmptyTry(round.start, 1)
  if (tryNumber === current.number) return current.steps
  const mayFollow = round.settings.tries === 'many' && tryNumber > current.number
  return mayFollow ? [] : null
}

function isBetter(a: HandedIn, b: HandedIn): boolean {
  if (a.reached === null || b.reached === null) {
    if ((a.reached === null) !== (b.reached === null)) return a.reached !== null
    return a.progress > b.progress
  }
  return a.reached.turns < b.reached.turns
}
