/** The door of a room: names from a list, given names, waiting for the teacher, another device. Rules DO: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { isFriendlyName } from '../../engine/contest/friendly-names.ts'
import { looksRude } from '../../engine/contest/looks-rude.ts'
import { KNOCKS_MAX } from '../../server/live/room-door.ts'
import { rosterAtDoor } from './support/a-roster.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { disk, eachTestHasAServer, restartServer, server } from './support/each-test.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  atTheDoor,
  connect,
  type Knocker,
  mustAsk,
  sendEverybodyHome,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

eachTestHasAServer({ unlimited: true, ownDisk: true })

const aWhile = (ms = 150) => new Promise((resolve) => setTimeout(resolve, ms))
const WAITING = { ok: true, value: { kind: 'waiting' } } as const
const nJoins = () => disk.asked.filter((entry) => entry.kind === 'seat-joined').length
const codeOf = ({ answer }: Knocker) => (answer.ok ? answer.value.kind : answer.error.code)
const namesIn = (teacher: Teacher) => teacher.view().seats.map(({ name }) => name)
const setEntry = ({ client, roomId }: Teacher, entry: { names: 'typed' | 'given'; approve: boolean }) =>
  mustAsk(client, 'room:entry', { roomId, entry: { ...entry, rosterId: null } })
/** The first who waits, seen from the desk. */
const firstKnock = (teacher: Teacher) => until('somebody waits', () => teacher.view().knocks[0])
const answerKnock = async (teacher: Teacher, letIn: boolean) => {
  const { knockId } = await firstKnock(teacher)
  return ask(teacher.client, 'knock:answer', { roomId: teacher.roomId, knockId, letIn })
}

