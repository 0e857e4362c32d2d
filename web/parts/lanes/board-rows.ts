/**
 * What stands on which row of the board: lanes with a place, the skipped line, lanes without; and in large rooms the
 * crowd, of whom only the turns are shown.
 */

import type { RankedLane } from '../../../engine/contest/rank-board.ts'

/** More students than this do not fit as lanes. */
export const LANES_MAX = 40
/** In a larger room the first places stay lanes. */
export const CROWDED_LANES_MAX = 24
/** Rows that the crowd has at least, below the lanes. */
const CROWD_ROWS_MIN = 8

/** The row that is left empty between who has a place and who has none. */
export const SKIPPED = 'skipped'

export type BoardRows = {
  /** Seat ids and SKIPPED, from the top. */
  readonly order: readonly string[]
  readonly lanes: ReadonlyMap<string, RankedLane>
  /** Who is shown as a dot. Empty up to 40 students. */
  readonly crowd: readonly RankedLane[]
  /** Rows of the page, whether written on or not: the size of a square depends on nothing else. */
  readonly nRows: number
}

/** @param ranked as `rankBoard` gives them */
export function boardRows(ranked: readonly RankedLane[]): BoardRows {
  const isCrowded = ranked.length > LANES_MAX
  const placed = ranked.filter((lane) => lane.place !== null)
  const others = ranked.filter((lane) => lane.place === null)
  const above = isCrowded ? placed.slice(0, CROWDED_LANES_MAX) : placed
  const below = isCrowded ? [] : others
  return {
    order: [...above.map((lane) => lane.seatId), SKIPPED, ...below.map((lane) => lane.seatId)],
    lanes: new Map([...above, ...below].map((lane) => [lane.seatId, lane])),
    crowd: isCrowded ? [...placed.slice(CROWDED_LANES_MAX), ...others] : [],
    nRows: isCrowded ? CROWDED_LANES_MAX + 1 + CROWD_ROWS_MIN : Math.max(ranked.length, 4) + 1,
  }
}

export type Tie = { readonly place: number; readonly fromRow: number; readonly nRows: number }

/** Neighbouring rows that share a place. Lanes that are still on their way to each other get their bracket on arrival. */
export function tiesOf({ order, lanes }: Pick<BoardRows, 'order' | 'lanes'>): Tie[] {
  const ties: Tie[] = []
  let row = 0
  while (row < order.length) {
    const place = lanes.get(order[row])?.place ?? null
    let end = row + 1
    while (place !== null && end < order.length && lanes.get(order[end])?.place === place) end += 1
    if (place !== null && end - row > 1) ties.push({ place, fromRow: row, nRows: end - row })
    row = end
  }
  return ties
}
