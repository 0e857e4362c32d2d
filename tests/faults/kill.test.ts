/** The process is killed in the middle of a round. Every acknowledged turn is there, none is invented, and the class plays on. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { RoundId } from '../../engine/contest/ids.ts'
import { type StepName, stepName, stepOf } from '../../engine/contest/steps.ts'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import { parseStickers } from '../../engine/cube/stickers.ts'
import type { Turn } from '../../engine/cube/turns.ts'
import { goalMet } from '../../engine/method/goals.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import {
  aReturningStudent,
  aStudent,
  aTeacher,
  mustAsk,
  type Student,
  sendEverybodyHome,
  until,
} from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'

const N_STUDENTS = 8
/** Moments after the signal at which the process dies. Fixed, so that a failure can be looked at again. */
const KILLED_AFTER_MS = [60, 350, 900]

let dataDir: string
let server: ServerProcess
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-kill-'))
})
afterEach(async () => {
  sendEverybodyHome()
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

/** Turns that never meet a goal by the way are not needed: a try that ends is simply over. */
const SCRIBBLE: readonly StepName[] = ['R', 'F', "U'", 'y', 'L2', 'Fw', 'M', "D'"]

describe('kill -9 in the middle of a round', () => {
  test.each(KILLED_AFTER_MS)(
    '[DU12] killed %i ms after the first turns: all acknowledged turns are there, and the class plays on',
    async (killedAfterMs) => {
      server = await aProcess({ DATA_DIR: dataDir })
      const teacher = await aTeacher(server, { timeLimitMs: 600_000 })
      const students: Student[] = []
      for (let index = 0; index < N_STUDENTS; index++)
        students.push(await aStudent(server, teacher.code, `Student ${index}`))
      const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
      await until('the signal is given', () => Date.now() > startsAtMs(students[0]))
      const clockBefore = students[0].view().round?.clock

      const acknowledged = students.map(() => 0)
      const scribbling = students.map((student, index) =>
        scribble(student, roundId, (held) => (acknowledged[index] = held)),
      )
      await new Promise((resolve) => setTimeout(resolve, killedAfterMs))
      await server.kill('SIGKILL')
      await Promise.all(scribbling)
      for (const student of students) student.client.disconnect()

      server = await aProcess({ DATA_DIR: dataDir, PORT: String(server.port) })
      for (const [index, before] of students.entries()) {
        const student = await aReturningStudent(server, before.token)
        const mine = student.view().mine
        const steps = mine?.steps ?? []
        // All that was acknowledged, in order; what was on its way may be there too, but nothing else.
        expect(steps.length).toBeGreaterThanOrEqual(acknowledged[index])
        expect(steps).toEqual(scribbled(steps.length))
        if (mine?.reached == null) await playToTheGoal(student, roundId)
      }
      expect(acknowledged.reduce((sum, held) => sum + held, 0)).toBeGreaterThan(0)
      const clockAfter = (await aReturningStudent(server, students[0].token)).view().round?.clock
      // The time in which nobody could play is taken out of the clock.
      if (clockBefore?.phase !== 'running' || clockAfter?.phase !== 'running') throw new Error('the round runs on')
      expect(clockAfter.endsAtMs! - clockAfter.startsAtMs).toBe(clockBefore.endsAtMs! - clockBefore.startsAtMs)
      expect(clockAfter.startsAtMs).toBeGreaterThan(clockBefore.startsAtMs)
    },
  )

  test('[DU13] asked to stop, the server says so, keeps what is on its way, and ends within five seconds', async () => {
    server = await aProcess({ DATA_DIR: dataDir })
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    const told = new Promise((resolve) => ada.client.on('server:going-away', resolve))
    const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    await until('the signal is given', () => Date.now() > startsAtMs(ada))
    let held = 0
    const scribbling = scribble(ada, roundId, (now) => (held = now))
    const beganAt = Date.now()
    const ended = await server.kill('SIGTERM')
    expect(ended.code).toBe(0)
    expect(Date.now() - beganAt).toBeLessThan(5_000)
    expect(await told).toEqual({})
    await scribbling
    ada.client.disconnect()
    server = await aProcess({ DATA_DIR: dataDir, PORT: String(server.port) })
    const back = await aReturningStudent(server, ada.token)
    expect(back.view().mine?.steps.length ?? 0).toBeGreaterThanOrEqual(held)
  })
})

function startsAtMs(student: Student): number {
  const clock = student.view().round?.clock
  return clock?.phase === 'running' ? clock.startsAtMs : Number.POSITIVE_INFINITY
}

function scribbled(n: number): StepName[] {
  return Array.from({ length: n }, (_, index) => SCRIBBLE[index % SCRIBBLE.length])
}

/** Turns as fast as answers come, until none comes any more. */
async function scribble(student: Student, roundId: RoundId, onHeld: (held: number) => void): Promise<void> {
  const all = scribbled(400)
  let held = 0
  while (held < all.length) {
    const answer = await Promise.race([
      student.turn(roundId, held, all.slice(held, held + 2)).catch(() => null),
      new Promise<null>((resolve) => student.client.once('disconnect', () => resolve(null))),
    ])
    if (answer === null || !answer.ok) return
    held = answer.value.held
    onHeld(held)
    if (answer.value.reached !== null) return
  }
}

/** Starts again and goes the lesson way: the room is as alive as before. */
async function playToTheGoal(student: Student, roundId: RoundId): Promise<void> {
  const view = student.view()
  const start = parseStickers(view.round!.start)
  if (!start.ok) throw new Error('not a legal start')
  const way = lessonWay(start.value, { from: 4, to: 4 })
  const number = (view.mine?.number ?? 0) + 1
  const answer = await student.turn(roundId, 0, way.map(stepName), number)
  expect(answer).toMatchObject({ ok: true, value: { held: way.length, reached: { turns: expect.any(Number) } } })
  expect(
    goalMet(
      afterTurns(
        start.value,
        way.map((turn) => stepOf(stepName(turn)) as Turn),
      ),
      4,
    ),
  ).toBe(true)
}
