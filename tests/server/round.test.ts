/** A class plays a round, over real sockets and a real data file. Rules: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { rankBoard } from '../../engine/contest/rank-board.ts'
import { type StepName, stepName } from '../../engine/contest/steps.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { eachTestHasAServer, server } from './support/each-test.ts'
import { aReturningStudent, aStudent, ask, aTeacher, connect, mustAsk, startRound, until } from './support/people.ts'

eachTestHasAServer()

function wayOf(start: string): StepName[] {
  const position = parseStickers(start)
  if (!position.ok) throw new Error('not a legal start')
  return lessonWay(position.value, { from: 4, to: 4 }).map(stepName)
}

describe('a round', () => {
  test('[RO1] all students get the same start at the same moment of the server, and the board ranks who reaches the goal', async () => {
    const teacher = await aTeacher(server)
    const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
    const roundId = await startRound(server, teacher)
    await until(
      'both benches show the round',
      () => ada.view().round?.id === roundId && bo.view().round?.id === roundId,
    )
    expect(ada.view().round?.start).toBe(bo.view().round?.start)
    expect(ada.view().round?.clock).toEqual(bo.view().round?.clock)

    const way = wayOf(ada.view().round!.start)
    const detour: StepName[] = ['U', "U'", ...way]
    expect(await bo.turn(roundId, 0, detour)).toMatchObject({ ok: true, value: { held: detour.length } })
    const answer = await ada.turn(roundId, 0, way)
    expect(answer).toMatchObject({ ok: true, value: { held: way.length, reached: { turns: expect.any(Number) } } })

    await until(
      'the desk sees both flags',
      () => teacher.view().lanes.filter((lane) => lane.best !== null).length === 2,
    )
    expect(rankBoard(teacher.view().lanes, 'running').map((lane) => [lane.place, lane.name])).toEqual([
      [1, 'Ada'],
      [2, 'Bo'],
    ])
    await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
    await until('the benches see the ranking', () => bo.view().round?.clock.phase === 'ended')
    expect(rankBoard(bo.view().lanes, 'ended').map((lane) => lane.name)).toEqual(['Ada', 'Bo'])
  })

  test('[RO2] turns before the signal, in a pause and after the end are refused, and nothing of them is stored', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    const { roomId } = teacher
    expect(await ada.turn(roundId, 0, ['U'])).toEqual({ ok: false, error: { code: 'contest/not-started' } })
    server.advance(3_000)
    expect(await ada.turn(roundId, 0, ['U'])).toMatchObject({ ok: true, value: { held: 1 } })
    await mustAsk(teacher.client, 'round:pause', { roomId, roundId })
    expect(await ada.turn(roundId, 1, ['R'])).toEqual({ ok: false, error: { code: 'contest/paused' } })
    await mustAsk(teacher.client, 'round:resume', { roomId, roundId })
    await mustAsk(teacher.client, 'round:end', { roomId, roundId })
    expect(await ada.turn(roundId, 1, ['R'])).toEqual({ ok: false, error: { code: 'contest/round-over' } })
    const again = await aReturningStudent(server, ada.token)
    expect(again.view().mine?.steps).toEqual(['U'])
  })

  test('[RO3] the clock ends the round by itself, at its own moment; added time moves that moment; a pause does too', async () => {
    const teacher = await aTeacher(server, { timeLimitMs: 60_000 })
    const roundId = await startRound(server, teacher)
    const { roomId } = teacher
    await mustAsk(teacher.client, 'round:add-time', { roomId, roundId, addedMs: 60_000 })
    await mustAsk(teacher.client, 'round:pause', { roomId, roundId })
    server.advance(600_000)
    await mustAsk(teacher.client, 'round:resume', { roomId, roundId })
    server.advance(110_000)
    const late = await aStudent(server, teacher.code, 'Ada')
    expect(late.view().me.late).toBe(true)
    expect(await late.turn(roundId, 0, ['U'])).toMatchObject({ ok: true })
    server.advance(11_000)
    const clock = await until('the round has ended', () => {
      const now = teacher.view().round?.clock
      return now?.phase === 'ended' ? now : null
    })
    expect(clock.reason).toBe('time')
    expect(clock.endedAtMs - clock.startsAtMs).toBe(120_000)
    expect(await late.turn(roundId, 1, ['U'])).toEqual({ ok: false, error: { code: 'contest/round-over' } })
  })

  test('[RO4] pressing start twice, or from two tabs, starts one round', async () => {
    const teacher = await aTeacher(server)
    const message = { roomId: teacher.roomId, number: 1 }
    const [first, second] = await Promise.all([
      mustAsk(teacher.client, 'round:start', message),
      mustAsk(teacher.client, 'round:start', message),
    ])
    expect(second.roundId).toBe(first.roundId)
    const other = connect(server, { cookie: teacher.cookie })
    await mustAsk(other, 'desk:enter', {})
    expect((await mustAsk(other, 'round:start', message)).roundId).toBe(first.roundId)
    await until('one round is counted', () => teacher.view().nRounds === 1)
  })

  test('[RO5] a voided round counts for nobody and the next one can start', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await until('the bench has it', () => ada.view().round?.id === roundId)
    await ada.turn(roundId, 0, wayOf(ada.view().round!.start))
    await mustAsk(teacher.client, 'round:void', { roomId: teacher.roomId, roundId })
    await until('it is void', () => teacher.view().round?.clock.phase === 'void')
    expect(teacher.view().lanes).toEqual([])
    const next = await startRound(server, teacher)
    expect(next).not.toBe(roundId)
  })
})

test('[RO13] who comes in after the end has no part in that round', async () => {
  const teacher = await aTeacher(server)
  const ada = await aStudent(server, teacher.code, 'Ada')
  const roundId = await startRound(server, teacher)
  await ada.turn(roundId, 0, ['R'])
  await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
  server.advance(1_000)
  const bo = await aStudent(server, teacher.code, 'Bo')
  expect(bo.view()).toMatchObject({ lanes: [], mine: null, nStudents: 1 })
  await until('the desk sees Bo', () => teacher.view().seats.length === 2)
  expect(teacher.view().lanes.map((lane) => lane.name)).toEqual(['Ada'])
  // The next round is for both.
  await startRound(server, teacher)
  await until('both have a lane', () => teacher.view().lanes.length === 2)
})

describe('turns', () => {
  test('[TU1] turns sent twice, or again from an earlier number, are held once and answered the same', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    const first = await ada.turn(roundId, 0, ['R', 'U'])
    expect(await ada.turn(roundId, 0, ['R', 'U'])).toEqual(first)
    expect(await ada.turn(roundId, 0, ['R', 'U', "R'"])).toMatchObject({ ok: true, value: { held: 3 } })
    expect(await ada.turn(roundId, 1, ['U'])).toMatchObject({ ok: true, value: { held: 3 } })
    const again = await aReturningStudent(server, ada.token)
    expect(again.view().mine?.steps).toEqual(['R', 'U', "R'"])
  })

  test('[TU3] turns whose `from` lies past what the server holds are refused with the number to resume from', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await ada.turn(roundId, 0, ['R'])
    expect(await ada.turn(roundId, 3, ['U'])).toEqual({ ok: false, error: { code: 'contest/gap', held: 1 } })
  })

  test('[TU4] many turns on their way at once arrive in order and are each held once', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    const names: StepName[] = Array.from({ length: 40 }, (_, index) => (['R', 'U', 'F', 'D'] as const)[index % 4])
    const answers = await Promise.all(names.map((name, from) => ada.turn(roundId, from, [name])))
    const refused = answers.filter((answer) => !answer.ok)
    expect(refused).toEqual([])
    const again = await aReturningStudent(server, ada.token)
    const { mine } = again.view()
    expect(mine?.steps).toEqual(names.slice(0, mine?.steps.length))
    expect(mine?.steps.length === 40 || mine?.reached !== null).toBe(true)
  })

  test("[TU5] a student cannot turn for another: the seat is the connection's, whatever the message says", async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    await aStudent(server, teacher.code, 'Bo')
    const roundId = await startRound(server, teacher)
    const stranger = connect(server)
    expect(await ask(stranger, 'turns:send', { roundId, tryNumber: 1, from: 0, steps: ['R'] })).toEqual({
      ok: false,
      error: { code: 'seat/none' },
    })
    const forged = { roundId, tryNumber: 1, from: 0, steps: ['R'], seatId: 'somebody' }
    expect(await ada.client.timeout(5_000).emitWithAck('turns:send', forged as never)).toMatchObject({
      ok: false,
      error: { code: 'wire/malformed' },
    })
    await ada.turn(roundId, 0, ['R'])
    await until('one lane has grown', () => teacher.view().lanes.find((lane) => lane.name === 'Ada')?.turns === 1)
    expect(teacher.view().lanes.find((lane) => lane.name === 'Bo')?.turns).toBe(0)
  })
})
