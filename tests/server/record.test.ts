/** The durable record: what is stored stays, what must not be stored is not. One suite for every store. Rules: tests/RULES.md. */

import {
  chmodSync,
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../engine/contest/round-settings.ts'
import type { Step } from '../../engine/contest/steps.ts'
import { solvedCube } from '../../engine/cube/cube-position.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import type { DurableRecord, StepsEntry } from '../../server/store/record.ts'
import { SQLITE_VERSION_MIN } from '../../server/store/sqlite-open.ts'
import { openSqliteRecord } from '../../server/store/sqlite-record.ts'
import { MIGRATIONS } from '../../server/store/sqlite-schema.ts'
import { THREAD_FROM_SOURCE } from './support/a-server.ts'

let dataDir: string
let record: DurableRecord
const open = () => openSqliteRecord({ dataDir, threadFile: THREAD_FROM_SOURCE })
beforeEach(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-record-'))
  record = await open()
})
afterEach(async () => {
  await record.close().catch(() => undefined)
  rmSync(dataDir, { recursive: true, force: true })
})

const roomId = 'room-1' as RoomId
const roundId = 'round-1' as RoundId
const seatId = 'seat-1' as SeatId
const steps = (from: number, ...numbers: number[]): StepsEntry => ({
  kind: 'steps',
  roundId,
  seatId,
  tryNumber: 1,
  from,
  steps: numbers as Step[],
  late: false,
  how: { kept: false, written: false },
  momentMs: 10,
  atMs: 20,
})

async function aRoundOnRecord(): Promise<void> {
  await record.write({
    kind: 'room-opened',
    roomId,
    code: 'BADBAD' as RoomCode,
    teacherId: 't' as TeacherId,
    viewerKey: 'v',
    settings: DEFAULT_ROUND_SETTINGS,
    atMs: 1,
  })
  await record.write({
    kind: 'seat-joined',
    seatId,
    roomId,
    name: 'Ada',
    tokenHash: 'h',
    pretend: false,
    pupilId: null,
    atMs: 2,
  })
  await record.write({
    kind: 'round-drawn',
    roundId,
    roomId,
    number: 1,
    settings: DEFAULT_ROUND_SETTINGS,
    start: formatStickers(solvedCube()),
    atMs: 3,
  })
}

