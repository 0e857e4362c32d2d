/** What a teacher looks back at: everybody's solution of a round, also of an earlier one; and what came in after the end. Rules RV, TU: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import type { RoundId } from '../../engine/contest/ids.ts'
import { MESSAGE_STEPS_MAX } from '../../engine/contest/limits.ts'
import { rankBoard } from '../../engine/contest/rank-board.ts'
import { type StepName, stepName } from '../../engine/contest/steps.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import type { StageSpan } from '../../engine/method/stages.ts'
import { hashSecret } from '../../server/secrets.ts'
import { TestDisk } from './support/a-disk.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { beginServer, eachTestHasAServer, server } from './support/each-test.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  connect,
  mustAsk,
  type Student,
  sendEverybodyHome,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

eachTestHasAServer({ unlimited: true })

async function wayThrough(teacher: Teacher, span?: StageSpan): Promise<StepName[]> {
  const round = await until('the desk has the round', () => teacher.view().round)
  const start = parseStickers(round.start)
  if (!start.ok) throw new Error('a start')
  return lessonWay(start.value, span ?? round.settings).map(stepName)
}
const reviewOf = async ({ client, roomId }: Teacher, roundId: RoundId) =>
  (await mustAsk(client, 'review:ask', { roomId, roundId })).review
const end = ({ client, roomId }: Teacher, roundId: RoundId) => mustAsk(client, 'round:end', { roomId, roundId })
const handIn = (student: Student, roundId: RoundId, steps: StepName[], tryNumber = 1) =>
  ask(student.client, 'turns:hand-in', { roundId, tryNumber, steps })

/** In as many messages as it takes. */
async function play(student: Student, roundId: RoundId, steps: StepName[]): Promise<void> {
  for (let from = 0; from < steps.length; from += MESSAGE_STEPS_MAX)
    expect((await student.turn(roundId, from, steps.slice(from, from + MESSAGE_STEPS_MAX))).ok).toBe(true)
}

/** Six students: two ways to the goal, one handed in, one stopped on the way, one hardly begun, one never turned. */
async function aPlayedRound() {
  const teacher = await aTeacher(server, { hints: 3, from: 4, to: 5, cases: ['dot'] })
  const named = async (name: string) => [name, await aStudent(server, teacher.code, name)] as const
  const names = ['Ada', 'Bo', 'Cy', 'Di', 'Eve', 'Flo']
  const students = Object.fromEntries(await Promise.all(names.map(named))) as Record<string, Student>
  const roundId = await startRound(server, teacher)
  const way = await wayThrough(teacher)
  const toTheFirstGoal = await wayThrough(teacher, { from: 4, to: 4 })
  await play(students.Bo, roundId, ['U', "U'", ...way])
  await play(students.Ada, roundId, ['hint-2', ...way])
  // A later try that goes nowhere does not take the better one's place.
  await students.Ada.turn(roundId, 0, ['R', 'R'], 2)
  await students.Cy.turn(roundId, 0, ['R'])
  await play(students.Eve, roundId, toTheFirstGoal)
  await students.Di.turn(roundId, 0, ['D', 'F', 'take-back'])
  await mustAsk(teacher.client, 'nudge:send', {
    roomId: teacher.roomId,
    roundId,
    to: [students.Eve.view().me.seatId],
    nudge: { kind: 'hint', level: 1 },
  })
  await end(teacher, roundId)
  await handIn(students.Cy, roundId, way, 2)
  return { teacher, students, roundId, way, toTheFirstGoal }
}

