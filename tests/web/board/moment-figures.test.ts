/** Moments show hundredths only where the ranking would look wrong without them. */

import { expect, test } from 'vitest'
import { momentFigures } from '../../../web/parts/lanes/moment-figures.ts'
import { aLane, aReachedLane } from './a-lane.ts'

test.each([
  ['seconds are enough', [aReachedLane('a', 12, 93_450), aReachedLane('b', 14, 93_990)], ['1:33', '1:33']],
  [
    'equal turns in one second show hundredths',
    [aReachedLane('a', 12, 93_450), aReachedLane('b', 12, 93_090)],
    ['1:33.45', '1:33.09'],
  ],
  ['a true tie shows none', [aReachedLane('a', 12, 93_450), aReachedLane('b', 12, 93_450)], ['1:33', '1:33']],
])('[BO9] %s', (_, lanes, figures) => {
  const shown = momentFigures(lanes)
  expect(lanes.map((lane) => shown.get(lane.seatId))).toEqual(figures)
})

test('[BO9] who has not reached the goal has no moment', () => {
  expect(momentFigures([aLane('a')]).size).toBe(0)
})
