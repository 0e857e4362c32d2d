/**
 * Everything that a review compares: each student's best solution, or how far the last try went, beside par and the two
 * ways. Of a round that is in memory as it is shown; of an earlier one read back from the record by the same functions.
 */

import type { RoundId } from '../../engine/contest/ids.ts'
import { playerOf } from '../../engine/contest/players.ts'
import { compareBestTries } from '../../engine/contest/rank-board.ts'
import type { Round } from '../../engine/contest/round-state.ts'
import { turnName } from '../../engine/cube/turns.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { ReviewView, SolutionView } from '../../engine/wire/views.ts'
import type { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import { replayRound } from './replay-round.ts'
import type { Seat } from './room-seats.ts'
import { type Guide, guideFor } from './round-guide.ts'
import { playersOf, roundView } from './view-for.ts'

/** @returns the review; refused when the room never had such a round */
export async function reviewFor(
  room: LiveRoom,
  roundId: RoundId,
  parts: LiveParts,
): Promise<Result<ReviewView, Refusal>> {
  const held = room.heldRound(roundId)
  if (held !== null) return ok(reviewOf(room, held, room.guideOf(held)))
  if (!room.roundList.some(({ id }) => id === roundId)) return err({ code: 'contest/no-such-round' })
  const stored = await parts.record.loadRound(roundId)
  if (stored === null) return err({ code: 'contest/no-such-round' })
  const round = replayRound(stored)
  return ok(reviewOf(room, round, await guideFor(round, parts)))
}

function reviewOf(room: LiveRoom, round: Round, guide: Guide | null): ReviewView {
  const solutions = playersOf(room, round).flatMap((seat) => {
    const solution = solutionOf(round, seat)
    return solution === null ? [] : { solution, progress: playerOf(round, seat.id)?.bestProgress ?? 0 }
  })
  return {
    round: roundView(round),
    par: guide?.par ?? null,
    ways: guide?.ways ?? null,
    solutions: solutions.sort(inOrder).map(({ solution }) => solution),
  }
}

/** The best try; without one what was handed in after the end, else the try under way. Null for who never turned. */
function solutionOf(round: Round, seat: Seat): SolutionView | null {
  const player = playerOf(round, seat.id)
  const handedIn = round.handedIn.get(seat.id)
  const known = { seatId: seat.id, name: seat.name, nNudges: round.nudges.get(seat.id)?.length ?? 0 }
  const best = player?.best ?? null
  if (best !== null) {
    const { tryNumber, standing, turns, momentMs, hints, how } = best
    const reached = { turns, momentMs }
    return { ...known, tryNumber, turns: standing.map(turnName), reached, hints, how, afterEnd: false }
  }
  if (handedIn !== undefined) {
    const { number: tryNumber, standing, reached, hints } = handedIn
    const how = { kept: true, written: false }
    return { ...known, tryNumber, turns: standing.map(turnName), reached, hints, how, afterEnd: true }
  }
  if (player === undefined || player.current.standing.length === 0) return null
  const { number: tryNumber, standing, hints, how } = player.current
  return { ...known, tryNumber, turns: standing.map(turnName), reached: null, hints, how, afterEnd: false }
}

/** A solution, and how far its student ever came. */
type Standing = { readonly solution: SolutionView; readonly progress: number }

/** As on the board; what came in after the end stands behind all that count. */
function inOrder({ solution: a, progress: ofA }: Standing, { solution: b, progress: ofB }: Standing): number {
  if (a.afterEnd !== b.afterEnd) return a.afterEnd ? 1 : -1
  if ((a.reached === null) !== (b.reached === null)) return a.reached === null ? 1 : -1
  const byTries = a.reached === null || b.reached === null ? ofB - ofA : compareBestTries(a.reached, b.reached)
  return byTries || (a.name < b.name ? -1 : 1)
}
