/**
 * The moment at which each lane reached the goal, as figures. Seconds are enough, except where equal turns and equal
 * seconds would make two different places look the same: there hundredths are shown.
 */

import type { SeatId } from '../../../engine/contest/ids.ts'
import type { Lane } from '../../../engine/contest/rank-board.ts'
import { formatClock } from '../../ui/clock-face.tsx'

export function momentFigures(lanes: readonly Lane[]): ReadonlyMap<SeatId, string> {
  const momentsOf = new Map<string, Set<number>>()
  for (const { best } of lanes) {
    if (best === null) continue
    const key = looksLike(best)
    const moments = momentsOf.get(key) ?? new Set()
    momentsOf.set(key, moments.add(best.momentMs))
  }
  const figures = new Map<SeatId, string>()
  for (const { seatId, best } of lanes) {
    if (best === null) continue
    const isClose = (momentsOf.get(looksLike(best))?.size ?? 0) > 1
    figures.set(seatId, formatClock(best.momentMs, 'up') + (isClose ? hundredths(best.momentMs) : ''))
  }
  return figures
}

function looksLike({ turns, momentMs }: { turns: number; momentMs: number }): string {
  return `${turns} ${Math.floor(momentMs / 1000)}`
}

function hundredths(ms: number): string {
  return `.${String(Math.floor((ms % 1000) / 10)).padStart(2, '0')}`
}