describe('a roster at the door', () => {
  test('[DO1] says its names and who is here; a child picks one and is in', async () => {
    const teacher = await aTeacher(server)
    await rosterAtDoor(teacher, ['Ada', 'Bo'])
    const ada = await atTheDoor(server, teacher.code, { pupilId: 'pupil-ada' })
    expect(ada.seated()?.view().me.name).toBe('Ada')
    const { door } = await mustAsk(connect(server), 'room:ask', { code: teacher.code })
    expect(door).toMatchObject({
      names: 'roster',
      pupils: [
        { pupilId: 'pupil-ada', name: 'Ada', isHere: true },
        { pupilId: 'pupil-bo', name: 'Bo', isHere: false },
      ],
    })
    await until('the desk knows who it is', () => teacher.view().seats[0]?.pupilId === 'pupil-ada')
  })

  test('[DO1] a room of typed or given names tells no names', async () => {
    const teacher = await aTeacher(server)
    await rosterAtDoor(teacher, ['Ada'])
    await setEntry(teacher, { names: 'typed', approve: false })
    const { door } = await mustAsk(connect(server), 'room:ask', { code: teacher.code })
    expect(door).toMatchObject({ names: 'typed', pupils: [] })
  })

  test('[DO1] neither a name that is not on it nor none comes in by itself', async () => {
    const teacher = await aTeacher(server)
    await rosterAtDoor(teacher, ['Ada'])
    expect(codeOf(await atTheDoor(server, teacher.code, {}))).toBe('room/pick-a-name')
    expect(codeOf(await atTheDoor(server, teacher.code, { pupilId: 'pupil-zoe' }))).toBe('room/pick-a-name')
    const zoe = await atTheDoor(server, teacher.code, { name: 'Zoe' })
    expect(zoe.answer).toEqual(WAITING)
    expect(await firstKnock(teacher)).toMatchObject({ name: 'Zoe', moves: false })
    expect(namesIn(teacher)).toEqual([])
    expect(await answerKnock(teacher, true)).toMatchObject({ ok: true })
    await until('Zoe is in', () => zoe.seated() !== null && namesIn(teacher).includes('Zoe'))
    expect(teacher.view().seats[0].pupilId).toBeNull()
  })

  test('[DO1] a child that was given another name is still on the list only once', async () => {
    const teacher = await aTeacher(server)
    await rosterAtDoor(teacher, ['Ada', 'Bo'])
    const ada = await atTheDoor(server, teacher.code, { pupilId: 'pupil-ada' })
    const { seatId } = ada.seated()!.view().me
    await mustAsk(teacher.client, 'seat:rename', { roomId: teacher.roomId, seatId, name: 'Ada L' })
    expect(codeOf(await atTheDoor(server, teacher.code, { pupilId: 'pupil-ada' }))).toBe('name/taken')
    const moved = await atTheDoor(server, teacher.code, { pupilId: 'pupil-ada', moves: true })
    expect(moved.answer).toEqual(WAITING)
    expect(await firstKnock(teacher)).toMatchObject({ name: 'Ada L', moves: true })
  })

  test('[DO2] next week, after a restart and in another room, the same child has the same identifier', async () => {
    const teacher = await aTeacher(server)
    const rosterId = await rosterAtDoor(teacher, ['Ada', 'Bo'])
    await atTheDoor(server, teacher.code, { pupilId: 'pupil-bo' })
    const { cookie, roomId, client } = teacher
    await mustAsk(client, 'room:close', { roomId })
    sendEverybodyHome()
    await restartServer({ aheadMs: 7 * 24 * 3_600_000 })
    const next = await aTeacher(server, {}, cookie)
    const entry = { names: 'roster', rosterId, approve: false } as const
    await mustAsk(next.client, 'room:entry', { roomId: next.roomId, entry })
    await atTheDoor(server, next.code, { pupilId: 'pupil-bo' })
    await until('Bo is here', () => next.view().seats[0]?.pupilId === 'pupil-bo')
  })

  test("[DO3] another teacher's roster is at no door of mine, and a removed one leaves typed names", async () => {
    const teacher = await aTeacher(server)
    const rosterId = await rosterAtDoor(teacher, ['Ada'])
    const { client, roomId, code } = teacher
    const entry = { names: 'roster', rosterId: 'no-such-roster', approve: false } as const
    expect(await ask(client, 'room:entry', { roomId, entry })).toMatchObject({ error: { code: 'shelf/not-yours' } })
    await mustAsk(client, 'roster:remove', { rosterId })
    const { door } = await mustAsk(connect(server), 'room:ask', { code })
    expect(door).toMatchObject({ names: 'typed', pupils: [] })
    expect(codeOf(await atTheDoor(server, code, { name: 'Cy' }))).toBe('in')
  })
})