describe('a review', () => {
  test('[RV1] has the best try of each, what was handed in behind those that count, and how far the others went', async () => {
    const { teacher, roundId, way, toTheFirstGoal } = await aPlayedRound()
    const { solutions, par, ways, round } = await reviewOf(teacher, roundId)
    expect([round.id, ways?.shortest.length]).toEqual([roundId, par?.turns])
    expect(solutions.map(({ name, reached, afterEnd }) => [name, reached !== null, afterEnd])).toEqual([
      ['Ada', true, false],
      ['Bo', true, false],
      // As on the board: who came further stands before who did not.
      ['Eve', false, false],
      ['Di', false, false],
      ['Cy', true, true],
    ])
    const [ada, , eve, di, cy] = solutions
    expect([ada.turns, ada.tryNumber, ada.hints]).toEqual([way, 1, [{ level: 2, afterTurns: 0 }]])
    expect([eve.turns, eve.nNudges]).toEqual([toTheFirstGoal, 1])
    expect(di.turns).toEqual(['D'])
    expect([cy.turns, cy.tryNumber, cy.how.kept]).toEqual([way, 2, true])
  })

  test('[RV1] stands in the order of the board', async () => {
    const { teacher, roundId } = await aPlayedRound()
    await until('the board is told', () => teacher.view().lanes.some(({ notes }) => notes?.turnsAfterEnd != null))
    const board = rankBoard(teacher.view().lanes, 'ended').map(({ name }) => name)
    const counted = (await reviewOf(teacher, roundId)).solutions.flatMap(({ name, afterEnd }) =>
      afterEnd ? [] : [name],
    )
    expect(counted).toEqual(board.filter((name) => counted.includes(name)))
  })

  test('[RV2] of an earlier round, read back from the record, is what it was while it was held; after a restart too', async () => {
    const { teacher, roundId, students } = await aPlayedRound()
    await until('par is there', () => teacher.view().par)
    const whileHeld = await reviewOf(teacher, roundId)
    const next = await startRound(server, teacher)
    expect(teacher.view().rounds.map(({ id, phase }) => [id, phase])).toEqual([
      [roundId, 'ended'],
      [next, 'running'],
    ])
    expect(await reviewOf(teacher, roundId)).toEqual(whileHeld)
    await until('par is there', () => teacher.view().par)
    await expectSameAfterRestart(server, teacher, [students.Ada.token, students.Cy.token])
  })

  test('[RV2] of a round that was struck out is there too, before and after the next one', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await ada.turn(roundId, 0, ['R'])
    await until('par is there', () => teacher.view().par)
    await mustAsk(teacher.client, 'round:void', { roomId: teacher.roomId, roundId })
    const before = await reviewOf(teacher, roundId)
    expect(before.solutions.map(({ turns }) => turns)).toEqual([['R']])
    await startRound(server, teacher)
    expect(await reviewOf(teacher, roundId)).toEqual(before)
  })

  test('[RV3] only the teacher of the room gets it, and only of its own rounds', async () => {
    const { teacher, roundId, students } = await aPlayedRound()
    const { roomId } = teacher
    const token = 'another-session-of-another-teacher'
    await server.record.write({
      kind: 'desk-session',
      tokenHash: hashSecret(token),
      teacherId: 'another-teacher' as never,
      atMs: Date.now(),
    })
    const stranger = connect(server, { cookie: `fairturn_desk=${token}` })
    await mustAsk(stranger, 'desk:enter', {})
    for (const [name, message] of [
      ['review:ask', { roomId, roundId }],
      ['seat:look', { roomId, roundId, seatId: students.Ada.view().me.seatId }],
    ] as const) {
      expect(await ask(stranger, name, message as never)).toMatchObject({ error: { code: 'room/not-yours' } })
      expect(await ask(students.Bo.client, name, message as never)).toMatchObject({
        error: { code: 'desk/not-signed-in' },
      })
    }
    // Nor from another room of the same teacher.
    const other = await aTeacher(server, {}, teacher.cookie)
    expect(await ask(other.client, 'review:ask', { roomId: other.roomId, roundId })).toMatchObject({
      error: { code: 'contest/no-such-round' },
    })
  })

  test('[RV1] a student who was removed, or came after the end, is in none', async () => {
    const { teacher, roundId, students } = await aPlayedRound()
    await mustAsk(students.Bo.client, 'seat:leave', {})
    server.advance(1_000)
    await aStudent(server, teacher.code, 'Zoe')
    const names = (await reviewOf(teacher, roundId)).solutions.map(({ name }) => name)
    expect(names).toEqual(['Ada', 'Eve', 'Di', 'Cy'])
  })
})

