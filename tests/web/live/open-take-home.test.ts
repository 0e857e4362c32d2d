/** A take-home room beside the room that is watched. Rules TH: tests/RULES.md. */

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { RoomId } from '../../../engine/contest/ids.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { aLine } from './a-line.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const CLASSROOM = 'room-1' as RoomId
const AT_HOME = 'room-2' as RoomId
const PLAN = { title: 'Week', parts: [] }
const ENTRY = { names: 'roster', rosterId: 'class-1', approve: true } as const
const WISH = { plan: PLAN, rounds: [DEFAULT_ROUND_SETTINGS], deadlineMs: 9_000, entry: ENTRY }
const GRANTED = {} as never

const aView = (id: RoomId) => ({
  desk: { kind: 'desk', version: 1, room: { id }, lanes: [], seats: [], showing: null } as unknown as DeskView,
})

async function aDesk() {
  vi.resetModules()
  const { standIn, line } = aLine()
  vi.doMock('../../../web/live/socket.ts', () => standIn)
  vi.doMock('../../../web/live/server-clock.ts', () => ({ followServerClock: () => {} }))
  const { beginDesk, deskActs, useDesk } = await import('../../../web/live/desk-live.ts')
  beginDesk()
  await line.answer('desk:enter', { home: { rooms: [] }, shelf: { plans: [], rosters: [] } })
  deskActs.watchRoom(CLASSROOM)
  await line.answer('room:watch', aView(CLASSROOM))
  return { line, acts: deskActs, room: () => useDesk.getState().view?.room.id }
}

test('[TH10] the new room has the door, the plan and the rounds that were wished, and the watched room stays', async () => {
  const { line, acts, room } = await aDesk()
  const opened = acts.openTakeHome(WISH)
  await line.answer('room:open', aView(AT_HOME))
  expect(await line.answer('room:entry', GRANTED)).toEqual({ roomId: AT_HOME, entry: ENTRY })
  expect(await line.answer('room:use-plan', GRANTED)).toEqual({ roomId: AT_HOME, plan: PLAN })
  expect(await line.answer('room:take-home', GRANTED)).toEqual({
    roomId: AT_HOME,
    rounds: [DEFAULT_ROUND_SETTINGS],
    deadlineMs: 9_000,
  })
  expect(await opened).toEqual({ roomId: AT_HOME })
  expect([room(), line.asked()]).toEqual([CLASSROOM, []])
})

test('[TH10] without a plan and with a door as every room has it, only the rounds are said', async () => {
  const { line, acts } = await aDesk()
  const opened = acts.openTakeHome({ ...WISH, plan: null, entry: null })
  await line.answer('room:open', aView(AT_HOME))
  await line.answer('room:take-home', GRANTED)
  expect(await opened).toEqual({ roomId: AT_HOME })
})

test.each<[name: 'room:entry' | 'room:use-plan' | 'room:take-home']>([
  ['room:entry'],
  ['room:use-plan'],
  ['room:take-home'],
])('[TH10] when %s is refused the new room is closed again, and the desk watches its own on', async (refused) => {
  const { line, acts, room } = await aDesk()
  const opened = acts.openTakeHome(WISH)
  await line.answer('room:open', aView(AT_HOME))
  for (const name of ['room:entry', 'room:use-plan', 'room:take-home'] as const) {
    if (name === refused) break
    await line.answer(name, GRANTED)
  }
  await line.answer(refused, { code: 'room/bad-deadline' })
  expect(await line.answer('room:close', GRANTED)).toEqual({ roomId: AT_HOME })
  expect(await opened).toEqual({ refusal: { code: 'room/bad-deadline' }, leavesARoom: false })
  expect(await line.answer('room:watch', aView(CLASSROOM))).toEqual({ roomId: CLASSROOM })
  expect(room()).toBe(CLASSROOM)
})

test('[TH10] refused at the first page of the desk, that page hears of its rooms again', async () => {
  const { line, acts } = await aDesk()
  acts.stopWatching()
  await line.answer('desk:enter', { home: { rooms: [] }, shelf: { plans: [], rosters: [] } })
  const opened = acts.openTakeHome({ ...WISH, plan: null, entry: null })
  await line.answer('room:open', aView(AT_HOME))
  await line.answer('room:take-home', { code: 'room/bad-deadline' })
  await line.answer('room:close', GRANTED)
  await opened
  // Who watches a room is told of that room alone.
  expect(line.asked()).toEqual(['desk:enter'])
})

test('[TH10] a room that could not be closed again is told of', async () => {
  const { line, acts } = await aDesk()
  const opened = acts.openTakeHome(WISH)
  await line.answer('room:open', aView(AT_HOME))
  await line.cut()
  expect(await opened).toEqual({ refusal: { code: 'server/going-away' }, leavesARoom: true })
})

test('[TH10] where no room can be opened nothing else is said', async () => {
  const { line, acts } = await aDesk()
  const opened = acts.openTakeHome(WISH)
  await line.answer('room:open', { code: 'store/saving-paused' })
  expect(await opened).toEqual({ refusal: { code: 'store/saving-paused' }, leavesARoom: false })
  expect(line.asked()).toEqual(['room:watch'])
})
