/** The desk and the board over lost connections and missed ticks. Rules PG: tests/RULES.md. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { RoomId } from '../../../engine/contest/ids.ts'
import type { BoardView, DeskView } from '../../../engine/wire/views.ts'
import { aLine } from './a-line.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const ROOM = 'room-1' as RoomId
const aDeskView = (version: number) =>
  ({ kind: 'desk', version, room: { id: ROOM }, lanes: [], seats: [], round: null, nRounds: 0 }) as unknown as DeskView
const aBoardView = (version: number) => ({ kind: 'board', version, lanes: [], nReached: 0 }) as unknown as BoardView
const aTick = (version: number) => ({ version, lanes: [], nReached: 0 })
const aDeskTick = (version: number) => ({ ...aTick(version), cells: [] })

/** Loads a page anew, its connection in the hands of the test. */
function aNewPage() {
  vi.resetModules()
  const { standIn, line } = aLine()
  vi.doMock('../../../web/live/socket.ts', () => standIn)
  vi.doMock('../../../web/live/server-clock.ts', () => ({ followServerClock: () => {} }))
  return line
}

async function aWatchingDesk() {
  const line = aNewPage()
  const { beginDesk, deskActs, useDesk } = await import('../../../web/live/desk-live.ts')
  beginDesk()
  await line.answer('desk:enter', { home: { rooms: [] }, shelf: { plans: [], rosters: [] } })
  deskActs.watchRoom(ROOM)
  await line.answer('room:watch', { desk: aDeskView(1) })
  return { line, acts: deskActs, live: () => useDesk.getState() }
}

async function aBoard() {
  const line = aNewPage()
  const { enterAsViewer, useBoard } = await import('../../../web/live/board-live.ts')
  enterAsViewer('key')
  return { line, live: () => useBoard.getState() }
}

describe('the desk', () => {
  test('[PG3] after a gap the whole view is asked for once, however many ticks come meanwhile', async () => {
    const desk = await aWatchingDesk()
    for (const version of [3, 4, 5]) await desk.line.tell('desk:tick', aDeskTick(version))
    expect(desk.line.asked()).toEqual(['room:watch'])
    await desk.line.answer('room:watch', { desk: aDeskView(5) })
    // Ticks that came while it was asked may have been newer than the answer, so it is asked once more.
    await desk.line.answer('room:watch', { desk: aDeskView(5) })
    await desk.line.tell('desk:tick', aDeskTick(6))
    expect([desk.live().view?.version, desk.line.asked()]).toEqual([6, []])
  })

  test('[PG2] asking for the view too often is no matter for the teacher: it is asked again after the pause', async () => {
    const desk = await aWatchingDesk()
    await desk.line.tell('desk:tick', aDeskTick(3))
    await desk.line.answer('room:watch', { code: 'wire/too-fast', retryAfterMs: 2_000 })
    expect([desk.live().refusal, desk.line.asked()]).toEqual([null, []])
    await vi.advanceTimersByTimeAsync(2_000)
    expect(desk.line.asked()).toEqual(['room:watch'])
  })

  test('[PG8] what is pressed without a connection is refused at once and never sent later', async () => {
    const desk = await aWatchingDesk()
    await desk.line.cut()
    desk.acts.start()
    await vi.advanceTimersByTimeAsync(0)
    expect(desk.live()).toMatchObject({ status: 'away', refusal: { code: 'server/going-away' } })
    desk.line.join()
    expect(desk.line.asked()).toEqual(['desk:enter'])
    await desk.line.answer('desk:enter', { home: { rooms: [] }, shelf: { plans: [], rosters: [] } })
    await desk.line.answer('room:watch', { desk: aDeskView(9) })
    expect(desk.live()).toMatchObject({ status: 'ready', view: { version: 9 } })
    expect(desk.line.asked()).toEqual([])
  })

  test('[PG3] a view of a room that is no longer watched is not shown', async () => {
    const desk = await aWatchingDesk()
    desk.acts.stopWatching()
    await desk.line.tell('desk', aDeskView(2))
    await desk.line.tell('desk:tick', aDeskTick(3))
    expect(desk.live().view).toBeNull()
    expect(desk.line.asked()).toEqual(['desk:enter'])
  })
})

describe('the board', () => {
  test('[PG3] after a gap the whole view is asked for once at a time, and again if that is refused', async () => {
    const board = await aBoard()
    await board.line.answer('viewer:enter', { board: aBoardView(1) })
    for (const version of [3, 4]) await board.line.tell('tick', aTick(version))
    await board.line.answer('viewer:again', { code: 'wire/too-fast', retryAfterMs: 700 })
    expect(board.line.asked()).toEqual([])
    await vi.advanceTimersByTimeAsync(700)
    await board.line.answer('viewer:again', { board: aBoardView(4) })
    await board.line.tell('tick', aTick(5))
    expect([board.live().view?.version, board.line.asked()]).toEqual([5, []])
  })

  test('[PG4] the board comes back by itself; a link that leads nowhere says so', async () => {
    const board = await aBoard()
    await board.line.cut()
    board.line.join()
    await board.line.answer('viewer:enter', { board: aBoardView(1) })
    await board.line.cut()
    expect(board.live().status).toBe('away')
    board.line.join()
    await board.line.answer('viewer:enter', { code: 'viewer/no-such-room' })
    await vi.advanceTimersByTimeAsync(60_000)
    expect([board.live().status, board.line.asked()]).toEqual(['no-such-room', []])
  })
})