describe('waiting for the teacher', () => {
  test('[DO4] who waits is seen at the desk alone, has no seat, and is let in or sent away', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const [ada, bo] = [
      await atTheDoor(server, teacher.code, { name: 'Ada' }),
      await atTheDoor(server, teacher.code, { name: 'Bo' }),
    ]
    expect([ada.answer, bo.answer]).toEqual([WAITING, WAITING])
    await until('both wait', () => teacher.view().knocks.length === 2)
    expect(await ask(ada.client, 'help:ask', { wanted: true })).toMatchObject({ error: { code: 'seat/none' } })
    const { board } = await mustAsk(connect(server), 'viewer:enter', { key: teacher.viewerKey })
    expect(JSON.stringify(board)).not.toMatch(/Ada|Bo|knock/)
    await answerKnock(teacher, true)
    await until('Ada is in', () => ada.seated() !== null)
    await until('Bo waits alone', () => teacher.view().knocks.length === 1)
    await answerKnock(teacher, false)
    await until('Bo is told', () => bo.heard.length === 1)
    expect([ada.heard, bo.heard]).toEqual([['let-in'], ['turned-away']])
    await until('one is in', () => namesIn(teacher).join() === 'Ada' && teacher.view().knocks.length === 0)
    // The secret that the page made is the seat's.
    expect((await aReturningStudent(server, ada.wish.token!)).view().me.name).toBe('Ada')
    expect(await ask(connect(server), 'seat:resume', { token: bo.wish.token! })).toMatchObject({
      error: { code: 'seat/gone' },
    })
  })

  test('[DO5] who gives up, hangs up or comes in elsewhere waits no longer', async () => {
    const teacher = await aTeacher(server)
    const other = await aTeacher(server, {}, teacher.cookie)
    await setEntry(teacher, { names: 'typed', approve: true })
    const leaves: ((knocker: Knocker) => unknown)[] = [
      ({ client }) => mustAsk(client, 'seat:give-up', {}),
      ({ client }) => client.disconnect(),
      ({ client }) => mustAsk(client, 'seat:join', { code: other.code, name: 'Ada' }),
      ({ client }) => mustAsk(client, 'viewer:enter', { key: other.viewerKey }),
    ]
    for (const leave of leaves) {
      const ada = await atTheDoor(server, teacher.code, { name: 'Ada' })
      const { knockId } = await firstKnock(teacher)
      await leave(ada)
      await until('nobody waits', () => teacher.view().knocks.length === 0)
      const answered = await ask(teacher.client, 'knock:answer', { roomId: teacher.roomId, knockId, letIn: true })
      expect(answered).toEqual({ ok: false, error: { code: 'room/nobody-there' } })
    }
  })

  test('[DO5] a page that lost its connection knocks again, and is there once, also before the old one is missed', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const ada = await atTheDoor(server, teacher.code, { name: 'Ada' })
    const again = await atTheDoor(server, teacher.code, ada.wish)
    await until('one waits', () => teacher.view().knocks.length === 1)
    ada.client.disconnect()
    await aWhile()
    expect(teacher.view().knocks).toHaveLength(1)
    await answerKnock(teacher, true)
    await until('she is in', () => again.seated() !== null)
  })

  test('[DO5] who gives up while being let in is not seated behind their own back', async () => {
    const teacher = await aTeacher(server)
    const other = await aTeacher(server, {}, teacher.cookie)
    await setEntry(teacher, { names: 'typed', approve: true })
    const ada = await atTheDoor(server, teacher.code, { name: 'Ada' })
    await firstKnock(teacher)
    disk.hold('seat-joined')
    const answered = answerKnock(teacher, true)
    await until('it is on its way', () => disk.asked.some((entry) => entry.kind === 'seat-joined'))
    await mustAsk(ada.client, 'seat:give-up', {})
    disk.release()
    await answered
    const elsewhere = await mustAsk(ada.client, 'seat:join', { code: other.code, name: 'Ada' })
    expect(elsewhere.kind).toBe('in')
    await aWhile()
    expect(ada.heard).toEqual([])
    // The name is free for somebody else.
    await until('nobody sits there', () => namesIn(teacher).length === 0)
  })

  test('[DO6] two desks that open the door at once let one in, and neither is told of a fault', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const ada = await atTheDoor(server, teacher.code, { name: 'Ada' })
    const { knockId } = await firstKnock(teacher)
    const message = { roomId: teacher.roomId, knockId, letIn: true }
    const answers = await Promise.all([
      ask(teacher.client, 'knock:answer', message),
      ask(teacher.client, 'knock:answer', message),
    ])
    expect(answers).toEqual([
      { ok: true, value: {} },
      { ok: true, value: {} },
    ])
    await until('she is in', () => ada.seated() !== null)
    await until('once', () => namesIn(teacher).join() === 'Ada')
    expect(ada.heard).toEqual(['let-in'])
  })

  test('[DO6] a name that was taken meanwhile, or a disk that refuses, leaves them waiting', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const ada = await atTheDoor(server, teacher.code, { name: 'Ada' })
    await firstKnock(teacher)
    disk.refuse(true)
    expect(await answerKnock(teacher, true)).toMatchObject({ error: { code: 'store/saving-paused' } })
    disk.refuse(false)
    await setEntry(teacher, { names: 'typed', approve: false })
    const first = await aStudent(server, teacher.code, 'ada')
    expect(await answerKnock(teacher, true)).toMatchObject({ error: { code: 'name/taken' } })
    expect(teacher.view().knocks).toHaveLength(1)
    await mustAsk(first.client, 'seat:leave', {})
    expect(await answerKnock(teacher, true)).toMatchObject({ ok: true })
    await until('she is in', () => ada.seated() !== null)
  })

  test('[DO6] two cannot wait under one name: the second is told that it is taken', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    await atTheDoor(server, teacher.code, { name: 'Ben' })
    await firstKnock(teacher)
    const second = await ask(connect(server), 'seat:join', { code: teacher.code, name: 'ben', token: 'y'.repeat(43) })
    expect(second).toEqual({ ok: false, error: { code: 'name/taken' } })
    expect(teacher.view().knocks).toHaveLength(1)
  })

  test('[DO7] when the room is closed, who waits is told so', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const ada = await atTheDoor(server, teacher.code, { name: 'Ada' })
    await firstKnock(teacher)
    await mustAsk(teacher.client, 'room:close', { roomId: teacher.roomId })
    await until('she is told', () => ada.heard.length > 0)
    expect(ada.heard).toEqual(['gone'])
    await until('nobody waits', () => teacher.view().knocks.length === 0)
  })

  test('[DO8] two classes may wait, one more is told to come later, and somebody who knocks again is none more', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const client = connect(server)
    const tokens: string[] = []
    for (let index = 0; index < KNOCKS_MAX; index++) {
      // One connection waits once: each of these is another page.
      const knocker = await atTheDoor(server, teacher.code, { name: `N${index}` })
      expect(knocker.answer).toEqual(WAITING)
      tokens.push(knocker.wish.token!)
    }
    const late = await ask(client, 'seat:join', { code: teacher.code, name: 'Late' })
    expect(late).toEqual({ ok: false, error: { code: 'room/door-crowded', max: KNOCKS_MAX } })
    expect(await ask(client, 'seat:join', { code: teacher.code, name: 'N7', token: tokens[7] })).toEqual(WAITING)
  })

  test('[DO8] one page that knocks under many names waits once', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'typed', approve: true })
    const client = connect(server)
    for (const name of ['Ada', 'Bo', 'Cy']) await atTheDoor(server, teacher.code, { name }, client)
    await until('somebody waits', () => teacher.view().knocks.length > 0)
    await aWhile()
    expect(teacher.view().knocks.map(({ name }) => name)).toEqual(['Cy'])
  })
})

