/** A data file that an earlier version wrote is opened, brought up to date, and says what it said. Rules DU: tests/RULES.md. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { DEFAULT_ROUND_SETTINGS } from '../../engine/contest/round-settings.ts'
import { type StepName, stepOf } from '../../engine/contest/steps.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import { hashSecret } from '../../server/secrets.ts'
import { openDataFile } from '../../server/store/sqlite-open.ts'
import { MIGRATIONS } from '../../server/store/sqlite-schema.ts'
import { cubeAfter } from '../engine/cube/arbitraries.ts'
import { aServer, type TestServer } from '../server/support/a-server.ts'
import { aReturningStudent, connect, mustAsk, sendEverybodyHome } from '../server/support/people.ts'

/** Settings as they were written then: eight fields. */
const OLD_SETTINGS = {
  from: 4,
  to: 4,
  cases: null,
  baseColour: 'yellow',
  timeLimitMs: 300_000,
  tries: 'many',
  takeBack: true,
  boardSeenBy: 'all',
}
/** Six turns that undo the start. */
const START = formatStickers(cubeAfter("F U R U' R' F'"))
const TRIES: readonly (readonly StepName[])[] = [
  ['R', 'take-back', 'F', 'R', 'U', "R'", "U'", "F'"],
  ['L', 'y', "M'"],
]
const TOKEN = 'a-token-of-a-seat-of-the-earlier-version-01'
const SESSION = 'a-session-of-the-earlier-version'

let dataDir: string
let server: TestServer | null = null
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-older-'))
})
afterEach(async () => {
  sendEverybodyHome()
  await server?.stop()
  server = null
  rmSync(dataDir, { recursive: true, force: true })
})

/** A file as version 1 left it: its first step alone, and rows in its tables. */
function writeVersion1(): void {
  const database = new Database(join(dataDir, 'fairturn.sqlite'))
  database.exec(MIGRATIONS[0])
  database.pragma('user_version = 1')
  const add = (table: string, ...values: unknown[]) =>
    database.prepare(`INSERT INTO ${table} VALUES (${values.map(() => '?').join()})`).run(...values)
  const nowMs = Date.now()
  const at = nowMs - 60_000
  add('meta', 'alive_ms', String(nowMs))
  add('desk_session', hashSecret(SESSION), 'teacher', at)
  add('room', 'room', 'TAMKEL', 'teacher', 'viewer-key', 1, JSON.stringify(OLD_SETTINGS), at, null)
  add('seat', 'seat-ada', 'room', 'Ada', hashSecret(TOKEN), 0, at + 1, null)
  add('seat', 'seat-gone', 'room', '', '', 0, at + 2, at + 3)
  add('round', 'round-1', 'room', 1, JSON.stringify(OLD_SETTINGS), START, at + 10, at + 20)
  add('clock_event', 'round-1', 0, JSON.stringify({ kind: 'started', startsAtMs: at + 11 }), at + 11)
  add('clock_event', 'round-1', 1, JSON.stringify({ kind: 'voided', atMs: at + 20 }), at + 20)
  add('round', 'round-2', 'room', 2, JSON.stringify(OLD_SETTINGS), START, at + 30, null)
  add('clock_event', 'round-2', 0, JSON.stringify({ kind: 'started', startsAtMs: at + 31 }), at + 31)
  for (const [index, names] of TRIES.entries()) {
    add('try', index + 1, 'round-2', 'seat-ada', index + 1, 0, at + 100 * index + 40)
    for (const [number, name] of names.entries())
      add('step', index + 1, number, stepOf(name), 10 * (number + 1), at + 100 * index + 41 + number)
  }
  database.close()
}

describe('a data file of version 1', () => {
  test('[DU22] is served: rooms, seats, rounds, tries and steps are there, and what is new is as if it had been off', async () => {
    writeVersion1()
    server = await aServer({ dataDir })
    const desk = connect(server, { cookie: `fairturn_desk=${SESSION}` })
    const { home, shelf } = await mustAsk(desk, 'desk:enter', {})
    expect([home.rooms.map(({ code }) => code), shelf]).toEqual([['TAMKEL'], { plans: [], rosters: [] }])
    const { desk: view } = await mustAsk(desk, 'room:watch', { roomId: home.rooms[0].id })
    const settings = { ...DEFAULT_ROUND_SETTINGS, ...OLD_SETTINGS }
    expect(view).toMatchObject({
      settings,
      plan: null,
      parShown: false,
      room: { locked: true, deadlineMs: null, entry: { names: 'typed', rosterId: null, approve: false } },
      rounds: [
        { id: 'round-1', number: 1, phase: 'void', settings },
        { id: 'round-2', number: 2, phase: 'running', settings },
      ],
      seats: [{ name: 'Ada', pupilId: null }],
    })
    const ada = await aReturningStudent(server, TOKEN)
    // Eight steps, ten milliseconds apart.
    expect(ada.view().mine).toEqual({ number: 2, steps: TRIES[1], reached: null, best: { turns: 6, momentMs: 80 } })
    expect(view.lanes).toMatchObject([{ name: 'Ada', turns: 3, notes: null, best: { turns: 6 } }])
    // And the class plays on.
    expect(await ada.turn('round-2' as never, 3, ['U'], 2)).toMatchObject({ ok: true, value: { held: 4 } })
    const { review } = await mustAsk(desk, 'review:ask', { roomId: home.rooms[0].id, roundId: 'round-2' as never })
    expect(review.solutions).toMatchObject([{ tryNumber: 1, how: { kept: false, written: false }, hints: [] }])
  })

  test('[DU22] has the same tables afterwards as a new one', () => {
    writeVersion1()
    const schemaOf = (folder: string) => {
      const database = openDataFile(folder)
      const tables = (
        database.prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all() as {
          name: string
        }[]
      ).map(({ name }) => name)
      const columns = tables.map((name) => [name, database.pragma(`table_info(${name})`)])
      const checks = [
        database.pragma('foreign_key_check'),
        database.pragma('integrity_check'),
        database.pragma('user_version'),
      ]
      database.close()
      return { columns, checks }
    }
    const fresh = mkdtempSync(join(tmpdir(), 'fairturn-fresh-'))
    try {
      expect(schemaOf(dataDir)).toEqual(schemaOf(fresh))
    } finally {
      rmSync(fresh, { recursive: true, force: true })
    }
  })

  test('[DU22] is opened twice, and brought up to date once', () => {
    writeVersion1()
    openDataFile(dataDir).close()
    const database = openDataFile(dataDir)
    expect(database.prepare('SELECT count(*) AS n FROM step').get()).toEqual({ n: TRIES.flat().length })
    // A hint can be stored now, and nothing above it.
    const add = database.prepare('INSERT INTO step VALUES (2, 3, ?, 0, 0)')
    expect(() => add.run(58)).toThrow('CHECK')
    add.run(57)
    database.close()
  })
})
