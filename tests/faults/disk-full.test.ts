/**
 * The system refuses to let the data file grow, in the middle of a round: the real SQLite, the real writer's thread. The limit
 * on a process's files stands for a full disk; unlike a full disk it needs no administrator. Rules DU: tests/RULES.md.
 */

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, expect, test } from 'vitest'
import type { StepName } from '../../engine/contest/steps.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  connect,
  mustAsk,
  sendEverybodyHome,
  until,
} from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'

const dataDir = mkdtempSync(join(tmpdir(), 'fairturn-full-'))
let server: ServerProcess
afterEach(async () => {
  sendEverybodyHome()
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

/** Lets the files of the server grow up to so many bytes. */
function limitFiles(bytes: number | 'unlimited'): void {
  const done = spawnSync('prlimit', ['--pid', String(server.child.pid), `--fsize=${bytes}:unlimited`])
  if (done.status !== 0) throw new Error('prlimit is missing or refused: this test needs Linux with util-linux')
}

const isReady = async () => (await fetch(`${server.url}/readyz`)).status === 200

test('[DU15] a full disk in the middle of a round: saving pauses, goes on by itself, and everything acknowledged is there', async () => {
  server = await aProcess({ DATA_DIR: dataDir })
  const teacher = await aTeacher(server, { from: 1, to: 1, timeLimitMs: null })
  const ada = await aStudent(server, teacher.code, 'Ada')
  const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
  await until('the signal is given', () => {
    const clock = ada.view().round?.clock
    return clock?.phase === 'running' && Date.now() > clock.startsAtMs + 100
  })
  const stepAt = (index: number): StepName => (['R', 'F', "U'", 'L2'] as const)[index % 4]
  let held = 0
  const turn = async () => {
    const answer = await ada.turn(roundId, held, [stepAt(held)])
    if (answer.ok) held = answer.value.held
    return answer
  }
  for (let time = 0; time < 10; time++) await turn()
  expect(held).toBe(10)

  limitFiles(statSync(join(dataDir, 'fairturn.sqlite-wal')).size + 10_000)
  let refused = await turn()
  for (let time = 0; time < 100 && refused.ok; time++) refused = await turn()
  expect(refused).toEqual({ ok: false, error: { code: 'store/saving-paused' } })
  expect(await isReady()).toBe(false)
  expect(await ask(connect(server), 'seat:join', { code: teacher.code, name: 'Bo' })).toMatchObject({
    error: { code: 'store/saving-paused' },
  })
  await until('the desk says so', () => teacher.view().savingPaused)
  expect((await aReturningStudent(server, ada.token)).view().mine?.steps).toHaveLength(held)

  limitFiles('unlimited')
  await until('the desk is calm again', () => !teacher.view().savingPaused, 5_000)
  expect(await isReady()).toBe(true)
  const back = await aReturningStudent(server, ada.token)
  expect(await back.turn(roundId, held, [stepAt(held)])).toMatchObject({ ok: true, value: { held: held + 1 } })
  await aStudent(server, teacher.code, 'Bo')

  await server.kill('SIGKILL')
  server = await aProcess({ DATA_DIR: dataDir, PORT: String(server.port) })
  const steps = (await aReturningStudent(server, ada.token)).view().mine?.steps ?? []
  expect(steps).toEqual(Array.from({ length: held + 1 }, (_, index) => stepAt(index)))
})
