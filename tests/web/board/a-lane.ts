/** Lanes for tests of the board: overrides say what matters. */

import type { SeatId } from '../../../engine/contest/ids.ts'
import type { Lane } from '../../../engine/contest/rank-board.ts'

export function aLane(id: string, overrides: Partial<Omit<Lane, 'seatId'>> = {}): Lane {
  return {
    seatId: id as SeatId,
    name: id,
    late: false,
    turns: 0,
    tryNumber: 1,
    tryReached: false,
    best: null,
    progress: 0,
    notes: null,
    ...overrides,
  }
}

export function aReachedLane(id: string, turns: number, momentMs: number): Lane {
  return aLane(id, { turns, tryReached: true, best: { turns, momentMs }, progress: 4 })
}

export function manyLanes(nLanes: number, make: (index: number) => Lane): Lane[] {
  return Array.from({ length: nLanes }, (_, index) => make(index))
}