describe('the record', () => {
  test('[DU1] what was written is there after the file is opened again', async () => {
    await aRoundOnRecord()
    expect(await record.write(steps(0, 1, 2))).toBe('stored')
    await record.write({ kind: 'clock-event', roundId, order: 0, event: { kind: 'started', startsAtMs: 5 }, atMs: 4 })
    await record.close()
    record = await open()
    const [room] = await record.loadOpenRooms()
    expect(room).toMatchObject({ roomId, code: 'BADBAD', seats: [{ seatId, name: 'Ada' }] })
    expect(room.held[0].events).toEqual([{ kind: 'started', startsAtMs: 5 }])
    expect(room.held[0].steps.map((each) => each.step)).toEqual([1, 2])
  })

  test('[DU2] a step is stored only right behind the last one of its try: no gap, no second of one number', async () => {
    await aRoundOnRecord()
    expect(await record.write(steps(1, 7))).toBe('conflict')
    expect(await record.write(steps(0, 7, 8))).toBe('stored')
    expect(await record.write(steps(0, 9))).toBe('conflict')
    expect(await record.write(steps(1, 9))).toBe('conflict')
    expect(await record.write(steps(2, 9))).toBe('stored')
    const [room] = await record.loadOpenRooms()
    expect(room.held[0].steps.map((each) => each.step)).toEqual([7, 8, 9])
  })

  test('[DU2] steps that are not stored open no try, and a try opens only behind the one before it', async () => {
    await aRoundOnRecord()
    expect(await record.write({ ...steps(3, 7), tryNumber: 2 })).toBe('conflict')
    expect(await record.write({ ...steps(0, 7), tryNumber: 3 })).toBe('conflict')
    expect((await record.loadOpenRooms())[0].held[0].tries).toEqual([])
    expect(await record.write({ ...steps(0), tryNumber: 2 })).toBe('stored')
    expect(await record.write({ ...steps(0, 7), tryNumber: 4 })).toBe('conflict')
    expect((await record.loadOpenRooms())[0].held[0].tries).toMatchObject([{ tryNumber: 2 }])
  })

  test('[DU17] an entry that fits no table costs the others of its commit nothing', async () => {
    await aRoundOnRecord()
    const seat = { kind: 'seat-joined', tokenHash: 'h', pretend: false, pupilId: null, atMs: 2 } as const
    const outcomes = await Promise.all([
      record.write(steps(0, 1)),
      record.write({ ...seat, seatId: 'seat-2' as SeatId, roomId: 'no-such-room' as RoomId, name: 'Bo' }),
      record.write({ ...steps(0, 1), seatId: 'no-such-seat' as SeatId }),
      record.write(steps(1, 2)),
      record.write({ ...seat, seatId: 'seat-3' as SeatId, roomId, name: 'Cy' }),
    ])
    expect(outcomes).toEqual(['stored', 'conflict', 'conflict', 'stored', 'stored'])
    expect(record.saving).toBe(true)
    const [room] = await record.loadOpenRooms()
    expect(room.seats.map((each) => each.name)).toEqual(['Ada', 'Cy'])
    expect(room.held[0].steps.map((each) => each.step)).toEqual([1, 2])
  })

  test('[DU3] a round that has ended takes no clock event but being struck out, and then none', async () => {
    await aRoundOnRecord()
    const event = (order: number, kind: 'paused' | 'voided') =>
      record.write({ kind: 'clock-event', roundId, order, event: { kind, atMs: 9 }, atMs: 9 })
    const ended = { kind: 'ended', atMs: 9, reason: 'teacher' } as const
    expect(await record.write({ kind: 'clock-event', roundId, order: 0, event: ended, atMs: 9 })).toBe('stored')
    expect(await event(1, 'paused')).toBe('closed')
    expect(await event(1, 'voided')).toBe('stored')
  })

  test('[DU6] a rename behind a removal does not bring the name back', async () => {
    await aRoundOnRecord()
    const outcomes = await Promise.all([
      record.write({ kind: 'seat-removed', seatId, atMs: 9 }),
      record.write({ kind: 'seat-renamed', seatId, name: 'Canaryname' }),
    ])
    expect(outcomes).toEqual(['stored', 'conflict'])
    await record.close()
    expect(readFileSync(join(dataDir, 'fairturn.sqlite')).includes('Canaryname')).toBe(false)
    record = await open()
  })

  test('[PR4] the names of a room leave the record when it has been closed for long enough, and no others', async () => {
    await aRoundOnRecord()
    const anotherRoom = {
      kind: 'room-opened',
      teacherId: 't' as TeacherId,
      settings: DEFAULT_ROUND_SETTINGS,
      atMs: 1,
    } as const
    const [other, code] = ['room-2' as RoomId, 'DADDAD' as RoomCode]
    await record.write({ ...anotherRoom, roomId: other, code, viewerKey: 'v2' })
    const someoneJoined = { kind: 'seat-joined', tokenHash: 'h', pretend: false, pupilId: null, atMs: 2 } as const
    await record.write({ ...someoneJoined, seatId: 'seat-2' as SeatId, roomId: other, name: 'Canaryname' })
    await record.write({ kind: 'room-closed', roomId: other, atMs: 1_000 })
    const holdsName = async () => {
      await record.close()
      const isThere = readFileSync(join(dataDir, 'fairturn.sqlite')).includes('Canaryname')
      record = await open()
      return isThere
    }
    await record.write({ kind: 'names-forgotten', closedBeforeMs: 1_000 })
    expect(await holdsName()).toBe(true)
    expect(await record.write({ kind: 'names-forgotten', closedBeforeMs: 1_001 })).toBe('stored')
    expect(await holdsName()).toBe(false)
    expect((await record.loadOpenRooms())[0].seats.map((seat) => seat.name)).toEqual(['Ada'])
  })

  test('[DU3] once a round has ended or was voided, no step of it is stored', async () => {
    await aRoundOnRecord()
    await record.write({ kind: 'clock-event', roundId, order: 0, event: { kind: 'started', startsAtMs: 5 }, atMs: 4 })
    const outcomes = await Promise.all([
      record.write(steps(0, 1)),
      record.write({
        kind: 'clock-event',
        roundId,
        order: 1,
        event: { kind: 'ended', atMs: 9, reason: 'teacher' },
        atMs: 9,
      }),
      record.write(steps(1, 2)),
    ])
    expect(outcomes).toEqual(['stored', 'stored', 'closed'])
  })

  test('[DU4] two that close or pause a round at once cannot both win', async () => {
    await aRoundOnRecord()
    const event = (kind: 'paused' | 'voided') =>
      ({ kind: 'clock-event', roundId, order: 0, event: { kind, atMs: 9 }, atMs: 9 }) as const
    expect(await Promise.all([record.write(event('paused')), record.write(event('voided'))])).toEqual([
      'stored',
      'conflict',
    ])
  })

  test('[DU5] one code belongs to one open room, and is free again when that room is closed', async () => {
    const another = (id: string) =>
      record.write({
        kind: 'room-opened',
        roomId: id as RoomId,
        code: 'BADBAD' as RoomCode,
        teacherId: 't' as TeacherId,
        viewerKey: id,
        settings: DEFAULT_ROUND_SETTINGS,
        atMs: 1,
      })
    expect(await another('a')).toBe('stored')
    expect(await another('b')).toBe('conflict')
    await record.write({ kind: 'room-closed', roomId: 'a' as RoomId, atMs: 2 })
    expect(await another('b')).toBe('stored')
  })

  test('[DU6] a removed student leaves no name in the data file, nor in its log', async () => {
    await aRoundOnRecord()
    await record.write({ kind: 'seat-renamed', seatId, name: 'Canaryname' })
    await record.write({ kind: 'seat-removed', seatId, atMs: 9 })
    await record.close()
    expect(readFileSync(join(dataDir, 'fairturn.sqlite')).includes('Canaryname')).toBe(false)
    record = await open()
  })

  test('[DU7] the file is opened so that a commit is on the disk: WAL, synchronous FULL, a safe SQLite', async () => {
    await record.close()
    const version = (new Database(':memory:').prepare('SELECT sqlite_version() AS v').get() as { v: string }).v
      .split('.')
      .map(Number)
    expect(version[0] * 1e6 + version[1] * 1e3 + version[2]).toBeGreaterThanOrEqual(
      SQLITE_VERSION_MIN[0] * 1e6 + SQLITE_VERSION_MIN[1] * 1e3 + SQLITE_VERSION_MIN[2],
    )
    const database = new Database(join(dataDir, 'fairturn.sqlite'))
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal')
    database.close()
    record = await open()
  })
})

