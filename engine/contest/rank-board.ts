/**
 * Ranks the lanes of a board (rules RA1 to RA5). The same function serves the server, the desk, the projector and the bench.
 *
 * Fewest turns first, then the earlier moment; equal on both share the place and the next place is skipped.
 * Who has not reached the goal stands below, without a place: by name while the clock runs (nobody is shown up),
 * by progress when it has ended.
 */

import { stageProgress } from '../method/goals.ts'
import type { HintLevel } from '../method/way/hint-level.ts'
import type { SeatId } from './ids.ts'
import { playerOf } from './players.ts'
import type { PastTry, Player, Reached, Round } from './round-state.ts'

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
  /** What the ranking's footnote says of this lane; null when there is nothing to say. */
  readonly notes: LaneNotes | null
}

/** What helped, and how the turns came in: of the try that counts, or of the one under way when none has reached the goal. */
export type LaneNotes = {
  readonly nHints: number
  /** The highest of them; 0 without any. */
  readonly hintLevel: 0 | HintLevel
  /** Hints of the tries before that one: they cost nothing in it, but what they told was known. */
  readonly nHintsBefore: number
  /** How many tries those hints were given in. */
  readonly nTriesHelped: number
  /** What the teacher sent in this round, whichever try was under way. */
  readonly nNudges: number
  /** Some turns were made without a connection and came in later. */
  readonly kept: boolean
  /** Played on a real cube and written down. */
  readonly written: boolean
  /** Counted turns of a try that reached the goal but came in after the end: it has no place. */
  readonly turnsAfterEnd: number | null
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
  const player = playerOf(round, seat.id)
  if (player === undefined) {
    return {
      seatId: seat.id,
      name: seat.name,
      late: seat.late,
      turns: 0,
      tryNumber: 1,
      tryReached: false,
      best: null,
      progress: stageProgress(round.start, round.settings),
      notes: notesOf(round, seat.id),
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
    notes: notesOf(round, seat.id),
  }
}

function notesOf(round: Round, seatId: SeatId): LaneNotes | null {
  const player = playerOf(round, seatId)
  const counted = player?.best ?? player?.current
  const levels = counted?.hints.map(({ level }) => level) ?? []
  const helpedBefore = triesBeforeCounted(player).filter(({ nHints }) => nHints > 0)
  const notes: LaneNotes = {
    nHints: levels.length,
    hintLevel: Math.max(0, ...levels) as 0 | HintLevel,
    nHintsBefore: helpedBefore.reduce((sum, { nHints }) => sum + nHints, 0),
    nTriesHelped: helpedBefore.length,
    nNudges: round.nudges.get(seatId)?.length ?? 0,
    kept: counted?.how.kept ?? false,
    written: counted?.how.written ?? false,
    turnsAfterEnd: round.handedIn.get(seatId)?.reached?.turns ?? null,
  }
  const nHelped = notes.nHints + notes.nHintsBefore + notes.nNudges
  const isSilent = nHelped === 0 && !notes.kept && !notes.written && notes.turnsAfterEnd === null
  return isSilent ? null : notes
}

/** The tries before the one that counts; all that are over, as long as none has reached the goal. */
function triesBeforeCounted(player: Player | undefined): readonly PastTry[] {
  if (player === undefined) return []
  return player.triesBefore.slice(0, (player.best?.tryNumber ?? player.current.number) - 1)
}

/** Fewer turns lead, then the earlier moment; 0 for a tie. */
export function compareBestTries(a: Reached, b: Reached): number {
  return a.turns - b.turns || a.momentMs - b.momentMs
}

function compareBest(a: Lane, b: Lane): number {
  return a.best === null || b.best === null ? 0 : compareBestTries(a.best, b.best)
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
