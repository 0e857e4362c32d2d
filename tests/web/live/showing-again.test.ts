/** What the desk shows its class, over a restart of the server. Rules PG: tests/RULES.md. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { RoomId } from '../../../engine/contest/ids.ts'
import type { TurnName } from '../../../engine/cube/turns.ts'
import type { Showing, ShownCube, ShownReview } from '../../../engine/wire/shown.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { aLine } from './a-line.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const ROOM = 'room-1' as RoomId
const HOME = { home: { rooms: [] }, shelf: { plans: [], rosters: [] } }
const BEGIN = { at: 0, chosen: 0, pointer: null }

const aCube = (...turns: TurnName[]): ShownCube => ({ kind: 'cube', title: '', start: 'W', baseColour: 'white', turns })
const aReview = (roundNumber: number): ShownReview => ({
  kind: 'review',
  roundNumber,
  from: 4,
  to: 4,
  start: 'W',
  baseColour: 'white',
  ways: [],
})

/** @param nShowings of the server since its start; none when it has forgotten what was shown */
function aView(showing: Showing | null, nShowings = showing === null ? 0 : showing.version): { desk: DeskView } {
  const view = { kind: 'desk', version: 1, room: { id: ROOM }, lanes: [], seats: [], showing, nShowings }
  return { desk: view as unknown as DeskView }
}

type Desk = Awaited<ReturnType<typeof aDesk>>

/** A desk in a room; what it says can be answered. */
async function aDesk() {
  vi.resetModules()
  const { standIn, line } = aLine()
  vi.doMock('../../../web/live/socket.ts', () => standIn)
  vi.doMock('../../../web/live/server-clock.ts', () => ({ followServerClock: () => {} }))
  const { beginDesk, deskActs, useDesk } = await import('../../../web/live/desk-live.ts')
  beginDesk()
  await line.answer('desk:enter', HOME)
  deskActs.watchRoom(ROOM)
  await line.answer('room:watch', aView(null))
  return {
    line,
    acts: deskActs,
    showing: () => useDesk.getState().view?.showing ?? null,
    /** The server was away, and is back with what it knows. */
    async comesBack(showing: Showing | null, nShowings?: number): Promise<void> {
      await line.cut()
      line.join()
      await line.answer('desk:enter', HOME)
      await line.answer('room:watch', aView(showing, nShowings))
    },
  }
}

describe('after a restart', () => {
  test('[PG10] the desk that showed something says it again, as far as it has gone, and once', async () => {
    const desk = await aDesk()
    desk.acts.show(aCube('R', 'U'), BEGIN)
    await desk.line.answer('show:whole', {} as never)
    desk.acts.showAt({ at: 2, chosen: 0, pointer: 'UF' })
    await vi.advanceTimersByTimeAsync(100)
    await desk.line.answer('show:at', {} as never)
    await desk.comesBack(null)
    // It was never away on the desk itself.
    expect(desk.showing()).toMatchObject({ shown: aCube('R', 'U'), at: { at: 2 } })
    const said = await desk.line.answer('show:whole', {} as never)
    expect(said).toEqual({ roomId: ROOM, shown: aCube('R', 'U'), at: { at: 2, chosen: 0, pointer: 'UF' } })
    expect(desk.line.asked()).toEqual([])
    await desk.line.tell('desk', aView({ version: 1, shown: aCube('R', 'U'), at: BEGIN }).desk)
    expect(desk.line.asked()).toEqual([])
  })

  test('[PG10] each restart has its own saying', async () => {
    const desk = await aDesk()
    desk.acts.show(aReview(1))
    await desk.line.answer('show:whole', {} as never)
    for (let restart = 0; restart < 3; restart++) {
      await desk.comesBack(null)
      await desk.line.answer('show:whole', {} as never)
    }
    expect(desk.line.asked()).toEqual([])
  })

  test('[PG10] what was turned without a connection is seen when it is back', async () => {
    const desk = await aDesk()
    desk.acts.show(aCube('R'))
    await desk.line.answer('show:whole', {} as never)
    await desk.line.cut()
    desk.acts.show(aCube('R', 'U'), { ...BEGIN, at: 2 })
    await vi.advanceTimersByTimeAsync(0)
    desk.line.join()
    await desk.line.answer('desk:enter', HOME)
    // The server was there all the time, and shows what it was told last.
    await desk.line.answer('room:watch', aView({ version: 1, shown: aCube('R'), at: BEGIN }))
    const said = await desk.line.answer('show:whole', {} as never)
    expect(said).toMatchObject({ shown: aCube('R', 'U'), at: { at: 2 } })
  })
})

