/**
 * Ranks the lanes of a board (rules RA1 to RA5). The same function serves the server, the desk, the projector and the bench.
 *
 * Fewest turns first, then the earlier moment; equal on both share the place and the next place is skipped.
 * Who has not reached the goal stands below, without a place: by name while the clock runs (nobody is shown up),
 * by progress when it has ended.
 */

import type { SeatId } from './ids.ts'
import type { Round } from './round-state.ts'

/** What the board shows of one student. Holds nothing that a student may not know of another. */
export type Lane = {
  readonly seatId: SeatId
  readonly name: string
  readonly late: boolean
  /** Counted turns of the try under way; 0 before the first turn. */
  readonly turns: number
  readonly tryNumber: number
  /** Whether the try under way has reached the goal. */
  readonly tryReached: boolean
  readonly best: { readonly turns: number; readonly momentMs: number } | null
  /** 0 to 4 for each stage of the round: the furthest the student ever stood. */
  readonly progress: number
}

/** A lane with the place that it has on the board. */
export type RankedLane = Lane & {
  /** 1 for the first place; null when the goal was not reached. */
  readonly place: number | null
}

/**
 * @param phase `ended` once the round is over: only then are those without a place ordered by how far they came
 * @returns all lanes, leader first
 */
export function rankBoard(lanes: readonly Lane[], phase: 'running' | 'ended'): RankedLane[] {
  const reached = lanes.filter((lane) => lane.best !== null).sort(compareReached)
  const others = lanes.filter((lane) => lane.best === null).sort(phase === 'ended' ? compareProgress : compareName)
  const ranked: RankedLane[] = []
  for (const [index, lane] of reached.entries()) {
    const above = ranked[index - 1]
    const tied = above !== undefined && compareBest(above, lane) === 0
    ranked.push({ ...lane, place: tied ? above.place : index + 1 })
  }
  for (const lane of others) ranked.push({ ...lane, place: null })
  return ranked
}

/** The lane of one seat in a round; a student who has not turned yet has an empty one. */
export function laneOf(round: Round, seat: { id: SeatId; name: string; late: boolean }): Lane {
  const player = round.players.get(seat.id)
  if (player === undefined) {
    return {
      seatId: seat.id,
      name: seat.name,
      late: seat.late,
      turns: 0,
      tryNumber: 1,
      tryReached: false,
      best: null,
      progress: 0,
    }
  }
  const { best, current } = player
  return {
    seatId: seat.id,
    name: seat.name,
    late: player.late,
    turns: current.turns,
    tryNumber: current.number,
    tryReached: current.reached !== null,
    best: best === null ? null : { turns: best.turns, momentMs: best.momentMs },
    progress: player.bestProgress,
  }
}

function compareBest(a: Lane, b: Lane): number {
  if (a.best === null || b.best === null) return 0
  return a.best.turns - b.best.turns || a.best.momentMs - b.best.momentMs
}

function compareReached(a: Lane, b: Lane): number {
  return compareBest(a, b) || compareName(a, b)
}

function compareProgress(a: Lane, b: Lane): number {
  return b.progress - a.progress || compareName(a, b)
}

/** By name in the order of code points, which is the same on every machine; then by seat, so that the order is total. */
function compareName(a: Lane, b: Lane): number {
  if (a.name !== b.name) return a.name < b.name ? -1 : 1
  return a.seatId < b.seatId ? -1 : a.seatId > b.seatId ? 1 : 0
}
