/** The mark of the pretend class beside a round. Rules DE: tests/RULES.md. */

import { expect, test } from 'vitest'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { SeatView } from '../../../engine/wire/views.ts'
import { hasPretenders } from '../../../web/desk/room-phase.ts'
import { aLane } from '../board/a-lane.ts'

const seat = (id: string, pretend: boolean) => ({ seatId: id as SeatId, pretend }) as SeatView

test.each<[what: string, seats: SeatView[], lanes: string[], marked: boolean]>([
  ['nobody simulated', [seat('Ada', false)], ['Ada'], false],
  ['a class that came after the round was over', [seat('Ada', false), seat('Vito', true)], ['Ada'], false],
  ['simulated students who played', [seat('Ada', false), seat('Vito', true)], ['Ada', 'Vito'], true],
  ['simulated students who were sent home', [seat('Ada', false)], ['Ada', 'Vito'], false],
])('[DE16] the mark stands beside a round only where simulated students play it: %s', (_what, seats, lanes, marked) => {
  expect(
    hasPretenders(
      { seats },
      lanes.map((id) => aLane(id)),
    ),
  ).toBe(marked)
})
