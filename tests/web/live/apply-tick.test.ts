import { expect, test } from 'vitest'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { Lane } from '../../../engine/contest/rank-board.ts'
import { applyTick } from '../../../web/live/apply-tick.ts'

const lane = (name: string, turns: number): Lane => ({
  seatId: name as SeatId,
  name,
  late: false,
  turns,
  tryNumber: 1,
  tryReached: false,
  best: null,
  progress: 0,
  notes: null,
})
const ADA = lane('Ada', 1)
const BO = lane('Bo', 2)
const BOARD = { version: 7, lanes: [ADA, BO], nReached: 0 }

test('[PG3] a tick changes the lanes that it names and the number of those who have reached the goal', () => {
  const after = applyTick(BOARD, { version: 8, lanes: [lane('Bo', 3)], nReached: 1 })
  expect(after).toEqual({ version: 8, lanes: [ADA, lane('Bo', 3)], nReached: 1 })
  expect(after?.lanes[0]).toBe(ADA)
})

test('[PG3] a tick without lanes leaves them as they are', () => {
  const after = applyTick(BOARD, { version: 8, lanes: [], nReached: 2 })
  expect(after).toEqual({ ...BOARD, version: 8, nReached: 2 })
  expect(after?.lanes).toBe(BOARD.lanes)
})

test('[PG3] a view that does not show who has reached the goal is given no such number', () => {
  expect(applyTick({ version: 7, lanes: [ADA] }, { version: 8, lanes: [], nReached: 2 })).toEqual({
    version: 8,
    lanes: [ADA],
  })
})

test.each([5, 7])('[PG3] tick %i is older than view 7, which has it already', (version) => {
  expect(applyTick(BOARD, { version, lanes: [lane('Bo', 9)], nReached: 9 })).toBe(BOARD)
})

test('[PG3] where a tick is missing the whole view has to be asked for', () => {
  expect(applyTick(BOARD, { version: 9, lanes: [], nReached: 0 })).toBeNull()
})
