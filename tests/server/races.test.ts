/** Things that are done at once, while the disk takes its time. Rules: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import type { Answer } from '../../engine/wire/from-browser.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { disk, eachTestHasAServer, server } from './support/each-test.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  type Client,
  connect,
  mustAsk,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

eachTestHasAServer({ ownDisk: true })

const aWhile = (ms = 150) => new Promise((resolve) => setTimeout(resolve, ms))
/** Whether an answer has come, after giving it time to. */
async function hasCome(answer: Promise<unknown>): Promise<boolean> {
  let came = false
  void answer.then(() => {
    came = true
  })
  await aWhile()
  return came
}
const codes = (answers: Answer<unknown>[]) => answers.map((answer) => (answer.ok ? 'ok' : answer.error.code)).sort()
/** A second tab of the same desk. */
async function anotherDesk(teacher: Teacher): Promise<Client> {
  const client = connect(server, { cookie: teacher.cookie })
  await mustAsk(client, 'desk:enter', {})
  await mustAsk(client, 'room:watch', { roomId: teacher.roomId })
  return client
}
/** What a viewer is shown now. */
async function boardOf(teacher: Teacher) {
  return (await mustAsk(connect(server), 'viewer:enter', { key: teacher.viewerKey })).board
}

describe('before its commit nothing is said', () => {
  test('[DU16] turns of a new try that are sent again while they are being stored are not acknowledged before they are', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    expect(await ada.turn(roundId, 0, ['R', 'L', 'F', 'B', 'D'])).toMatchObject({ ok: true })
    disk.hold()
    const first = ada.turn(roundId, 0, ['R', 'L'], 2)
    const again = ada.turn(roundId, 0, ['R', 'L'], 2)
    expect(await hasCome(again)).toBe(false)
    disk.failWhatWaits()
    expect(codes([await first, await again])).toEqual(['store/saving-paused', 'store/saving-paused'])
  })

  test('[DU16] a new try that is opened twice while it is being stored is not acknowledged before it is', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await ada.turn(roundId, 0, ['R', 'L', 'F'])
    disk.hold()
    void ada.turn(roundId, 0, [], 2)
    const again = ada.turn(roundId, 0, [], 2)
    expect(await hasCome(again)).toBe(false)
    disk.failWhatWaits()
    expect(codes([await again])).toEqual(['store/saving-paused'])
  })

  test.each(['round:pause', 'round:end', 'round:void'] as const)(
    '[DU16] the second of two desks that ask for %s is not told that it is so before it is stored',
    async (wish) => {
      const teacher = await aTeacher(server)
      const other = await anotherDesk(teacher)
      const roundId = await startRound(server, teacher)
      const message = { roomId: teacher.roomId, roundId }
      disk.hold()
      void ask(teacher.client, wish, message)
      await aWhile(50)
      const second = ask(other, wish, message)
      expect(await hasCome(second)).toBe(false)
      disk.failWhatWaits()
      expect(codes([await second])).toEqual(['store/saving-paused'])
      expect(codes([await ask(other, wish, message)])).toEqual(['ok'])
    },
  )

  test('[DU16] the second press of start is not told that the round has begun before the signal is stored', async () => {
    const teacher = await aTeacher(server)
    const other = await anotherDesk(teacher)
    const message = { roomId: teacher.roomId, number: 1 }
    disk.hold('clock-event')
    const first = ask(teacher.client, 'round:start', message)
    await aWhile(50)
    const second = ask(other, 'round:start', message)
    expect(await hasCome(second)).toBe(false)
    disk.failWhatWaits()
    expect(codes([await first, await second])).toEqual(['store/saving-paused', 'store/saving-paused'])
    expect(codes([await ask(other, 'round:start', message)])).toEqual(['ok'])
  })

  test('[DU16] a refusal that rests on a pause that is not stored waits for it', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    disk.hold()
    void ask(teacher.client, 'round:pause', { roomId: teacher.roomId, roundId })
    await aWhile(50)
    const turned = ada.turn(roundId, 0, ['R'])
    expect(await hasCome(turned)).toBe(false)
    disk.failWhatWaits()
    // The pause never was: the page sends its turn again.
    expect(codes([await turned])).toEqual(['store/saving-paused'])
    expect(codes([await ada.turn(roundId, 0, ['R'])])).toEqual(['ok'])
  })

  test('[DU16] who is coming in, leaving or taking another name is shown as it is stored', async () => {
    const teacher = await aTeacher(server)
    const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
    const { roomId } = teacher
    disk.hold()
    const asked = [
      ask(connect(server), 'seat:join', { code: teacher.code, name: 'Cy' }),
      ask(teacher.client, 'seat:remove', { roomId, seatId: bo.view().me.seatId }),
      ask(teacher.client, 'seat:rename', { roomId, seatId: ada.view().me.seatId, name: 'Ada L' }),
    ]
    await aWhile()
    expect((await boardOf(teacher)).names).toEqual(['Ada', 'Bo'])
    disk.release()
    expect(codes(await Promise.all(asked))).toEqual(['ok', 'ok', 'ok'])
    expect((await boardOf(teacher)).names).toEqual(['Ada L', 'Cy'])
  })
})