describe('another device', () => {
  test('[DO9] a name that is taken is refused, or asked about; let in, the new device goes on where the old one was', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await ada.turn(roundId, 0, ['R', 'U'])
    expect(codeOf(await atTheDoor(server, teacher.code, { name: 'ada' }))).toBe('name/taken')
    const gone: string[] = []
    ada.client.on('seat:gone', ({ reason }) => gone.push(reason))
    const moved = await atTheDoor(server, teacher.code, { name: 'ADA', moves: true })
    expect(moved.answer).toEqual(WAITING)
    expect(await firstKnock(teacher)).toMatchObject({ name: 'Ada', moves: true })
    // Until then the old device plays on.
    expect(await ada.turn(roundId, 2, ['F'])).toMatchObject({ ok: true })
    await answerKnock(teacher, true)
    const there = await until('it has the seat', () => moved.seated())
    expect(there.view().mine?.steps).toEqual(['R', 'U', 'F'])
    expect(await there.turn(roundId, 3, ['D'])).toMatchObject({ ok: true, value: { held: 4 } })
    expect(gone).toEqual(['taken-over'])
    expect(await ada.turn(roundId, 4, ['L'])).toMatchObject({ error: { code: 'seat/none' } })
    // The old secret opens nothing, after a restart neither.
    expect(await ask(connect(server), 'seat:resume', { token: ada.token })).toMatchObject({
      error: { code: 'seat/gone' },
    })
    expect(teacher.view().seats).toHaveLength(1)
    await expectSameAfterRestart(server, teacher, [moved.wish.token!, ada.token])
  })

  test('[DO9] turned away, nothing has changed for the old device', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const thief = await atTheDoor(server, teacher.code, { name: 'Ada', moves: true })
    await answerKnock(teacher, false)
    await until('it is told', () => thief.heard.length === 1)
    expect(await ask(ada.client, 'help:ask', { wanted: true })).toMatchObject({ ok: true })
    expect((await aReturningStudent(server, ada.token)).view().me.name).toBe('Ada')
  })

  test('[DO9] a seat that was removed meanwhile cannot be taken over', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    await atTheDoor(server, teacher.code, { name: 'Ada', moves: true })
    await firstKnock(teacher)
    await mustAsk(ada.client, 'seat:leave', {})
    expect(await answerKnock(teacher, true)).toMatchObject({ error: { code: 'room/no-such-seat' } })
  })

  test('[DO10] in a locked room only somebody who moves may knock', async () => {
    const teacher = await aTeacher(server)
    await aStudent(server, teacher.code, 'Ada')
    await mustAsk(teacher.client, 'room:lock', { roomId: teacher.roomId, locked: true })
    expect(codeOf(await atTheDoor(server, teacher.code, { name: 'Bo' }))).toBe('room/locked')
    expect(codeOf(await atTheDoor(server, teacher.code, { name: 'Bo', moves: true }))).toBe('room/locked')
    await setEntry(teacher, { names: 'typed', approve: true })
    expect(codeOf(await atTheDoor(server, teacher.code, { name: 'Bo' }))).toBe('room/locked')
    expect(codeOf(await atTheDoor(server, teacher.code, { name: 'Ada', moves: true }))).toBe('waiting')
  })
})

