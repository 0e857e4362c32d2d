/** What the teacher sends to students in the middle of a round, and hints over the wire. Rules NU and TU: tests/RULES.md. */

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { SeatId } from '../../engine/contest/ids.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import { aServer, type TestServer } from './support/a-server.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import {
  aBoard,
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  mustAsk,
  type Student,
  sendEverybodyHome,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

let server: TestServer
beforeEach(async () => {
  server = await aServer()
})
afterEach(async () => {
  sendEverybodyHome()
  await server.end()
})

const WORDS: Nudge = { kind: 'words', words: 'check-the-hold' }
const POINT: Nudge = { kind: 'point', piece: 'DFR' }
const HINT: Nudge = { kind: 'hint', level: 2 }
const send = ({ client, roomId, round }: Teacher, to: 'all' | SeatId[], nudge: Nudge) =>
  ask(client, 'nudge:send', { roomId, roundId: round(), to, nudge })
const NONE = { hint: null, words: null, point: null }
const idOf = (student: Student) => student.view().me.seatId
const laneOf = (teacher: Teacher, name: string) => teacher.view().lanes.find((lane) => lane.name === name)

async function aClass() {
  const teacher = await aTeacher(server)
  const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
  return { teacher, ada, bo, roundId: await startRound(server, teacher) }
}

describe('nudges', () => {
  test('[NU3] reach the student they are for, and nobody else; all reach everybody', async () => {
    const { teacher, ada, bo } = await aClass()
    expect(await send(teacher, [idOf(ada)], WORDS)).toEqual({ ok: true, value: {} })
    await until('Ada has it', () => ada.view().nudges.words?.number === 1)
    expect([ada.view().nudges.words?.nudge, bo.view().nudges]).toEqual([WORDS, NONE])
    await send(teacher, 'all', POINT)
    await until('both have it', () => ada.view().nudges.point?.number === 2 && bo.view().nudges.point?.number === 1)
    expect([ada.view().nudges.point?.nudge, bo.view().nudges.point?.nudge]).toEqual([POINT, POINT])
  })

  test('[NU3] the same again is another one, so that it is noticed; a student named twice gets it once', async () => {
    const { teacher, ada } = await aClass()
    await send(teacher, [idOf(ada)], HINT)
    await send(teacher, [idOf(ada), idOf(ada)], HINT)
    await until('the second is there', () => (ada.view().nudges.hint?.number ?? 0) >= 2)
    expect(ada.view().nudges).toEqual({ ...NONE, hint: { number: 2, nudge: HINT } })
  })

  test('[NU5] the last of each kind stands, and none takes the place of another; their numbers tell which is newer', async () => {
    const { teacher, ada } = await aClass()
    const later: Nudge = { kind: 'words', words: 'well-on-your-way' }
    for (const nudge of [HINT, WORDS, POINT, later]) await send(teacher, [idOf(ada)], nudge)
    await until('the last is there', () => ada.view().nudges.words?.number === 4)
    const standing = {
      hint: { number: 1, nudge: HINT },
      words: { number: 4, nudge: later },
      point: { number: 3, nudge: POINT },
    }
    expect(ada.view().nudges).toEqual(standing)
    expect((await aReturningStudent(server, ada.token)).view().nudges).toEqual(standing)
  })

  test("[NU3] stand in the ranking's footnote, at the desk and on the board, and are there after a restart", async () => {
    const { teacher, ada, bo, roundId } = await aClass()
    const board = await aBoard(server, teacher)
    await ada.turn(roundId, 0, ['R'])
    await send(teacher, 'all', WORDS)
    await send(teacher, [idOf(ada)], POINT)
    await until('the lanes say so', () => laneOf(teacher, 'Ada')?.notes?.nNudges === 2)
    await until('the board too', () => board().lanes.find((lane) => lane.name === 'Bo')?.notes?.nNudges === 1)
    const { look } = await mustAsk(teacher.client, 'seat:look', { roomId: teacher.roomId, roundId, seatId: idOf(ada) })
    expect(look).toMatchObject({ turns: ['R'], nudges: [WORDS, POINT] })
    await expectSameAfterRestart(server, teacher, [ada.token, bo.token])
  })

  test('[NU4] are refused where nobody plays, for another round, and for nobody', async () => {
    const { teacher, ada, roundId } = await aClass()
    const { client, roomId } = teacher
    const other = await ask(client, 'nudge:send', {
      roomId,
      roundId: 'other' as typeof roundId,
      to: 'all',
      nudge: WORDS,
    })
    expect(other).toMatchObject({ error: { code: 'contest/no-such-round' } })
    const nobody = await send(teacher, ['nobody' as SeatId], WORDS)
    expect(nobody).toMatchObject({ error: { code: 'room/no-such-seat' } })
    await mustAsk(client, 'round:end', { roomId, roundId })
    expect(await send(teacher, 'all', WORDS)).toEqual({
      ok: false,
      error: { code: 'contest/wrong-phase', phase: 'ended' },
    })
    expect((await aReturningStudent(server, ada.token)).view().nudges).toEqual(NONE)
  })

  test('[NU3] a new round begins without any', async () => {
    const { teacher, ada, roundId } = await aClass()
    await send(teacher, 'all', WORDS)
    await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
    const next = await startRound(server, teacher)
    await until('Ada is there', () => ada.view().round?.id === next)
    expect([ada.view().nudges, laneOf(teacher, 'Ada')?.notes]).toEqual([NONE, null])
  })
})

describe('over the wire', () => {
  test('[TU10] a hint is held like a turn, costs what the round says, and is refused above its level', async () => {
    const teacher = await aTeacher(server, { hints: 2, hintCost: 3 })
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    expect(await ada.turn(roundId, 0, ['R', 'hint-1', 'hint-2'])).toMatchObject({ ok: true, value: { held: 3 } })
    expect(await ada.turn(roundId, 3, ['U', 'hint-3'])).toEqual({
      ok: false,
      error: { code: 'contest/no-such-hint', max: 2, held: 3 },
    })
    await ada.turn(roundId, 3, ['take-back'])
    await until('the lane says so', () => laneOf(teacher, 'Ada')?.notes !== null)
    expect(laneOf(teacher, 'Ada')).toMatchObject({ turns: 6, notes: { nHints: 2, hintLevel: 2 } })
    const { look } = await mustAsk(teacher.client, 'seat:look', { roomId: teacher.roomId, roundId, seatId: idOf(ada) })
    expect(look.hints).toEqual([
      { level: 1, afterTurns: 1 },
      { level: 2, afterTurns: 1 },
    ])
    await expectSameAfterRestart(server, teacher, [ada.token])
  })

  test('[RA7] hints of an earlier try stand in the footnote of a try without any, on desk, board and bench, and after a restart', async () => {
    const teacher = await aTeacher(server, { hints: 3, hintCost: 2 })
    const board = await aBoard(server, teacher)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await ada.turn(roundId, 0, ['hint-1', 'hint-2', 'hint-3'])
    await mustAsk(ada.client, 'turns:send', { roundId, tryNumber: 2, from: 0, steps: ['R'] })
    const told = { nHints: 0, nHintsBefore: 3, nTriesHelped: 1 }
    await until('the desk says so', () => laneOf(teacher, 'Ada')?.notes?.nHintsBefore === 3)
    expect(laneOf(teacher, 'Ada')).toMatchObject({ turns: 1, notes: told })
    await until('the board too', () => board().lanes[0]?.notes?.nHintsBefore === 3)
    await mustAsk(teacher.client, 'round:end', { roomId: teacher.roomId, roundId })
    await until('the bench too', () => ada.view().lanes[0]?.notes?.nHintsBefore === 3)
    await expectSameAfterRestart(server, teacher, [ada.token])
  })

  test('[TU12] that turns were kept on the device, or written down, is noted and survives a restart', async () => {
    const { teacher, ada, bo, roundId } = await aClass()
    const message = { roundId, tryNumber: 1, from: 0 }
    await mustAsk(ada.client, 'turns:send', { ...message, steps: ['R', 'U'], kept: true })
    await mustAsk(bo.client, 'turns:send', { ...message, steps: ['R', 'U'], written: true })
    await mustAsk(bo.client, 'turns:send', { ...message, from: 2, steps: ['F'] })
    await until('both are noted', () => laneOf(teacher, 'Ada')?.notes?.kept && laneOf(teacher, 'Bo')?.notes?.written)
    expect(laneOf(teacher, 'Ada')?.notes?.written).toBe(false)
    await expectSameAfterRestart(server, teacher, [ada.token, bo.token])
  })
})
