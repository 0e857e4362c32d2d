/** Seats and lanes together: what the squared sheet shows, in an order that stays. */

import { expect, test } from 'vitest'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { SeatView } from '../../../engine/wire/views.ts'
import { countSign, studentStates } from '../../../web/desk/wall/wall-students.ts'
import { aLane, aReachedLane } from '../board/a-lane.ts'

function aSeat(id: string, overrides: Partial<Omit<SeatView, 'seatId'>> = {}): SeatView {
  return {
    seatId: id as SeatId,
    name: id,
    here: true,
    late: false,
    pretend: false,
    asksForHelp: false,
    ready: false,
    pupilId: null,
    ...overrides,
  }
}

test('[DE4] students stand by name, whatever their turns', () => {
  const seats = [aSeat('Zoe'), aSeat('Ada'), aSeat('Bo')]
  const lanes = [aReachedLane('Zoe', 9, 1_000), aLane('Ada', { turns: 4 }), aLane('Bo')]
  expect(studentStates({ seats, lanes, cells: [], round: null }, 0).map(({ seat }) => seat.name)).toEqual([
    'Ada',
    'Bo',
    'Zoe',
  ])
})

test('[DE5] the most urgent sign comes first', () => {
  const seats = [aSeat('Ada', { asksForHelp: true, here: false })]
  const [ada] = studentStates({ seats, lanes: [aReachedLane('Ada', 9, 1_000)], cells: [], round: null }, 0)
  expect(ada.signs).toEqual(['asksForHelp', 'away', 'reached'])
})

test('[DE5] a student without a lane has made no turn', () => {
  expect(studentStates({ seats: [aSeat('Ada')], lanes: [], cells: [], round: null }, 0)[0]).toMatchObject({
    turns: 0,
    best: null,
    signs: [],
  })
})

test('[DE5] signs are counted over the whole class', () => {
  const students = studentStates(
    {
      seats: [aSeat('Ada', { here: false }), aSeat('Bo')],
      lanes: [aReachedLane('Bo', 9, 1_000)],
      cells: [],
      round: null,
    },
    0,
  )
  expect([countSign(students, 'away'), countSign(students, 'reached'), countSign(students, 'asksForHelp')]).toEqual([
    1, 1, 0,
  ])
})
