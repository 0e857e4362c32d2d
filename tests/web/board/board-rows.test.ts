/** Which row a lane stands on, who is in the crowd, and where ties are bracketed. */

import { describe, expect, test } from 'vitest'
import { rankBoard } from '../../../engine/contest/rank-board.ts'
import { boardRows, CROWDED_LANES_MAX, LANES_MAX, SKIPPED, tiesOf } from '../../../web/parts/lanes/board-rows.ts'
import { aLane, aReachedLane, manyLanes } from './a-lane.ts'

describe('boardRows', () => {
  test('[BO1] who has a place stands above the skipped line, the others below it by name', () => {
    const lanes = [aLane('zoe', { turns: 3 }), aReachedLane('bo', 14, 900), aLane('ada'), aReachedLane('cy', 12, 990)]
    expect(boardRows(rankBoard(lanes, 'running')).order).toEqual(['cy', 'bo', SKIPPED, 'ada', 'zoe'])
  })

  test('[BO2] the number of rows depends on the number of students alone', () => {
    const none = manyLanes(20, (index) => aLane(`s${index}`))
    const all = manyLanes(20, (index) => aReachedLane(`s${index}`, 10 + index, 1_000))
    expect(boardRows(rankBoard(none, 'running')).nRows).toBe(boardRows(rankBoard(all, 'running')).nRows)
  })

  test(`[BO3] up to ${LANES_MAX} students nobody is a dot`, () => {
    expect(
      boardRows(
        rankBoard(
          manyLanes(LANES_MAX, (index) => aLane(`s${index}`)),
          'running',
        ),
      ).crowd,
    ).toEqual([])
  })

  test(`[BO3] in a larger room the first ${CROWDED_LANES_MAX} places are lanes and all others are dots`, () => {
    const lanes = manyLanes(300, (index) =>
      index < 100 ? aReachedLane(`s${index}`, 10 + index, 1_000) : aLane(`s${index}`),
    )
    const rows = boardRows(rankBoard(lanes, 'running'))
    expect(rows.lanes.size).toBe(CROWDED_LANES_MAX)
    expect(rows.crowd).toHaveLength(300 - CROWDED_LANES_MAX)
    expect(rows.order.length).toBeLessThan(rows.nRows)
  })
})

describe('tiesOf', () => {
  test('[BO4] one bracket over all neighbours that share a place', () => {
    const lanes = [
      aReachedLane('a', 10, 1_000),
      aReachedLane('b', 12, 1_000),
      aReachedLane('c', 12, 1_000),
      aReachedLane('d', 12, 1_000),
    ]
    expect(tiesOf(boardRows(rankBoard(lanes, 'ended')))).toEqual([{ place: 2, fromRow: 1, nRows: 3 }])
  })

  test('[BO4] no bracket while a lane is still on its way, nor among those without a place', () => {
    const lanes = [aReachedLane('a', 10, 1_000), aReachedLane('b', 10, 1_000), aLane('c'), aLane('d')]
    const rows = boardRows(rankBoard(lanes, 'running'))
    expect(tiesOf({ ...rows, order: ['a', SKIPPED, 'c', 'b', 'd'] })).toEqual([])
  })
})
