/** Rooms that are open for days, in which each plays alone. Rules TH: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { rankBoard } from '../../engine/contest/rank-board.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { type StepName, stepName } from '../../engine/contest/steps.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { settingsWith } from './support/a-roster.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { disk, eachTestHasAServer, restartServer, server } from './support/each-test.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  connect,
  mustAsk,
  type Student,
  sendEverybodyHome,
  type Teacher,
  until,
} from './support/people.ts'

eachTestHasAServer({ unlimited: true, ownDisk: true })

const DAYS = 24 * 3_600_000
const nowMs = () => Date.now() + server.aheadMs()
const THREE: Partial<RoundSettings>[] = [
  { from: 4, to: 4 },
  { from: 5, to: 5, hints: 2 },
  { from: 6, to: 6 },
]
const takeHome = ({ client, roomId }: Teacher, deadlineMs: number, rounds = THREE) =>
  ask(client, 'room:take-home', { roomId, rounds: rounds.map(settingsWith), deadlineMs })

async function aTakeHomeRoom() {
  const teacher = await aTeacher(server)
  const deadlineMs = nowMs() + 5 * DAYS
  expect(await takeHome(teacher, deadlineMs)).toEqual({ ok: true, value: {} })
  await until('the desk has them', () => teacher.view().rounds.length === 3)
  return { teacher, deadlineMs, ada: await aStudent(server, teacher.code, 'Ada') }
}
const choose = async (student: Student, index: number) => {
  const { id } = student.view().rounds[index]
  return (await mustAsk(student.client, 'round:choose', { roundId: id })).bench
}
function wayOf({ start, settings }: NonNullable<ReturnType<Student['view']>['round']>): StepName[] {
  const position = parseStickers(start)
  if (!position.ok) throw new Error('a start')
  return lessonWay(position.value, settings).map(stepName)
}

describe('a take-home room', () => {
  test('[TH1] all rounds are open at once, until the deadline; each plays what they choose', async () => {
    const { teacher, deadlineMs, ada } = await aTakeHomeRoom()
    const bo = await aStudent(server, teacher.code, 'Bo')
    expect(
      ada.view().rounds.map(({ number, phase, settings }) => [number, phase, settings.from, settings.pace]),
    ).toEqual([
      [1, 'running', 4, 'alone'],
      [2, 'running', 5, 'alone'],
      [3, 'running', 6, 'alone'],
    ])
    expect([ada.view().room.deadlineMs, teacher.view().room.deadlineMs]).toEqual([deadlineMs, deadlineMs])
    const third = await choose(ada, 2)
    expect(third.round?.number).toBe(3)
    expect(third.round?.clock).toMatchObject({ phase: 'running', endsAtMs: deadlineMs })
    expect(await ada.turn(third.round!.id, 0, ['R'])).toMatchObject({ ok: true })
    const first = await choose(bo, 0)
    expect(await bo.turn(first.round!.id, 0, ['U'])).toMatchObject({ ok: true })
    // A turn goes to the round that it names, whatever was chosen: it may have waited on the device.
    expect(await ada.turn(first.round!.id, 0, ['F'])).toMatchObject({ ok: true, value: { held: 1 } })
    expect((await choose(ada, 2)).mine?.steps).toEqual(['R'])
    await expectSameAfterRestart(server, teacher, [bo.token])
  })

  test('[TH2] moments are 0, nobody is late, and equal turns share the place', async () => {
    const { teacher, ada } = await aTakeHomeRoom()
    const { round } = ada.view()
    await ada.turn(round!.id, 0, wayOf(round!))
    server.advance(2 * DAYS)
    const bo = await aStudent(server, teacher.code, 'Bo')
    expect(bo.view().me.late).toBe(false)
    await bo.turn(round!.id, 0, wayOf(round!))
    await until('both are there', () => teacher.view().lanes.filter(({ best }) => best !== null).length === 2)
    expect(
      rankBoard(teacher.view().lanes, 'running').map(({ place, late, best }) => [place, late, best?.momentMs]),
    ).toEqual([
      [1, false, 0],
      [1, false, 0],
    ])
  })

  test('[TH2] who has reached a goal stays there until they choose another round', async () => {
    const { teacher, ada } = await aTakeHomeRoom()
    const { round } = ada.view()
    await ada.turn(round!.id, 0, wayOf(round!))
    const { seatId } = ada.view().me
    await mustAsk(teacher.client, 'seat:rename', { roomId: teacher.roomId, seatId, name: 'Eve' })
    await until('the bench is told', () => ada.view().me.name === 'Eve')
    expect(ada.view().round?.id).toBe(round?.id)
    expect(ada.view().rounds[0].bestTurns).toBe(wayOf(round!).filter((name) => !/[xyz]/.test(name)).length)
    await expectSameAfterRestart(server, teacher, [ada.token])
  })

  test('[TH3] the deadline ends all rounds, and what comes later is handed in', async () => {
    const { teacher, deadlineMs, ada } = await aTakeHomeRoom()
    const { round } = ada.view()
    await ada.turn(round!.id, 0, ['R'])
    server.advance(deadlineMs - nowMs() + 1)
    await until('all have ended', () => teacher.view().rounds.every(({ phase }) => phase === 'ended'))
    expect(teacher.view().round?.clock).toMatchObject({ endedAtMs: deadlineMs, reason: 'time' })
    expect(await ada.turn(round!.id, 1, ['U'])).toMatchObject({ error: { code: 'contest/round-over' } })
    const handedIn = { roundId: round!.id, tryNumber: 2, steps: wayOf(round!) }
    expect(await ask(ada.client, 'turns:hand-in', handedIn)).toMatchObject({
      ok: true,
      value: { reached: expect.any(Object) },
    })
    expect(await mustAsk(ada.client, 'round:choose', { roundId: round!.id })).toMatchObject({
      bench: { handedIn: { reached: true } },
    })
    await expectSameAfterRestart(server, teacher, [ada.token])
  })

  test('[TH4] a restart, days later too, keeps all rounds and turns, and does not move the deadline', async () => {
    const { teacher, deadlineMs, ada } = await aTakeHomeRoom()
    const { round } = ada.view()
    await ada.turn(round!.id, 0, ['R', 'U'])
    await expectSameAfterRestart(server, teacher, [ada.token])
    for (const awayMs of [2 * DAYS, 4 * DAYS]) {
      sendEverybodyHome()
      const aheadMs = server.aheadMs() + awayMs
      await restartServer({ aheadMs })
      const back = await aReturningStudent(server, ada.token)
      expect(back.view().mine?.steps).toEqual(['R', 'U'])
      if (nowMs() < deadlineMs) {
        expect(back.view().round?.clock).toMatchObject({ phase: 'running', endsAtMs: deadlineMs })
        continue
      }
      await until('all have ended', () => back.view().rounds.every(({ phase }) => phase === 'ended'))
    }
  })

  test('[TH6] what is for a class that plays together is refused, and changes nothing', async () => {
    const { teacher, ada } = await aTakeHomeRoom()
    const { client, roomId } = teacher
    const roundId = teacher.round()
    const refused = [
      ask(client, 'round:start', { roomId, number: 4 }),
      ask(client, 'round:deal', { roomId, number: 4 }),
      ask(client, 'round:pause', { roomId, roundId }),
      ask(client, 'round:resume', { roomId, roundId }),
      ask(client, 'round:add-time', { roomId, roundId, addedMs: 60_000 }),
    ]
    for (const answer of await Promise.all(refused))
      expect(answer).toEqual({ ok: false, error: { code: 'room/not-that-kind' } })
    expect(teacher.view().rounds.map(({ phase }) => phase)).toEqual(['running', 'running', 'running'])
    // And what is for taking home is refused in a class.
    const other = await aTeacher(server, {}, teacher.cookie)
    const bo = await aStudent(server, other.code, 'Bo')
    expect(await ask(bo.client, 'round:choose', { roundId })).toMatchObject({ error: { code: 'room/not-that-kind' } })
    expect(await ask(other.client, 'room:look-at', { roomId: other.roomId, roundId })).toMatchObject({
      error: { code: 'room/not-that-kind' },
    })
    expect(await ask(ada.client, 'round:choose', { roundId: 'other' as typeof roundId })).toMatchObject({
      error: { code: 'contest/no-such-round' },
    })
  })

  test('[TH7] the teacher looks at one round after the other, ends one early, and closes the room with all of them', async () => {
    const { teacher, ada } = await aTakeHomeRoom()
    const { client, roomId } = teacher
    const [, second, third] = teacher.view().rounds
    await mustAsk(client, 'room:look-at', { roomId, roundId: second.id })
    await until('the desk shows it', () => teacher.view().round?.id === second.id)
    await mustAsk(client, 'nudge:send', { roomId, roundId: second.id, to: 'all', nudge: { kind: 'hint', level: 1 } })
    expect((await choose(ada, 1)).nudges.hint?.number).toBe(1)
    expect((await choose(ada, 2)).nudges.hint).toBeNull()
    await mustAsk(client, 'round:end', { roomId, roundId: third.id })
    await until('one has ended', () => teacher.view().rounds[2].phase === 'ended')
    expect(teacher.view().rounds[0].phase).toBe('running')
    const gone: string[] = []
    ada.client.on('seat:gone', ({ reason }) => gone.push(reason))
    await mustAsk(client, 'room:close', { roomId })
    await until('Ada is told', () => gone.length === 1)
    expect(gone).toEqual(['room-closed'])
    expect(await ask(connect(server), 'seat:join', { code: teacher.code, name: 'Bo' })).toMatchObject({
      error: { code: 'room/unknown-code' },
    })
  })
})

describe('opening it', () => {
  test.each([
    ['has passed', -1],
    ['is too far off', 61 * DAYS],
  ])('[TH8] a deadline that %s is refused', async (_what, inMs) => {
    const teacher = await aTeacher(server)
    expect(await takeHome(teacher, nowMs() + inMs)).toEqual({ ok: false, error: { code: 'room/bad-deadline' } })
    expect(teacher.view().room.deadlineMs).toBeNull()
  })

  test('[TH8] rounds that leave no start to deal are refused as a whole', async () => {
    const teacher = await aTeacher(server)
    const answer = await takeHome(teacher, nowMs() + DAYS, [{}, { parFrom: 29, parTo: 30 }])
    expect(answer).toEqual({ ok: false, error: { code: 'room/no-such-start' } })
    const { desk } = await mustAsk(teacher.client, 'room:watch', { roomId: teacher.roomId })
    expect([desk.room.deadlineMs, desk.rounds]).toEqual([null, []])
  })

  test('[TH8] a room in which a class has played is refused', async () => {
    const teacher = await aTeacher(server)
    await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    expect(await takeHome(teacher, nowMs() + DAYS)).toEqual({ ok: false, error: { code: 'room/already-used' } })
  })

  test('[TH8] asked for twice, or from two desks, it is opened once; with another deadline it is refused', async () => {
    const teacher = await aTeacher(server)
    const deadlineMs = nowMs() + DAYS
    const both = await Promise.all([takeHome(teacher, deadlineMs), takeHome(teacher, deadlineMs)])
    expect(both.map(({ ok }) => ok)).toEqual([true, true])
    expect((await takeHome(teacher, deadlineMs)).ok).toBe(true)
    const used = { ok: false, error: { code: 'room/already-used' } }
    expect(await takeHome(teacher, deadlineMs + DAYS)).toEqual(used)
    expect(await takeHome(teacher, deadlineMs, [...THREE].reverse())).toEqual(used)
    expect(await takeHome(teacher, deadlineMs, THREE.slice(1))).toEqual(used)
    await until('there are three', () => teacher.view().rounds.length === 3)
    const { desk } = await mustAsk(teacher.client, 'room:watch', { roomId: teacher.roomId })
    expect([desk.room.deadlineMs, desk.rounds.length]).toEqual([deadlineMs, 3])
  })

  test('[TH8] starting a round while it is opened makes no mixture of both', async () => {
    const teacher = await aTeacher(server)
    const { client, roomId } = teacher
    const [opened, started] = await Promise.all([
      takeHome(teacher, nowMs() + DAYS),
      ask(client, 'round:start', { roomId, number: 1 }),
    ])
    expect([opened.ok, started.ok].filter(Boolean)).toHaveLength(1)
    const { desk } = await mustAsk(client, 'room:watch', { roomId })
    expect(desk.rounds.every(({ settings }) => (settings.pace === 'alone') === (desk.room.deadlineMs !== null))).toBe(
      true,
    )
    await expectSameAfterRestart(server, teacher, [])
  })

  test.each([1, 2, 3, 4, 7])(
    '[TH9] the disk refuses write %i: asked again, it goes on where it stopped, with the same deadline',
    async (nth) => {
      const teacher = await aTeacher(server)
      const deadlineMs = nowMs() + DAYS
      disk.refuseAt(nth)
      expect(await takeHome(teacher, deadlineMs)).toEqual({ ok: false, error: { code: 'store/saving-paused' } })
      await expectSameAfterRestart(server, teacher, [])
      // Half open for a while.
      server.advance(60_000)
      expect(await takeHome(teacher, deadlineMs)).toEqual({ ok: true, value: {} })
      const ada = await aStudent(server, teacher.code, 'Ada')
      expect(ada.view().rounds.map(({ phase }) => phase)).toEqual(['running', 'running', 'running'])
      for (let index = 0; index < 3; index++)
        expect((await choose(ada, index)).round?.clock).toMatchObject({ endsAtMs: deadlineMs })
      await expectSameAfterRestart(server, teacher, [])
    },
  )
})
