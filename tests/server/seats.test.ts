/** Coming in, coming back, and being sent away, over real sockets. Rules: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { eachTestHasAServer, server } from './support/each-test.ts'
import { aReturningStudent, aStudent, ask, aTeacher, connect, mustAsk, startRound, until } from './support/people.ts'

eachTestHasAServer()

const refusalOf = async (code: string, name: string) => {
  const answer = await ask(connect(server), 'seat:join', { code, name })
  return answer.ok ? null : answer.error.code
}

describe('coming in', () => {
  test('[IN1] a code is read whatever its case, spaces and dashes; a wrong one is refused', async () => {
    const { code } = await aTeacher(server)
    const spoken = `${code.slice(0, 3)}-${code.slice(3)} `.toLowerCase()
    expect((await aStudent(server, spoken, 'Ada')).view().room.code).toBe(code)
    expect(await refusalOf('XXXXXX', 'Bo')).toBe('room/unknown-code')
    expect(await refusalOf('', 'Bo')).toBe('room/unknown-code')
  })

  test('[IN2] a locked room lets nobody in; those inside stay and come back', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    await mustAsk(teacher.client, 'room:lock', { roomId: teacher.roomId, locked: true })
    expect(await refusalOf(teacher.code, 'Bo')).toBe('room/locked')
    expect((await aReturningStudent(server, ada.token)).view().me.name).toBe('Ada')
    await mustAsk(teacher.client, 'room:lock', { roomId: teacher.roomId, locked: false })
    expect(await refusalOf(teacher.code, 'Bo')).toBeNull()
  })

  test('[IN3] a closed room is not found by its code any more, and says so to those inside', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const gone = new Promise((resolve) => ada.client.on('seat:gone', resolve))
    await mustAsk(teacher.client, 'room:close', { roomId: teacher.roomId })
    expect(await gone).toEqual({ reason: 'room-closed' })
    expect(await refusalOf(teacher.code, 'Bo')).toBe('room/unknown-code')
    expect(await ask(connect(server), 'seat:resume', { token: ada.token })).toEqual({
      ok: false,
      error: { code: 'room/closed' },
    })
  })

  test('[IN4] a room is full at 300', async () => {
    const teacher = await aTeacher(server)
    let through = connect(server)
    for (let index = 0; index < 300; index++) {
      // A connection may come in ten times a minute; the seats it leaves behind stay.
      if (index % 10 === 0) through = connect(server)
      await mustAsk(through, 'seat:join', { code: teacher.code, name: `S ${index}` })
    }
    expect(await ask(through, 'seat:join', { code: teacher.code, name: 'One more' })).toMatchObject({
      error: { code: 'wire/too-fast' },
    })
    const refused = await ask(connect(server), 'seat:join', { code: teacher.code, name: 'One more' })
    expect(refused).toEqual({ ok: false, error: { code: 'room/full', max: 300 } })
  })

  test.each([
    ['   ', 'name/empty'],
    ['A very long name indeed', 'name/too-long'],
    ['<b>Ada</b>', 'name/unusual-letters'],
    ['Ada\u202e', 'name/unusual-letters'],
    ['sh1t', 'name/choose-another'],
    ['ADA', 'name/taken'],
    ['Zoë', null],
    ['Dickson', null],
    ['李小龍', null],
  ])('[IN5] the name %j is answered by %j', async (name, code) => {
    const teacher = await aTeacher(server)
    await aStudent(server, teacher.code, 'Ada')
    expect(await refusalOf(teacher.code, name)).toBe(code)
  })

  test('[IN6] after eight wrong codes in a minute a connection has to wait, and is told how long; a new one need not', async () => {
    const teacher = await aTeacher(server)
    const guesser = connect(server)
    for (let wrong = 0; wrong < 8; wrong++) {
      expect(await ask(guesser, 'seat:join', { code: 'BADBAD', name: 'Bo' })).toMatchObject({
        error: { code: 'room/unknown-code' },
      })
    }
    const refused = await ask(guesser, 'seat:join', { code: teacher.code, name: 'Bo' })
    expect(refused).toMatchObject({
      ok: false,
      error: { code: 'room/too-many-wrong-codes', retryAfterMs: expect.any(Number) },
    })
    expect(await refusalOf(teacher.code, 'Bo')).toBeNull()
  })
})

test('[IN10] asking again, because the answer was lost, finds the seat that was taken, even once the room is locked', async () => {
  const teacher = await aTeacher(server)
  const wish = { code: teacher.code, name: 'Ada', token: 'x'.repeat(43) }
  const first = await mustAsk(connect(server), 'seat:join', wish)
  await mustAsk(teacher.client, 'room:lock', { roomId: teacher.roomId, locked: true })
  const again = await mustAsk(connect(server), 'seat:join', wish)
  if (first.kind !== 'in' || again.kind !== 'in') throw new Error('the door is open')
  expect(again.bench.me.seatId).toBe(first.bench.me.seatId)
  expect(again.token).toBe(wish.token)
  expect((await aReturningStudent(server, wish.token)).view().me.name).toBe('Ada')
  const other = await ask(connect(server), 'seat:join', { ...wish, token: 'y'.repeat(43) })
  expect(other).toEqual({ ok: false, error: { code: 'room/locked' } })
})

describe('coming back', () => {
  test('[RE1] a reload finds the same try with all its turns', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await ada.turn(roundId, 0, ['R', 'x', "U'"])
    ada.client.disconnect()
    const back = await aReturningStudent(server, ada.token)
    expect(back.view().me.name).toBe('Ada')
    expect(back.view().mine).toMatchObject({ number: 1, steps: ['R', 'x', "U'"] })
    expect(await back.turn(roundId, 3, ['F'])).toMatchObject({ ok: true, value: { held: 4 } })
  })

  test('[RE2] the newest connection holds the seat at once; the one before is told and may not turn any more', async () => {
    const teacher = await aTeacher(server)
    const first = await aStudent(server, teacher.code, 'Ada')
    const gone = new Promise((resolve) => first.client.on('seat:gone', resolve))
    const roundId = await startRound(server, teacher)
    const second = await aReturningStudent(server, first.token)
    expect(await gone).toEqual({ reason: 'taken-over' })
    expect(await first.turn(roundId, 0, ['R'])).toEqual({ ok: false, error: { code: 'seat/none' } })
    expect(await second.turn(roundId, 0, ['R'])).toMatchObject({ ok: true })
  })

  test('[RE3] a late goodbye of the connection before does not mark a returned student as away', async () => {
    const teacher = await aTeacher(server)
    const first = await aStudent(server, teacher.code, 'Ada')
    await aReturningStudent(server, first.token)
    first.client.disconnect()
    await aStudent(server, teacher.code, 'Bo')
    await until('the desk sees Bo', () => teacher.view().seats.some((seat) => seat.name === 'Bo' && seat.here))
    expect(teacher.view().seats.find((seat) => seat.name === 'Ada')?.here).toBe(true)
  })

  test('[RE4] a made-up token finds no seat', async () => {
    await aTeacher(server)
    expect(await ask(connect(server), 'seat:resume', { token: 'made-up' })).toEqual({
      ok: false,
      error: { code: 'seat/gone' },
    })
  })
})

describe('the teacher and the seats', () => {
  test('[IN7] a removed student is told, loses the seat, and cannot come back to it; the name leaves the record', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const gone = new Promise((resolve) => ada.client.on('seat:gone', resolve))
    const seatId = ada.view().me.seatId
    await mustAsk(teacher.client, 'seat:remove', { roomId: teacher.roomId, seatId })
    expect(await gone).toEqual({ reason: 'removed' })
    expect(await ask(ada.client, 'help:ask', { wanted: true })).toEqual({ ok: false, error: { code: 'seat/none' } })
    expect(await ask(connect(server), 'seat:resume', { token: ada.token })).toEqual({
      ok: false,
      error: { code: 'seat/gone' },
    })
    expect((await server.record.loadOpenRooms())[0].seats).toEqual([])
  })

  test('[IN8] a rename reaches desk and bench, and obeys the rules of names', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const seatId = ada.view().me.seatId
    await mustAsk(teacher.client, 'seat:rename', { roomId: teacher.roomId, seatId, name: 'Ada L' })
    await until('the bench has the new name', () => ada.view().me.name === 'Ada L')
    await until('the desk has it', () => teacher.view().seats[0]?.name === 'Ada L')
    const refused = await ask(teacher.client, 'seat:rename', { roomId: teacher.roomId, seatId, name: '' })
    expect(refused).toEqual({ ok: false, error: { code: 'name/empty' } })
  })

  test('[IN9] who is stuck is seen at the desk until it is taken back, or the round is over', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    await mustAsk(ada.client, 'help:ask', { wanted: true })
    await until('the desk sees it', () => teacher.view().seats[0]?.asksForHelp)
    await mustAsk(ada.client, 'help:ask', { wanted: false })
    await until('the desk sees that it is over', () => !teacher.view().seats[0].asksForHelp)
    const roundId = await startRound(server, teacher)
    await mustAsk(ada.client, 'help:ask', { wanted: true })
    await until('the desk sees it', () => teacher.view().seats[0].asksForHelp)
    await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
    await until('the round is over, and so is that', () => !teacher.view().seats[0].asksForHelp)
  })
})