describe('given names', () => {
  test('[DO11] are friendly and different, however many come at once, and whatever name is sent along', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'given', approve: false })
    // So many while the disk takes its time that some would be drawn twice, but once in a thousand runs.
    const N_AT_ONCE = 200
    disk.hold()
    const coming = Array.from({ length: N_AT_ONCE }, (_, index) =>
      atTheDoor(server, teacher.code, index % 2 === 0 ? {} : { name: 'Boss' }),
    )
    await until('all are on their way', () => nJoins() >= N_AT_ONCE - 10, 3_000).catch(() => undefined)
    disk.release()
    const all = await Promise.all(coming)
    expect(all.filter(({ answer }) => !answer.ok).map(codeOf)).toEqual([])
    const names = all.map((each) => each.seated()!.view().me.name)
    expect(new Set(names).size).toBe(N_AT_ONCE)
    expect(names.filter((name) => !isFriendlyName(name) || looksRude(name))).toEqual([])
  })

  test('[DO11] are different among those who wait, and stay with who knocks again', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'given', approve: true })
    const all = await Promise.all(Array.from({ length: KNOCKS_MAX }, () => atTheDoor(server, teacher.code, {})))
    await until('all wait', () => teacher.view().knocks.length === KNOCKS_MAX)
    const before = teacher.view().knocks.map(({ name }) => name)
    expect(new Set(before).size).toBe(KNOCKS_MAX)
    for (const { wish } of all.slice(0, 5)) await atTheDoor(server, teacher.code, wish)
    await aWhile()
    expect(teacher.view().knocks.map(({ name }) => name)).toEqual(before)
  })

  test('[DO11] nobody comes by a name of their own by saying that they move', async () => {
    const teacher = await aTeacher(server)
    await setEntry(teacher, { names: 'given', approve: false })
    const sly = await atTheDoor(server, teacher.code, { name: 'Boss', moves: true })
    expect(codeOf(sly)).toBe('room/no-such-seat')
    const first = await atTheDoor(server, teacher.code, {})
    const { name } = first.seated()!.view().me
    expect(codeOf(await atTheDoor(server, teacher.code, { name, moves: true }))).toBe('waiting')
  })
})