test('[PG11] a view that is older than what the desk shows takes nothing away from it', async () => {
  const desk = await aDesk()
  desk.acts.show(aCube('R'))
  await desk.line.tell('desk', aView(null).desk)
  expect(desk.showing()).toMatchObject({ shown: aCube('R') })
  await desk.line.answer('show:whole', {} as never)
  await desk.line.tell('desk', aView({ version: 1, shown: aCube('R'), at: BEGIN }).desk)
  expect(desk.showing()).toMatchObject({ shown: aCube('R') })
})

describe('nothing is shown again', () => {
  test('[PG10] that the teacher has stopped, here or at another desk', async () => {
    const here = await aDesk()
    here.acts.show(aCube())
    await here.line.answer('show:whole', {} as never)
    here.acts.show(null)
    await here.line.answer('show:whole', {} as never)
    await here.comesBack(null)
    expect([here.showing(), here.line.asked()]).toEqual([null, []])

    const there = await aDesk()
    there.acts.show(aCube())
    await there.line.answer('show:whole', {} as never)
    await there.line.tell('desk', aView({ version: 1, shown: aCube(), at: BEGIN }).desk)
    await there.line.tell('desk', aView(null).desk)
    await there.comesBack(null)
    expect([there.showing(), there.line.asked()]).toEqual([null, []])
  })

  test('[PG10] that another desk has stopped while this one was away', async () => {
    const desk = await aDesk()
    desk.acts.show(aCube())
    await desk.line.answer('show:whole', {} as never)
    // Shown, and stopped, by a server that has been there all the time.
    await desk.comesBack(null, 2)
    expect([desk.showing(), desk.line.asked()]).toEqual([null, []])
    await desk.comesBack(null)
    expect([desk.showing(), desk.line.asked()]).toEqual([null, []])
  })

  test('[PG10] by a desk that did not show it, nor in the place of what another desk shows', async () => {
    const watches = await aDesk()
    await watches.line.tell('desk', aView({ version: 1, shown: aCube('R'), at: BEGIN }).desk)
    await watches.comesBack(null)
    expect([watches.showing(), watches.line.asked()]).toEqual([null, []])

    const showed = await aDesk()
    showed.acts.show(aCube('R'))
    await showed.line.answer('show:whole', {} as never)
    await showed.comesBack({ version: 4, shown: aReview(2), at: BEGIN })
    expect([showed.showing()?.shown, showed.line.asked()]).toEqual([aReview(2), []])
    await showed.comesBack(null)
    expect(showed.line.asked()).toEqual([])
  })

  test('[PG10] that was refused, or pressed without a connection', async () => {
    const desk = await aDesk()
    desk.acts.show(aCube('R'))
    await desk.line.answer('show:whole', { code: 'wire/too-fast', retryAfterMs: 1_000 })
    await desk.line.answer('room:watch', aView(null))
    await desk.comesBack(null)
    expect([desk.showing(), desk.line.asked()]).toEqual([null, []])
    await desk.line.cut()
    desk.acts.show(aCube('R'))
    await vi.advanceTimersByTimeAsync(0)
    desk.line.join()
    await desk.line.answer('desk:enter', HOME)
    await desk.line.answer('room:watch', aView(null))
    expect([desk.showing(), desk.line.asked()]).toEqual([null, []])
  })

  test.each([
    ['stepped through', (desk: Desk) => desk.acts.showAt({ ...BEGIN, at: 1 })],
    ['turned', (desk: Desk) => desk.acts.show(aCube('R', 'U'), { ...BEGIN, at: 2 })],
  ])('[PG10] that was lost on its way, though it was %s meanwhile', async (_how, goOn) => {
    const desk = await aDesk()
    desk.acts.show(aCube('R'))
    goOn(desk)
    await desk.comesBack(null)
    expect([desk.showing(), desk.line.asked()]).toEqual([null, []])
  })

  test('[PG10] again and again: refused, it is left', async () => {
    const desk = await aDesk()
    desk.acts.show(aCube('R'))
    await desk.line.answer('show:whole', {} as never)
    await desk.comesBack(null)
    await desk.line.answer('show:whole', { code: 'wire/malformed', field: 'shown' } as never)
    await desk.line.answer('room:watch', aView(null))
    await vi.advanceTimersByTimeAsync(60_000)
    expect([desk.showing(), desk.line.asked()]).toEqual([null, []])
  })
})
