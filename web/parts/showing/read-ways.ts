/** The ways of a review, read by the coach and laid beside each other: everything that its screens draw. Pure. */

import { readSolution } from '../../../engine/coach/read-solution.ts'
import type { Moment, Reading } from '../../../engine/coach/reading.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { parseStickers } from '../../../engine/cube/stickers.ts'
import { type Turn, turnOf } from '../../../engine/cube/turns.ts'
import { assert } from '../../../engine/result.ts'
import type { ShownReview, ShownWay } from '../../../engine/wire/shown.ts'
import { type AlignedWay, alignWays } from './align-ways.ts'

/** A way with what the coach has read in it. */
export type ReadWay = {
  readonly way: ShownWay
  readonly turns: readonly Turn[]
  readonly reading: Reading
  readonly aligned: AlignedWay
}

/** A moment of the puzzle that several ways share, and the cube as one of them has it then. */
export type ReadMoment = { readonly moment: Moment; readonly place: number; readonly position: CubePosition }

/** A review, read. */
export type ReadReview = {
  readonly start: CubePosition
  readonly ways: readonly ReadWay[]
  readonly moments: readonly ReadMoment[]
  readonly nSquares: number
}

/** @param shown as the server has checked it */
export function readReview(shown: Pick<ShownReview, 'start' | 'from' | 'to' | 'ways'>): ReadReview {
  const read = parseStickers(shown.start)
  assert(read.ok, 'what is shown starts from a legal cube')
  const start = read.value
  const rows = shown.ways.map((way) => {
    const turns = way.turns.map(turnOf)
    return { way, turns, reading: readSolution({ start, turns, span: { from: shown.from, to: shown.to } }) }
  })
  const aligned = alignWays(rows.map(({ turns, reading }) => ({ turns, moments: reading.moments })))
  const moments = [{ key: rows[0].reading.moments[0].key, place: 0 }, ...aligned.moments].flatMap(({ key, place }) => {
    const row = rows.find(({ reading }) => reading.moments.some((moment) => moment.key === key))
    const moment = row?.reading.moments.find((each) => each.key === key)
    if (row === undefined || moment === undefined) return []
    return [{ moment, place, position: afterTurns(start, row.turns.slice(0, moment.turnIndex)) }]
  })
  return {
    start,
    ways: rows.map((row, index) => ({ ...row, aligned: aligned.ways[index] })),
    moments,
    nSquares: aligned.nSquares,
  }
}

/** @returns the dearest note that is about what has just been done; null when the coach has nothing to say there */
export function noteAt({ reading }: ReadWay, at: number) {
  return reading.notes.find(({ fromTurn, toTurn }) => fromTurn < at && at <= toTurn) ?? null
}