describe('what is handed in after the end', () => {
  test('[TU15] is judged and shown to its student and on the board, takes no place, and survives a restart', async () => {
    const teacher = await aTeacher(server)
    const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
    const roundId = await startRound(server, teacher)
    const way = await wayThrough(teacher)
    await bo.turn(roundId, 0, ['U', "U'", ...way])
    await ada.turn(roundId, 0, way.slice(0, 2))
    expect(await handIn(ada, roundId, way)).toEqual({ ok: false, error: { code: 'contest/still-open' } })
    await end(teacher, roundId)
    const answer = await handIn(ada, roundId, way)
    expect(answer).toMatchObject({ ok: true, value: { reached: { turns: expect.any(Number) } } })
    // Sent again, because the answer was lost.
    expect(await handIn(ada, roundId, way)).toEqual(answer)
    await until('Ada sees it', () => ada.view().handedIn?.reached)
    await until('the desk too', () => teacher.view().lanes.some(({ notes }) => notes?.turnsAfterEnd != null))
    expect(rankBoard(teacher.view().lanes, 'ended').map(({ name, place }) => [name, place])).toEqual([
      ['Bo', 1],
      ['Ada', null],
    ])
    await until('par is there', () => teacher.view().par)
    await expectSameAfterRestart(server, teacher, [ada.token, bo.token])
    // Struck out afterwards it is still what it was.
    await mustAsk(teacher.client, 'round:void', { roomId: teacher.roomId, roundId })
    const back = await aReturningStudent(server, ada.token)
    expect(await handIn(back, roundId, way, 2)).toMatchObject({ error: { code: 'contest/round-over' } })
    await expectSameAfterRestart(server, teacher, [ada.token, bo.token])
  })

  test('[RO13] nobody hands in turns of a round that had ended before they came', async () => {
    const teacher = await aTeacher(server)
    const roundId = await startRound(server, teacher)
    const way = await wayThrough(teacher)
    await end(teacher, roundId)
    server.advance(1_000)
    const late = await aStudent(server, teacher.code, 'Late')
    expect(await handIn(late, roundId, way)).toEqual({ ok: false, error: { code: 'contest/round-over' } })
    expect((await aReturningStudent(server, late.token)).view().handedIn).toBeNull()
  })

  test('[TU15] of an earlier round it is judged and kept too, before and after a restart, and a review shows it', async () => {
    const teacher = await aTeacher(server)
    const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
    const first = await startRound(server, teacher)
    const way = await wayThrough(teacher)
    await ada.turn(first, 0, way.slice(0, 2))
    await end(teacher, first)
    const second = await startRound(server, teacher)
    await end(teacher, second)
    await startRound(server, teacher)
    const answer = await handIn(ada, first, way)
    expect(answer).toMatchObject({ ok: true, value: { reached: { turns: expect.any(Number) } } })
    expect(await handIn(ada, first, way)).toEqual(answer)
    // By the same rules as ever: it has to go on where the record stops.
    const another = [...way.slice(0, 1), 'take-back', ...way] as StepName[]
    expect(await handIn(ada, first, another)).toMatchObject({ error: { code: 'contest/not-the-same-try' } })
    const inReview = async () =>
      (await reviewOf(teacher, first)).solutions.map(({ name, afterEnd, turns }) => [name, afterEnd, turns])
    expect(await inReview()).toEqual([['Ada', true, way]])
    // It is in that round alone.
    expect((await reviewOf(teacher, second)).solutions).toEqual([])
    expect((await aReturningStudent(server, ada.token)).view().handedIn).toBeNull()
    await until('par is there', () => teacher.view().par)
    await expectSameAfterRestart(server, teacher, [ada.token, bo.token])
    const { dataDir } = server
    sendEverybodyHome()
    await server.stop()
    await beginServer({ dataDir, aheadMs: server.aheadMs(), unlimited: true })
    const back = await aReturningStudent(server, bo.token)
    expect(await handIn(back, first, ['R', ...way.slice(0, 1)])).toMatchObject({ value: { reached: null } })
    const desk = connect(server, { cookie: teacher.cookie })
    await mustAsk(desk, 'desk:enter', {})
    expect((await reviewOf({ ...teacher, client: desk }, first)).solutions.map(({ name }) => name)).toEqual([
      'Ada',
      'Bo',
    ])
  })

  test('[TU16] of several tries of an earlier round that come in at once the best is kept', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const first = await startRound(server, teacher)
    const way = await wayThrough(teacher)
    await end(teacher, first)
    await startRound(server, teacher)
    const worse: StepName[] = ['U', "U'", ...way]
    const answers = await Promise.all([
      handIn(ada, first, worse),
      handIn(ada, first, way, 2),
      handIn(ada, first, worse, 3),
    ])
    expect(answers.map(({ ok }) => ok)).toEqual([true, true, true])
    expect((await reviewOf(teacher, first)).solutions.map(({ turns }) => turns)).toEqual([way])
  })

  test.each([
    ['is stored', true],
    ['is not stored', false],
  ])(
    '[TU16] what comes in while the next round is on its way to the disk is in its own, when that %s',
    async (_, isStored) => {
      const disk = new TestDisk()
      await server.end()
      await beginServer({ unlimited: true, wrapRecord: disk.wrap })
      const teacher = await aTeacher(server)
      const ada = await aStudent(server, teacher.code, 'Ada')
      const first = await startRound(server, teacher)
      const way = await wayThrough(teacher)
      await end(teacher, first)
      disk.hold('round-drawn')
      const starting = ask(teacher.client, 'round:start', { roomId: teacher.roomId, number: 2 })
      await until('it is on its way', () => disk.asked.filter(({ kind }) => kind === 'round-drawn').length === 2)
      const handingIn = handIn(ada, first, way)
      // Heard by the server before the disk goes on.
      await mustAsk(ada.client, 'help:ask', { wanted: true })
      if (isStored) disk.release()
      else disk.failWhatWaits()
      expect((await starting).ok).toBe(isStored)
      const answer = await handingIn
      if (!isStored) expect(answer).toMatchObject({ error: { code: 'store/saving-paused' } })
      // A page sends it again when saving was paused.
      expect(isStored ? answer : await handIn(ada, first, way)).toMatchObject({ ok: true })
      expect((await reviewOf(teacher, first)).solutions.map(({ turns }) => turns)).toEqual([way])
      await until('par is there', () => teacher.view().par)
      await expectSameAfterRestart(server, teacher, [ada.token])
    },
  )

  test('[TU15] of an earlier round that was struck out, and of a round of another room, it is refused', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const first = await startRound(server, teacher)
    const way = await wayThrough(teacher)
    await mustAsk(teacher.client, 'round:void', { roomId: teacher.roomId, roundId: first })
    await startRound(server, teacher)
    expect(await handIn(ada, first, way)).toMatchObject({ error: { code: 'contest/round-over' } })
    const other = await aTeacher(server, {}, teacher.cookie)
    const bo = await aStudent(server, other.code, 'Bo')
    await startRound(server, other)
    expect(await handIn(bo, first, way)).toMatchObject({ error: { code: 'contest/no-such-round' } })
  })

  test('[RO13] nor of an earlier round that had ended before they came', async () => {
    const teacher = await aTeacher(server)
    const first = await startRound(server, teacher)
    const way = await wayThrough(teacher)
    await end(teacher, first)
    server.advance(1_000)
    const late = await aStudent(server, teacher.code, 'Late')
    await startRound(server, teacher)
    expect(await handIn(late, first, way)).toEqual({ ok: false, error: { code: 'contest/round-over' } })
    expect((await reviewOf(teacher, first)).solutions).toEqual([])
  })
})
