/** How the server ends, and what must not end it. Rules DU: tests/RULES.md. */

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { connect as connectTcp, type Socket } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { aStudent, aTeacher, connect, mustAsk, sendEverybodyHome } from '../server/support/people.ts'
import { aProcess, type ServerProcess } from './support/a-process.ts'
import { RawPage } from './support/raw-page.ts'

let dataDir: string
let server: ServerProcess
const open: Socket[] = []
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-stop-'))
})
afterEach(async () => {
  sendEverybodyHome()
  for (const socket of open.splice(0)) socket.destroy()
  await server?.kill('SIGKILL')
  rmSync(dataDir, { recursive: true, force: true })
})

async function tcp(bytes: string): Promise<Socket> {
  const socket = connectTcp(server.port, '127.0.0.1')
  socket.on('error', () => undefined)
  open.push(socket)
  // Some wait at the door for ever: they are not let in, and not turned away.
  await Promise.race([
    new Promise((resolve) => socket.once('connect', resolve)),
    new Promise((resolve) => setTimeout(resolve, 500)),
  ])
  if (bytes !== '') socket.write(bytes)
  return socket
}

/** Phones out of reach and requests that never end: none of them hangs up by itself. */
async function peopleWhoHang(): Promise<void> {
  for (let each = 0; each < 3; each++) {
    const page = await RawPage.open(server.url)
    const { _socket: socket } = page.socket as unknown as { _socket: Socket }
    socket.pause()
    open.push(socket)
  }
  await tcp('')
  await tcp('GET / HTTP/1.1\r\nHost: a\r\n')
  await tcp(
    'POST /api/desk/enter HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{',
  )
}

describe('asked to stop', () => {
  test('[DU13] the server ends in order within five seconds, whoever does not hang up', async () => {
    server = await aProcess({ DATA_DIR: dataDir })
    await peopleWhoHang()
    const beganAt = Date.now()
    expect(await server.kill('SIGTERM')).toEqual({ code: 0, signal: null })
    expect(Date.now() - beganAt).toBeLessThan(5_000)
  })

  test('[DU13] asked a second time it ends at once', async () => {
    server = await aProcess({ DATA_DIR: dataDir })
    await peopleWhoHang()
    const ended = server.kill('SIGTERM')
    await new Promise((resolve) => setTimeout(resolve, 100))
    const beganAt = Date.now()
    void server.kill('SIGTERM')
    await ended
    expect(Date.now() - beganAt).toBeLessThan(1_000)
    server = await aProcess({ DATA_DIR: dataDir })
  })
})

test('[WI12] more connections than the system allows cost those who come too late, and nobody who is here', async () => {
  server = await aProcess({ DATA_DIR: dataDir })
  // Limited only now: from source the server opens more files than this at once while it is loaded. Room for dozens is left.
  const limited = spawnSync('prlimit', ['--pid', String(server.child.pid), '--nofile=128:128'])
  expect(limited.status).toBe(0)
  const teacher = await aTeacher(server)
  const ada = await aStudent(server, teacher.code, 'Ada')
  for (let each = 0; each < 180; each++) await tcp('')
  await mustAsk(ada.client, 'help:ask', { wanted: true })
  for (const socket of open.splice(0)) socket.destroy()
  await new Promise((resolve) => setTimeout(resolve, 200))
  expect(await mustAsk(connect(server), 'clock:ask', {})).toMatchObject({ serverMs: expect.any(Number) })
  expect(server.child.exitCode).toBeNull()
})
