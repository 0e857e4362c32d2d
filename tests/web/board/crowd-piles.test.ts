/** Every student of the crowd is exactly one dot, within the page. */

import { expect, test } from 'vitest'
import { rankBoard } from '../../../engine/contest/rank-board.ts'
import { pileCrowd } from '../../../web/parts/lanes/crowd-piles.ts'
import { aLane, aReachedLane, manyLanes } from './a-lane.ts'

const N_SQUARES = 30

test.each([
  ['all at the start', manyLanes(300, (index) => aLane(`s${index}`)), 31],
  ['all at one turn in the lowest page', manyLanes(276, (index) => aLane(`s${index}`, { turns: 1 })), 7],
  ['spread out', manyLanes(276, (index) => aLane(`s${index}`, { turns: index % 29 })), 7],
])('[BO10] %s: all fit', (_, lanes, nSquaresHigh) => {
  const { dots, nAcross } = pileCrowd(rankBoard(lanes, 'running'), N_SQUARES, nSquaresHigh)
  expect(dots).toHaveLength(lanes.length)
  expect(Math.max(...dots.map((dot) => (dot.level + 1) / nAcross))).toBeLessThanOrEqual(nSquaresHigh)
  expect(new Set(dots.map((dot) => `${dot.turns} ${dot.column} ${dot.level}`)).size).toBe(lanes.length)
})

test('[BO10] who has reached the goal lies at the bottom, over the turns of the best try', () => {
  const lanes = [aLane('a', { turns: 12 }), aReachedLane('b', 12, 1_000)]
  const { dots } = pileCrowd(rankBoard(lanes, 'running'), N_SQUARES, 7)
  expect(dots[0]).toMatchObject({ turns: 12, level: 0, column: 0, reached: true })
})

test('[BO10] more turns than the ruling has squares are piled over the last one', () => {
  const { dots } = pileCrowd(rankBoard([aLane('a', { turns: 99 })], 'running'), N_SQUARES, 7)
  expect(dots[0].turns).toBe(N_SQUARES - 1)
})
