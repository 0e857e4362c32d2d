/**
 * No turn is acknowledged before the system says that its commit is on the disk, as the system itself sees it: killing a
 * process cannot show this, because what was written but not synced survives the process. Rules DU: tests/RULES.md.
 */

import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, expect, test } from 'vitest'
import type { StepName } from '../../engine/contest/steps.ts'
import { aStudent, aTeacher, mustAsk, sendEverybodyHome, until } from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'

const N_TURNS = 150
const CALLS = 'fdatasync,fsync,pwrite64,write,writev,sendto,sendmsg'

const dataDir = mkdtempSync(join(tmpdir(), 'fairturn-sync-'))
let server: ServerProcess
afterEach(async () => {
  sendEverybodyHome()
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

test('[DU16] no turn is acknowledged before its commit is written and synced, as the system sees it', async () => {
  if (spawnSync('strace', ['-V']).status !== 0) {
    throw new Error('strace is missing: apt install strace (.ci/run does it), then run the tests again')
  }
  const trace = join(dataDir, 'trace')
  // -D: the tracer is no parent of the server, which so stays our own child.
  server = await aProcess({ DATA_DIR: join(dataDir, 'data') }, [
    'strace',
    '-D',
    '-f',
    '-qq',
    '-s',
    '160',
    '-e',
    `trace=${CALLS}`,
    '-o',
    trace,
  ])
  const teacher = await aTeacher(server, { from: 1, to: 1, timeLimitMs: null })
  const ada = await aStudent(server, teacher.code, 'Ada')
  const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
  await until('the signal is given', () => {
    const clock = ada.view().round?.clock
    return clock?.phase === 'running' && Date.now() > clock.startsAtMs + 100
  })
  // Each turn is sent when the one before has been acknowledged, so between two acknowledgements there has to be a whole commit.
  for (let from = 0; from < N_TURNS; from++) {
    const answer = await ada.turn(roundId, from, [(['R', 'F', "U'", 'L2'] as const)[from % 4] as StepName])
    expect(answer).toMatchObject({ ok: true, value: { held: from + 1 } })
  }
  await server.kill('SIGKILL')

  let nAcknowledged = 0
  let isWritten = false
  let isSynced = false
  for (const line of readFileSync(trace, 'utf8').split('\n')) {
    const held = /\\"tryNumber\\":1,\\"held\\":(\d+)/.exec(line)
    if (held !== null && line.includes('\\"ok\\":true')) {
      expect([Number(held[1]), isWritten, isSynced]).toEqual([nAcknowledged + 1, true, true])
      nAcknowledged++
      isWritten = false
      isSynced = false
    } else if (/pwrite64\(.* = \d+$|<\.\.\. pwrite64 resumed.* = \d+$/.test(line)) {
      isWritten = true
    } else if (isWritten && /(fdatasync|fsync)(\(| resumed).* = 0$/.test(line)) {
      isSynced = true
    }
  }
  expect(nAcknowledged).toBe(N_TURNS)
})
