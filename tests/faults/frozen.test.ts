/** The process is frozen in the middle of a round, as a machine does that has too much to do, or whose lid was closed. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { aReturningStudent, aStudent, aTeacher, mustAsk, sendEverybodyHome, until } from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'

const FROZEN_MS = 6_000

let dataDir: string
let server: ServerProcess
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-frozen-'))
})
afterEach(async () => {
  sendEverybodyHome()
  server?.child.kill('SIGCONT')
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

test.runIf(process.platform !== 'win32')(
  '[RO14] frozen for six seconds: a turn that waited counts as if nothing had been, and the round is longer by that much',
  async () => {
    server = await aProcess({ DATA_DIR: dataDir })
    const teacher = await aTeacher(server, { timeLimitMs: 30_000 })
    const ada = await aStudent(server, teacher.code, 'Ada')
    const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    const clockOf = () => {
      const clock = teacher.view().round?.clock
      if (clock?.phase !== 'running') throw new Error('it runs')
      return clock
    }
    await until('the desk shows it', () => teacher.view().round)
    const before = clockOf()
    await until('the signal has fallen', () => Date.now() > before.startsAtMs + 300)
    server.child.kill('SIGSTOP')
    await new Promise((resolve) => setTimeout(resolve, 500))
    const turned = ada.turn(roundId, 0, ['R'])
    await new Promise((resolve) => setTimeout(resolve, FROZEN_MS - 500))
    server.child.kill('SIGCONT')
    expect(await turned).toMatchObject({ ok: true, value: { held: 1 } })
    await until('the desk shows that it is longer', () => clockOf().endsAtMs !== before.endsAtMs)
    const longerMs = clockOf().endsAtMs! - before.endsAtMs!
    expect(longerMs).toBeGreaterThanOrEqual(FROZEN_MS - 100)
    expect(longerMs).toBeLessThan(FROZEN_MS + 2_000)
    expect(clockOf().startsAtMs - before.startsAtMs).toBe(longerMs)
    // Her turn was made when the round was half a second old, not seven.
    await until('the desk has her cube', () => teacher.view().cells[0]?.nSteps === 1)
    expect(teacher.view().cells[0].lastStepMs).toBeLessThan(3_000)
    expect((await aReturningStudent(server, ada.token)).view().mine?.steps).toEqual(['R'])
  },
)