describe('at once', () => {
  test('[IN5] two that take one name at once, by coming in or by being renamed, do not both get it', async () => {
    const teacher = await aTeacher(server)
    const { roomId, code } = teacher
    const [ada, bo] = [await aStudent(server, code, 'Ada'), await aStudent(server, code, 'Bo')]
    disk.hold()
    const asked = [
      ask(teacher.client, 'seat:rename', { roomId, seatId: ada.view().me.seatId, name: 'Eve' }),
      ask(teacher.client, 'seat:rename', { roomId, seatId: bo.view().me.seatId, name: 'EVE' }),
    ]
    await aWhile(50)
    asked.push(ask(connect(server), 'seat:join', { code, name: 'eve' }) as (typeof asked)[number])
    await aWhile(50)
    disk.release()
    expect(codes(await Promise.all(asked))).toEqual(['name/taken', 'name/taken', 'ok'])
    await expectSameAfterRestart(server, teacher, [ada.token, bo.token])
  })

  test('[IN5] a name that could not be stored is free again', async () => {
    const teacher = await aTeacher(server)
    disk.refuse(true)
    const refused = await ask(connect(server), 'seat:join', { code: teacher.code, name: 'Ada' })
    expect(codes([refused])).toEqual(['store/saving-paused'])
    disk.refuse(false)
    await aStudent(server, teacher.code, 'Ada')
  })

  test('[IN3] a room that is being closed starts no round and lets nobody in; closing twice is closing once', async () => {
    const teacher = await aTeacher(server)
    const { roomId, code } = teacher
    const other = await anotherDesk(teacher)
    disk.hold()
    const closing = [ask(teacher.client, 'room:close', { roomId }), ask(other, 'room:close', { roomId })]
    await aWhile(50)
    const started = ask(teacher.client, 'round:start', { roomId, number: 1 })
    const joined = ask(connect(server), 'seat:join', { code, name: 'Ada' })
    await aWhile(50)
    disk.release()
    expect(codes(await Promise.all(closing))).toEqual(['ok', 'ok'])
    expect(codes([await started])).toEqual(['room/closed'])
    expect(['room/closed', 'room/unknown-code']).toContain(codes([await joined])[0])
    expect(codes([await ask(other, 'room:close', { roomId })])).toEqual(['ok'])
    await expectSameAfterRestart(server, teacher, [])
  })

  test('[IN3] a room in which a round is being dealt is not closed', async () => {
    const teacher = await aTeacher(server)
    const { roomId } = teacher
    disk.hold()
    const started = ask(teacher.client, 'round:start', { roomId, number: 1 })
    await aWhile(50)
    const closed = ask(teacher.client, 'room:close', { roomId })
    await aWhile(50)
    disk.release()
    expect(codes([await started, await closed])).toEqual(['ok', 'room/round-open'])
    await expectSameAfterRestart(server, teacher, [])
  })

  test('[IN7] removed twice at once is removed once, and a rename behind it does not bring the name back', async () => {
    const teacher = await aTeacher(server)
    const { roomId } = teacher
    const ada = await aStudent(server, teacher.code, 'Ada')
    const { seatId } = ada.view().me
    disk.hold()
    const asked = [
      ask(teacher.client, 'seat:remove', { roomId, seatId }),
      ask(teacher.client, 'seat:remove', { roomId, seatId }),
      ask(teacher.client, 'seat:rename', { roomId, seatId, name: 'Canary' }),
    ]
    await aWhile(50)
    disk.release()
    expect(codes(await Promise.all(asked))).toEqual(['ok', 'ok', 'room/no-such-seat'])
    expect((await server.record.loadOpenRooms())[0].seats).toEqual([])
  })

  test('[IN7] a removal that could not be stored leaves the student where it was', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    await aStudent(server, teacher.code, 'Bo')
    const { seatId } = ada.view().me
    disk.refuse(true)
    const refused = await ask(teacher.client, 'seat:remove', { roomId: teacher.roomId, seatId })
    expect(codes([refused])).toEqual(['store/saving-paused'])
    expect(codes([await ask(ada.client, 'seat:leave', {})])).toEqual(['store/saving-paused'])
    disk.refuse(false)
    expect(codes([await ask(ada.client, 'help:ask', { wanted: true })])).toEqual(['ok'])
    await expectSameAfterRestart(server, teacher, [ada.token])
  })

  test('[RE2] of two connections that come back to one seat at once, one holds it', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    const both = await Promise.all([aReturningStudent(server, ada.token), aReturningStudent(server, ada.token)])
    const answers = await Promise.all(both.map((each) => each.turn(roundId, 0, ['R'])))
    expect(codes(answers)).toEqual(['ok', 'seat/none'])
    expect(codes([await ada.turn(roundId, 0, ['R'])])).toEqual(['seat/none'])
  })

  test('[RO4] a round that was dealt but never started is the one that the next press starts', async () => {
    const teacher = await aTeacher(server)
    const { roomId } = teacher
    disk.refuseAt(2)
    expect(codes([await ask(teacher.client, 'round:start', { roomId, number: 1 })])).toEqual(['store/saving-paused'])
    const { desk } = await mustAsk(teacher.client, 'room:watch', { roomId })
    expect(desk).toMatchObject({ nRounds: 1, round: { clock: { phase: 'ready' } } })
    // The desk counts on from what it is shown.
    const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId, number: desk.nRounds + 1 })
    expect(roundId).toBe(desk.round?.id)
    await until('it runs', () => teacher.view().round?.clock.phase === 'running')
  })
})

