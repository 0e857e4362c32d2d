/** A whole school comes back at once, after the server died or was started again in the middle of their turns. Rules: tests/RULES.md. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { StepName } from '../../engine/contest/steps.ts'
import { aStudent, ask, aTeacher, mustAsk, type Student, sendEverybodyHome, until } from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'

const N_STUDENTS = 200
const BACK_WITHIN_MS = 10_000

let dataDir: string
let server: ServerProcess
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-storm-'))
})
afterEach(async () => {
  sendEverybodyHome()
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

/** Turns that lead nowhere near a goal within a few seconds. */
const stepAt = (index: number): StepName => (['R', 'F', "U'", 'L2', "D'", 'B'] as const)[index % 6]

test.each(['SIGKILL', 'SIGTERM'] as const)(
  '[RE5] 200 students in the middle of their turns, %s: all are back on their seats within ten seconds, and nothing acknowledged is lost',
  async (signal) => {
    server = await aProcess({ DATA_DIR: dataDir })
    const teacher = await aTeacher(server, { from: 1, to: 1, timeLimitMs: null })
    const students: Student[] = []
    for (let index = 0; index < N_STUDENTS; index++)
      students.push(await aStudent(server, teacher.code, `Pupil ${index}`))
    const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    await until('the signal is given', () => {
      const clock = students[N_STUDENTS - 1].view().round?.clock
      return clock?.phase === 'running' && Date.now() > clock.startsAtMs + 100
    })

    const held = students.map(() => 0)
    let isOver = false
    const turning = students.map(async (student, index) => {
      while (!isOver && student.client.connected) {
        const from = held[index]
        const answer = await Promise.race([
          student.turn(roundId, from, [stepAt(from), stepAt(from + 1)]).catch(() => null),
          new Promise<null>((resolve) => student.client.once('disconnect', () => resolve(null))),
        ])
        if (answer === null || !answer.ok) return
        held[index] = answer.value.held
        if (answer.value.reached !== null) return
        await new Promise((resolve) => setTimeout(resolve, 100))
      }
    })
    await new Promise((resolve) => setTimeout(resolve, 1_500))

    const back = new Map<number, readonly StepName[]>()
    for (const [index, student] of students.entries()) {
      student.client.on('connect', async () => {
        const answer = await ask(student.client, 'seat:resume', { token: student.token })
        if (answer.ok) back.set(index, answer.value.bench.mine?.steps ?? [])
      })
    }
    const ended = await server.kill(signal)
    if (signal === 'SIGTERM') expect(ended.code).toBe(0)
    isOver = true
    await Promise.all(turning)
    server = await aProcess({ DATA_DIR: dataDir, PORT: String(server.port) })
    await until('everybody is back', () => back.size === N_STUDENTS, BACK_WITHIN_MS)
    for (const [index, steps] of back) {
      expect(steps.length).toBeGreaterThanOrEqual(held[index])
      expect(steps).toEqual(steps.map((_, at) => stepAt(at)))
    }
    expect(held.reduce((sum, each) => sum + each, 0)).toBeGreaterThan(N_STUDENTS)
  },
)
