/** A real server for a test: real sockets on a free port, a real data file in a folder of its own. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pino from 'pino'
import { type App, type AppParts, createApp } from '../../../server/app.ts'
import { MessageLimits } from '../../../server/live/message-limits.ts'
import { StandstillWatch } from '../../../server/live/standstill.ts'
import type { DurableRecord } from '../../../server/store/record.ts'
import { openSqliteRecord } from '../../../server/store/sqlite-record.ts'
import { A_SEARCH } from './a-search.ts'

export type TestServer = {
  readonly url: string
  readonly app: App
  readonly record: DurableRecord
  readonly dataDir: string
  /** Moves the server's clock ahead. */
  advance(ms: number): void
  /** Nobody plays for so long: the process is frozen, or the machine sleeps and the server's clock with it. */
  standStill(ms: number, how: 'frozen' | 'asleep'): void
  /** By how much it is ahead. */
  aheadMs(): number
  /** Stops in order and keeps the data. */
  stop(): Promise<void>
  /** Stops, and throws the data away. */
  end(): Promise<void>
}

export type ServerWishes = {
  dataDir?: string
  wrapRecord?: (record: DurableRecord) => DurableRecord
  webDir?: string
  search?: AppParts['search']
  aheadMs?: number
  delays?: AppParts['delays']
  /** Everybody may say as much as they like. */
  unlimited?: boolean
}

export const THREAD_FROM_SOURCE = new URL('../../../server/store/sqlite-thread-from-source.mjs', import.meta.url)

class NoLimits extends MessageLimits {
  override waitMs = async () => null
  override joinWaitMs = async () => null
  override codeWaitMs = async () => null
}

export async function aServer(wishes: ServerWishes = {}): Promise<TestServer> {
  const dataDir = wishes.dataDir ?? mkdtempSync(join(tmpdir(), 'fairturn-test-'))
  const opened = await openSqliteRecord({ dataDir, threadFile: THREAD_FROM_SOURCE })
  const record = wishes.wrapRecord?.(opened) ?? opened
  let aheadMs = wishes.aheadMs ?? 0
  let stoodMs = 0
  const nowMs = () => Date.now() + aheadMs
  const app = createApp({
    record,
    search: wishes.search ?? A_SEARCH,
    log: pino({ level: 'fatal' }),
    nowMs,
    standstill: new StandstillWatch({
      nowMs,
      goingOnMs: () => performance.now() + stoodMs,
      catchUp: (byMs) => {
        aheadMs += byMs
      },
    }),
    webDir: wishes.webDir ?? join(dataDir, 'no-pages'),
    publicUrl: null,
    addresses: () => ['192.0.2.7:3000'],
    ...(wishes.delays === undefined ? {} : { delays: wishes.delays }),
    ...(wishes.unlimited === true ? { limits: new NoLimits() } : {}),
  })
  await app.restore()
  await new Promise<void>((resolve) => app.http.listen(0, '127.0.0.1', resolve))
  const address = app.http.address()
  if (address === null || typeof address !== 'object') throw new Error('the test server has no port')
  const url = `http://127.0.0.1:${address.port}`
  app.begin(url)
  let isStopped = false
  const stop = async () => {
    if (isStopped) return
    isStopped = true
    await app.stop()
  }
  return {
    url,
    app,
    record,
    dataDir,
    advance: (ms) => {
      aheadMs += ms
    },
    standStill: (ms, how) => {
      stoodMs += ms
      if (how === 'frozen') aheadMs += ms
    },
    aheadMs: () => aheadMs,
    stop,
    end: async () => {
      await stop()
      rmSync(dataDir, { recursive: true, force: true })
    },
  }
}
