/** A review for a test: a round, its two ways, and students with so many turns, or none who reached the goal. */

import type { RoundId, SeatId } from '../../../../engine/contest/ids.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../../engine/contest/round-settings.ts'
import { formatStickers } from '../../../../engine/cube/stickers.ts'
import type { TurnName } from '../../../../engine/cube/turns.ts'
import type { ReviewView, SolutionView } from '../../../../engine/wire/views.ts'
import { cubeAfter } from '../../../engine/cube/arbitraries.ts'

/** @param students name and turns, best first; null for who did not get there */
export function aReview(students: readonly (readonly [name: string, turns: number | null])[]): ReviewView {
  return {
    round: {
      id: 'round' as RoundId,
      number: 1,
      settings: DEFAULT_ROUND_SETTINGS,
      start: formatStickers(cubeAfter("F U R U' R' F'")),
      clock: { phase: 'ended', startsAtMs: 0, endedAtMs: 60_000, reason: 'time' },
    },
    par: { turns: 6, proven: true, lowerBound: 6 },
    ways: {
      shortest: ['F', 'R', 'U', "R'", "U'", "F'"],
      lesson: { turns: ['y', 'F', 'U'], nTurns: 2, steps: [] },
    },
    solutions: students.map(([name, turns]) => aSolution(name, turns)),
  }
}

export function aSolution(name: string, turns: number | null, made: readonly TurnName[] = ['R', 'U']): SolutionView {
  return {
    seatId: `seat-${name}` as SeatId,
    name,
    tryNumber: 1,
    turns: made,
    reached: turns === null ? null : { turns, momentMs: 1_000 * turns },
    hints: [],
    nNudges: 0,
    how: { kept: false, written: false },
    afterEnd: false,
  }
}