describe('a data folder that cannot be used', () => {
  test('[DU8] a damaged file is refused with a sentence, and not touched', async () => {
    await aRoundOnRecord()
    for (let from = 0; from < 300; from++) await record.write(steps(from, 1))
    await record.close()
    const file = join(dataDir, 'fairturn.sqlite')
    const handle = openSync(file, 'r+')
    writeSync(handle, Buffer.alloc(4096 * 3, 0x5a), 0, 4096 * 3, 4096)
    closeSync(handle)
    const damaged = readFileSync(file)
    await expect(open()).rejects.toThrow(/is damaged. Nothing was changed. Put a backup in its place/)
    expect(readFileSync(file).equals(damaged)).toBe(true)
  })

  test('[DU8] a file that is no data file at all is refused, and not touched', async () => {
    await record.close()
    const file = join(dataDir, 'fairturn.sqlite')
    for (const ending of ['-wal', '-shm']) rmSync(file + ending, { force: true })
    writeFileSync(file, 'This is a letter to my aunt. '.repeat(400))
    await expect(open()).rejects.toThrow(/is damaged/)
    expect(readFileSync(file, 'utf8')).toContain('my aunt')
  })

  test('[DU9] a second server on the same folder is refused while the first one runs', async () => {
    await expect(open()).rejects.toThrow(/Another Fairturn is using the data folder/)
  })

  test('[DU10] a folder that cannot be made is refused with what to do', async () => {
    const blocked = join(dataDir, 'a-file')
    writeFileSync(blocked, '')
    await expect(openSqliteRecord({ dataDir: join(blocked, 'data'), threadFile: THREAD_FROM_SOURCE })).rejects.toThrow(
      /cannot be made .* or set DATA_DIR/,
    )
  })

  test('[DU10] a data file that is a folder is refused with what to do', async () => {
    const other = join(dataDir, 'other')
    mkdirSync(join(other, 'fairturn.sqlite'), { recursive: true })
    chmodSync(other, 0o555)
    await expect(openSqliteRecord({ dataDir: other, threadFile: THREAD_FROM_SOURCE })).rejects.toThrow(
      /cannot be written .* or set DATA_DIR/,
    )
  })

  test('[DU11] a file of a newer version is refused', async () => {
    await record.close()
    const database = new Database(join(dataDir, 'fairturn.sqlite'))
    database.pragma('user_version = 99')
    database.close()
    await expect(open()).rejects.toThrow(/newer version/)
    const back = new Database(join(dataDir, 'fairturn.sqlite'))
    back.pragma(`user_version = ${MIGRATIONS.length}`)
    back.close()
    record = await open()
  })
})