describe('who is here', () => {
  const isHere = (teacher: Teacher, name: string) => teacher.view().seats.find((seat) => seat.name === name)?.here

  test('[RE3] who hangs up while coming in leaves neither a ghost nor a name that is taken', async () => {
    const teacher = await aTeacher(server)
    disk.hold()
    const hasty = connect(server)
    void ask(hasty, 'seat:join', { code: teacher.code, name: 'Ada' }).catch(() => undefined)
    await until('the seat is on its way', () => disk.asked.some((entry) => entry.kind === 'seat-joined'))
    hasty.disconnect()
    await aWhile(50)
    disk.release()
    await aWhile()
    await aStudent(server, teacher.code, 'Ada')
    await until('one Ada is here', () => teacher.view().seats.length === 1 && isHere(teacher, 'Ada'))
  })

  test.each([
    ['a viewer', (client: Client, teacher: Teacher) => mustAsk(client, 'viewer:enter', { key: teacher.viewerKey })],
    ['a desk', (client: Client) => mustAsk(client, 'desk:enter', {})],
  ])('[RE3] a student whose page becomes %s is away, and hears nothing more of the bench', async (_what, become) => {
    const teacher = await aTeacher(server)
    const client = connect(server, { cookie: teacher.cookie })
    await mustAsk(client, 'seat:join', { code: teacher.code, name: 'Ada' })
    await until('Ada is here', () => isHere(teacher, 'Ada'))
    await become(client, teacher)
    await until('Ada is away', () => isHere(teacher, 'Ada') === false)
    const heard: string[] = []
    client.onAny((name) => heard.push(name))
    await startRound(server, teacher)
    await aWhile()
    expect(heard).not.toContain('bench')
  })

  test('[AU5] a page that was a desk or a board and becomes a bench is sent neither any more', async () => {
    const teacher = await aTeacher(server)
    const client = connect(server, { cookie: teacher.cookie })
    await mustAsk(client, 'desk:enter', {})
    await mustAsk(client, 'room:watch', { roomId: teacher.roomId })
    await mustAsk(client, 'viewer:enter', { key: teacher.viewerKey })
    await mustAsk(client, 'seat:join', { code: teacher.code, name: 'Ada' })
    await aWhile()
    const heard: string[] = []
    client.onAny((name) => heard.push(name))
    await startRound(server, teacher)
    await until('the bench is told', () => heard.includes('bench'))
    await aWhile()
    expect(heard.filter((name) => name !== 'bench')).toEqual([])
  })
})

test('[RO3] a student who came in after the signal stays marked, whatever pauses come later', async () => {
  const teacher = await aTeacher(server)
  const early = await aStudent(server, teacher.code, 'Ada')
  const roundId = await startRound(server, teacher)
  server.advance(10_000)
  const late = await aStudent(server, teacher.code, 'Bo')
  expect(late.view().me.late).toBe(true)
  await mustAsk(teacher.client, 'round:pause', { roomId: teacher.roomId, roundId })
  server.advance(600_000)
  await mustAsk(teacher.client, 'round:resume', { roomId: teacher.roomId, roundId })
  expect((await aReturningStudent(server, late.token)).view().me.late).toBe(true)
  expect((await aReturningStudent(server, early.token)).view().me.late).toBe(false)
  await expectSameAfterRestart(server, teacher, [early.token, late.token])
})
