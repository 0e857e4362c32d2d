/** What the wall shows of each student: seat, lane and cube together, with the signs, in an order that stays. */

import { rankBoard } from '../../../engine/contest/rank-board.ts'
import { playedMs } from '../../../engine/contest/round-clock.ts'
import { studentSigns } from '../../../engine/contest/student-signs.ts'
import type { DeskView, SeatView, WallCell } from '../../../engine/wire/views.ts'
import type { SignName } from '../../ui/signs.tsx'

export type StudentState = {
  readonly seat: SeatView
  /** Counted turns of the try under way. */
  readonly turns: number
  readonly tryNumber: number
  readonly best: { readonly turns: number; readonly momentMs: number } | null
  readonly place: number | null
  /** 0 to 4 for each stage of the round. */
  readonly progress: number
  /** The cube as 54 letters; null while it stands at the start. */
  readonly stickers: string | null
  /** Whole seconds of played time since the last turn; null before the round, after it, at home, and once the goal is reached. */
  readonly idleSeconds: number | null
  /** What a teacher has to see at a glance, the most urgent first. */
  readonly signs: readonly SignName[]
  readonly delayMs: number | null
  /** Steps of the try under way, hints and take-backs among them; and nudges sent in this round. */
  readonly nSteps: number
  readonly nNudges: number
}

/** By name, so that the eye finds each child where it was a minute ago. */
export function studentStates(
  { seats, lanes, cells, round }: Pick<DeskView, 'seats' | 'lanes' | 'cells' | 'round'>,
  nowMs: number,
): StudentState[] {
  const isEnded = round?.clock.phase === 'ended'
  const isPlayed = round?.clock.phase === 'running' || round?.clock.phase === 'paused'
  const isTimed = isPlayed && round.settings.pace !== 'alone'
  const ranked = new Map(rankBoard(lanes, isEnded ? 'ended' : 'running').map((lane) => [lane.seatId, lane]))
  const cellOf = new Map(cells.map((cell) => [cell.seatId, cell]))
  const played = round === null ? 0 : playedMs(round.clock, nowMs)
  return seats
    .map((seat): StudentState => {
      const lane = ranked.get(seat.seatId)
      const cell = cellOf.get(seat.seatId)
      const best = lane?.best ?? null
      return {
        seat,
        turns: lane?.turns ?? 0,
        tryNumber: lane?.tryNumber ?? 1,
        best,
        place: lane?.place ?? null,
        progress: lane?.progress ?? 0,
        stickers: cell?.stickers ?? null,
        idleSeconds:
          isTimed && best === null ? Math.floor(Math.max(0, played - (cell?.lastStepMs ?? 0)) / 1_000) : null,
        signs: signsOf(seat, best !== null, isPlayed && cell !== undefined ? cell : null, round, played),
        delayMs: cell?.delayMs ?? null,
        nSteps: cell?.nSteps ?? 0,
        nNudges: lane?.notes?.nNudges ?? 0,
      }
    })
    .sort((a, b) => a.seat.name.localeCompare(b.seat.name) || (a.seat.seatId < b.seat.seatId ? -1 : 1))
}

function signsOf(
  seat: SeatView,
  hasReached: boolean,
  cell: WallCell | null,
  round: DeskView['round'],
  played: number,
): SignName[] {
  const signs: SignName[] = []
  if (seat.asksForHelp) signs.push('asksForHelp')
  if (cell !== null && round !== null) {
    const { stuckSinceMs, brokeSinceMs } = studentSigns({ ...cell, reached: hasReached }, round.settings, played)
    if (brokeSinceMs !== null) signs.push('brokeALayer')
    if (stuckSinceMs !== null) signs.push('stuck')
  }
  if (!seat.here) signs.push('away')
  if (hasReached) signs.push('reached')
  return signs
}

/** The signs in the order of the line above the wall. */
export const WALL_SIGNS = [
  'asksForHelp',
  'stuck',
  'brokeALayer',
  'away',
  'reached',
] as const satisfies readonly SignName[]
export type WallSign = (typeof WALL_SIGNS)[number]

export function countSign(students: readonly StudentState[], sign: WallSign): number {
  return students.filter((student) => student.signs.includes(sign)).length
}

/** Students on one page of the wall: a class. A few more still go on the same page. */
export const PAGE_STUDENTS = 30
const PAGE_STUDENTS_MAX = 40

/** @returns the students in pages, at least one */
export function wallPages<T>(students: readonly T[]): readonly (readonly T[])[] {
  if (students.length <= PAGE_STUDENTS_MAX) return [students]
  return Array.from({ length: Math.ceil(students.length / PAGE_STUDENTS) }, (_, page) =>
    students.slice(page * PAGE_STUDENTS, (page + 1) * PAGE_STUDENTS),
  )
}
