/**
 * The disk refuses at the first write of a flow, at the second, and so on, until the flow gets through: whenever it was, the
 * screens show what the record holds, nothing was acknowledged that is not there, and going on works. Rules: tests/RULES.md.
 */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Answer } from '../../engine/wire/from-browser.ts'
import { TestDisk } from './support/a-disk.ts'
import { aServer, type TestServer } from './support/a-server.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  connect,
  mustAsk,
  type Student,
  sendEverybodyHome,
  signIn,
  type Teacher,
  until,
} from './support/people.ts'

type Class = { teacher: Teacher; ada: Student; bo: Student }
type Flow = { name: string; isRunning: boolean; act: (klass: Class) => Promise<Answer<unknown>[]> }

const round = ({ teacher }: Class) => ({ roomId: teacher.roomId, roundId: teacher.round() })

/** Each flow asks for things at once, as classes do. */
const FLOWS: readonly Flow[] = [
  {
    name: 'coming in and leaving',
    isRunning: false,
    act: ({ teacher: { code }, bo }) =>
      Promise.all([
        ask(connect(server), 'seat:join', { code, name: 'Cy' }),
        ask(bo.client, 'seat:leave', {}),
        ask(connect(server), 'seat:join', { code, name: 'Di' }),
      ]),
  },
  {
    name: 'renaming, removing, locking, other settings',
    isRunning: false,
    act: ({ teacher: { client, roomId, view }, ada, bo }) =>
      Promise.all([
        ask(client, 'seat:rename', { roomId, seatId: ada.view().me.seatId, name: 'Eve' }),
        ask(client, 'room:lock', { roomId, locked: true }),
        ask(client, 'seat:remove', { roomId, seatId: bo.view().me.seatId }),
        ask(client, 'room:set', { roomId, settings: { ...view().settings, cases: null, takeBack: false } }),
      ]),
  },
  {
    name: 'starting',
    isRunning: false,
    act: ({ teacher: { client, roomId }, ada }) =>
      Promise.all([
        ask(client, 'round:start', { roomId, number: 1 }),
        ask(client, 'round:start', { roomId, number: 1 }),
        ask(ada.client, 'help:ask', { wanted: true }),
      ]),
  },
  {
    name: 'turning',
    isRunning: true,
    act: async (klass) => {
      const { roundId } = round(klass)
      const { ada, bo } = klass
      const first = await Promise.all([
        ada.turn(roundId, 0, ['R', 'U']),
        bo.turn(roundId, 0, ['L']),
        ada.turn(roundId, 2, ['F', 'y']),
        bo.turn(roundId, 1, ['take-back', 'D']),
      ])
      const second = await Promise.all([
        ada.turn(roundId, 0, [], 2),
        bo.turn(roundId, 3, ['B']),
        ada.turn(roundId, 0, ['R'], 2),
      ])
      return [...first, ...second]
    },
  },
  {
    name: 'pausing, going on, adding time',
    isRunning: true,
    act: async (klass) => {
      const { client } = klass.teacher
      const { roundId } = round(klass)
      return Promise.all([
        ask(client, 'round:pause', round(klass)),
        klass.ada.turn(roundId, 0, ['R']),
        ask(client, 'round:resume', round(klass)),
        ask(client, 'round:add-time', { ...round(klass), addedMs: 60_000 }),
        klass.bo.turn(roundId, 0, ['L', 'F']),
      ])
    },
  },
  {
    name: 'ending, striking out, closing',
    isRunning: true,
    act: async (klass) => {
      const { client, roomId } = klass.teacher
      const { roundId } = round(klass)
      return Promise.all([
        klass.bo.turn(roundId, 0, ['L']),
        ask(client, 'round:end', round(klass)),
        ask(client, 'round:void', round(klass)),
        ask(client, 'room:close', { roomId }),
      ])
    },
  },
  {
    name: 'ending, and starting the next round',
    isRunning: true,
    act: async (klass) => {
      const { client, roomId } = klass.teacher
      const { roundId } = round(klass)
      return Promise.all([
        ask(client, 'round:end', round(klass)),
        ask(client, 'round:start', { roomId, number: 2 }),
        klass.ada.turn(roundId, 0, ['R']),
      ])
    },
  },
  {
    name: 'seating a pretend class, and starting',
    isRunning: false,
    act: ({ teacher: { client, roomId } }) =>
      Promise.all([
        ask(client, 'pretend:seat', { roomId, seated: true }),
        ask(client, 'round:start', { roomId, number: 1 }),
      ]),
  },
]
/** More writes than any flow has. */
const WRITES_MAX = 30

let disk: TestDisk
let server: TestServer
let session: string
beforeAll(async () => {
  disk = new TestDisk()
  server = await aServer({ wrapRecord: disk.wrap })
  session = await signIn(server)
})
afterAll(() => server.end())

async function aClass(isRunning: boolean): Promise<Class> {
  const teacher = await aTeacher(server, {}, session)
  const { client, roomId, code } = teacher
  const klass = { teacher, ada: await aStudent(server, code, 'Ada'), bo: await aStudent(server, code, 'Bo') }
  if (!isRunning) return klass
  await mustAsk(client, 'round:start', { roomId, number: 1 })
  server.advance(3_000)
  await until('the desk shows the round', () => teacher.view().round?.clock.phase === 'running')
  return klass
}

describe('a disk that refuses in the middle', () => {
  test.each(FLOWS)('[DU15] $name: what is shown is what is stored, and going on works', async ({ act, isRunning }) => {
    let nRefusals = 0
    for (let nth = 1; nth <= WRITES_MAX; nth++) {
      const klass = await aClass(isRunning)
      disk.refuseAt(nth)
      const answers = await act(klass)
      const hasFailed = disk.hasFailed
      disk.failNoMore()
      for (const answer of answers) if (!answer.ok) expect(answer.error.code).not.toBe('server/fault')
      await expectSameAfterRestart(server, klass.teacher, [klass.ada.token, klass.bo.token])
      await expectToGoOn(klass)
      sendEverybodyHome()
      if (!hasFailed) break
      nRefusals++
    }
    expect(nRefusals).toBeGreaterThan(0)
    expect(nRefusals).toBeLessThan(WRITES_MAX)
  })
})

/** Whatever happened, a round can be played. */
async function expectToGoOn({ teacher: { roomId, code } }: Class): Promise<void> {
  const desk = connect(server, { cookie: session })
  await mustAsk(desk, 'desk:enter', {})
  const { desk: view } = await mustAsk(desk, 'room:watch', { roomId })
  if (view.room.closed) return
  await mustAsk(desk, 'room:lock', { roomId, locked: false })
  const phase = view.round?.clock.phase
  if (phase === 'running' || phase === 'paused') {
    await mustAsk(desk, 'round:end', { roomId, roundId: view.round!.id })
  }
  const { roundId } = await mustAsk(desk, 'round:start', { roomId, number: view.nRounds + 1 })
  const zoe = await aStudent(server, code, 'Zoe')
  server.advance(3_000)
  expect(await zoe.turn(roundId, 0, ['R', 'U'])).toMatchObject({ ok: true, value: { held: 2 } })
  expect((await aReturningStudent(server, zoe.token)).view().mine?.steps).toEqual(['R', 'U'])
}
