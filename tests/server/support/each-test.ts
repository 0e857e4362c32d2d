/**
 * The server of the test that runs now, and its disk. A file says once, at its top, whether each test finds a server ready
 * (`eachTestHasAServer`) or begins its own (`eachTestBeginsAServer`); afterwards everybody goes home and it ends.
 */

import { afterEach, beforeEach } from 'vitest'
import { TestDisk } from './a-disk.ts'
import { aServer, type ServerWishes, type TestServer } from './a-server.ts'
import { sendEverybodyHome } from './people.ts'

export let server: TestServer
/** Between the server and its record in a file that asks for one: it can be held back, and can fail. */
export let disk: TestDisk
/** By the test that runs now. */
const begun: TestServer[] = []

export function eachTestHasAServer({ unlimited = false, ownDisk = false } = {}): void {
  beforeEach(async () => {
    disk = new TestDisk()
    await beginServer({ unlimited, ...(ownDisk ? { wrapRecord: disk.wrap } : {}) })
  })
  afterEach(async () => {
    disk.release()
    await end()
  })
}

export function eachTestBeginsAServer(): void {
  afterEach(end)
}

export async function beginServer(wishes: ServerWishes = {}): Promise<void> {
  server = await aServer(wishes)
  begun.push(server)
}

/** Stops the server in order, and begins one on the same data and with the same clock unless told otherwise. */
export async function restartServer(wishes: ServerWishes = {}): Promise<void> {
  const { dataDir, aheadMs } = server
  await server.stop()
  await beginServer({ dataDir, aheadMs: aheadMs(), ...wishes })
}

/** The last one first: after a restart several share their data. */
async function end(): Promise<void> {
  sendEverybodyHome()
  for (let last = begun.pop(); last !== undefined; last = begun.pop()) await last.end()
}
