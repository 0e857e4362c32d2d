/** Names and secrets of a class: not in the log, whatever happens, and not in the data once they are erased. Rules PR: tests/RULES.md. */

import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { aRoster, rosterAtDoor, sendable } from '../server/support/a-roster.ts'
import {
  aStudent,
  ask,
  aTeacher,
  atTheDoor,
  connect,
  mustAsk,
  sendEverybodyHome,
  until,
} from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'

let dataDir: string
let server: ServerProcess
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-privacy-'))
})
afterEach(async () => {
  sendEverybodyHome()
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

/** The files of the data folder, log and all, that hold these bytes. */
function filesWith(text: string, folder = join(dataDir, 'data')): string[] {
  return readdirSync(folder).filter((name) => readFileSync(join(folder, name)).includes(text))
}

test('[PR1] no name, token or key stands in the log, at its most talkative, whatever is refused or breaks', async () => {
  server = await aProcess({ DATA_DIR: join(dataDir, 'data'), LOG_LEVEL: 'debug' })
  const teacher = await aTeacher(server)
  const { code, roomId, viewerKey, cookie } = teacher
  const ada = await aStudent(server, code, 'Canaryada')
  const { seatId } = ada.view().me
  const stranger = connect(server)
  await ask(stranger, 'seat:join', { code, name: 'Canaryada' })
  await ask(stranger, 'seat:resume', { token: 'canary-token-made-up' })
  await ask(stranger, 'viewer:enter', { key: 'canary-key-made-up' })
  await ask(stranger, 'seat:rename', { roomId, seatId, name: 'Canarybo' })
  await ask(teacher.client, 'seat:rename', { roomId, seatId, name: '<Canarybo>' })
  await ask(teacher.client, 'seat:rename', { roomId, seatId, name: 'Canarybo' })
  await ask(stranger, 'Canaryevent' as never, { token: ada.token } as never)
  await ask(stranger, ada.token as never, {} as never)
  await fetch(`${server.url}/%`, { headers: { cookie } })
  await fetch(`${server.url}/api/desk/enter`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{"key":"canary-link"',
  })
  await mustAsk(teacher.client, 'round:start', { roomId, number: 1 })
  await mustAsk(ada.client, 'seat:leave', {})
  await server.kill('SIGTERM')
  const log = server.output().replace(server.linkKey, '')
  expect(log).toContain('refused')
  expect(log).not.toMatch(/canary/i)
  for (const secret of [ada.token, viewerKey, cookie.split('=')[1], server.linkKey]) expect(log).not.toContain(secret)
})

test('[PR2] a removed or replaced name is nowhere in the data folder within seconds, while the server goes on', async () => {
  server = await aProcess({ DATA_DIR: join(dataDir, 'data') })
  const teacher = await aTeacher(server)
  const { code, roomId } = teacher
  const ada = await aStudent(server, code, 'Canaryada')
  const bo = await aStudent(server, code, 'Canarybo')
  expect(filesWith('Canaryada')).not.toEqual([])
  await mustAsk(teacher.client, 'seat:remove', { roomId, seatId: ada.view().me.seatId })
  await mustAsk(teacher.client, 'seat:rename', { roomId, seatId: bo.view().me.seatId, name: 'Kind' })
  await until('both are gone', () => filesWith('Canary').length === 0, 15_000)
  expect(filesWith('Kind')).not.toEqual([])
})

test('[PR5] the names of a removed or changed roster are nowhere in the data folder within seconds; a seat that took one keeps it', async () => {
  server = await aProcess({ DATA_DIR: join(dataDir, 'data') })
  const teacher = await aTeacher(server)
  const { client, code } = teacher
  const removed = await rosterAtDoor(teacher, ['Canaryada', 'Canarybo'])
  const roster = (names: string[]) => sendable(aRoster(names, 'Canaryclass'))
  const { rosterId } = await mustAsk(client, 'roster:keep', { rosterId: null, roster: roster(['Canarycy', 'Di']) })
  const student = await atTheDoor(server, code, { pupilId: 'pupil-canarybo' })
  expect(student.seated()).not.toBeNull()
  expect(filesWith('Canarycy')).not.toEqual([])
  await mustAsk(client, 'roster:keep', { rosterId, roster: { title: '', pupils: [{ pupilId: 'p2', name: 'Di' }] } })
  await mustAsk(client, 'roster:remove', { rosterId: removed })
  // The seat is the room's: its name goes with the seat, or a day after the room.
  await until(
    'all but the seat have lost them',
    () => {
      const gone = ['Canaryada', 'Canarycy', 'Canaryclass'].flatMap((name) => filesWith(name))
      return gone.length === 0 && filesWith('Canarybo').length > 0
    },
    15_000,
  )
  expect(filesWith('Di')).not.toEqual([])
})

test.runIf(process.platform !== 'win32')('[PR3] nobody else on the machine may look into the data folder', async () => {
  server = await aProcess({ DATA_DIR: join(dataDir, 'data') })
  expect(statSync(join(dataDir, 'data')).mode & 0o077).toBe(0)
})
