/** What the desk shows of each student: the seat and the lane together, in an order that stays. */

import { rankBoard } from '../../../engine/contest/rank-board.ts'
import type { DeskView, SeatView } from '../../../engine/wire/views.ts'
import type { SignName } from '../../ui/signs.tsx'

export type StudentState = {
  readonly seat: SeatView
  /** Counted turns of the try under way. */
  readonly turns: number
  readonly tryNumber: number
  readonly best: { readonly turns: number; readonly momentMs: number } | null
  readonly place: number | null
  /** What a teacher has to see at a glance, the most urgent first. */
  readonly signs: readonly SignName[]
}

/** By name, so that the eye finds each child where it was a minute ago. */
export function studentStates({ seats, lanes, round }: Pick<DeskView, 'seats' | 'lanes' | 'round'>): StudentState[] {
  const isEnded = round?.clock.phase === 'ended'
  const ranked = new Map(rankBoard(lanes, isEnded ? 'ended' : 'running').map((lane) => [lane.seatId, lane]))
  return seats
    .map((seat) => {
      const lane = ranked.get(seat.seatId)
      const best = lane?.best ?? null
      return {
        seat,
        turns: lane?.turns ?? 0,
        tryNumber: lane?.tryNumber ?? 1,
        best,
        place: lane?.place ?? null,
        signs: signsOf(seat, best !== null),
      }
    })
    .sort((a, b) => a.seat.name.localeCompare(b.seat.name) || (a.seat.seatId < b.seat.seatId ? -1 : 1))
}

function signsOf(seat: SeatView, hasReached: boolean): SignName[] {
  const signs: SignName[] = []
  if (seat.asksForHelp) signs.push('asksForHelp')
  if (!seat.here) signs.push('away')
  if (hasReached) signs.push('reached')
  return signs
}

/** Signs that the desk knows of in this version, in the order of the line above the sheet. */
export const DESK_SIGNS = ['asksForHelp', 'away', 'reached'] as const satisfies readonly SignName[]
export type DeskSign = (typeof DESK_SIGNS)[number]

export function countSign(students: readonly StudentState[], sign: DeskSign): number {
  return students.filter((student) => student.signs.includes(sign)).length
}
