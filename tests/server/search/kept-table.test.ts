/** A table in a folder: read when whole, else made again and kept. Rules SE, DU: tests/RULES.md. */

import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { readOrMakeTable } from '../../../server/search/kept-table.ts'

const TABLE = Uint8Array.from({ length: 5_000 }, (_, index) => index % 251)
const HASH = createHash('sha256').update(TABLE).digest('hex')
const KEEPER = fileURLToPath(new URL('./support/keep-with-trouble.mjs', import.meta.url))

let folder: string
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'tables-')), 'search-tables')
})
afterEach(() => rmSync(join(folder, '..'), { recursive: true, force: true }))

const file = () => join(folder, 'small.bin')

function bring() {
  const bytes = new Uint8Array(new SharedArrayBuffer(TABLE.length))
  let nMade = 0
  const make = (table: Uint8Array) => {
    nMade++
    table.set(TABLE)
  }
  const outcome = readOrMakeTable({ folder, name: 'small', bytes, hash: HASH, make })
  expect(Buffer.from(bytes).equals(TABLE)).toBe(true)
  return { ...outcome, nMade }
}

test('[SE40] a table is made once, and read from then on; nobody else may look at it', () => {
  expect(bring()).toEqual({ how: 'made', nMade: 1 })
  expect(bring()).toEqual({ how: 'read', nMade: 0 })
  expect(readdirSync(folder)).toEqual(['small.bin'])
  expect(statSync(folder).mode & 0o777).toBe(0o700)
  expect(statSync(file()).mode & 0o777).toBe(0o600)
})

test.each([
  ['a flipped bit', () => writeFileSync(file(), TABLE.with(4_321, TABLE[4_321] ^ 1)), 'not those of the table'],
  ['a cut end', () => writeFileSync(file(), TABLE.subarray(0, 4_999)), '4999 bytes instead of 5000'],
  ['more than the table', () => writeFileSync(file(), Buffer.concat([TABLE, TABLE])), '10000 bytes'],
  ['foreign bytes of the same length', () => writeFileSync(file(), Buffer.alloc(5_000, 'x')), 'not those'],
  ['nothing', () => writeFileSync(file(), ''), '0 bytes'],
])('[SE41] a file with %s is made again, which is said', (_what, damage, wrong) => {
  mkdirSync(folder)
  damage()
  expect(bring()).toEqual({ how: 'made-again', nMade: 1, wrong: expect.stringContaining(wrong) })
  expect(bring()).toEqual({ how: 'read', nMade: 0 })
})

test('[SE41] a folder or a link to nowhere in its place is said, and costs the keeping at most', () => {
  mkdirSync(file(), { recursive: true })
  const inTheWay = bring()
  expect(inTheWay).toMatchObject({ how: 'made-again', wrong: 'it is no file', notKept: expect.any(String) })
  rmSync(file(), { recursive: true })
  symlinkSync('nowhere', file())
  expect(bring()).toMatchObject({ how: 'made' })
  expect(bring()).toMatchObject({ how: 'read' })
})

test('[SE42] where nothing can be written the table is there all the same, and it is said that it is not kept', () => {
  writeFileSync(join(folder, '..', 'search-tables'), 'a file where the folder should be')
  expect(bring()).toEqual({ how: 'made', nMade: 1, notKept: expect.any(String) })
})

test('[SE41] a table that is made with another hash than the listed one is our bug', () => {
  const bytes = new Uint8Array(10)
  const wish = { folder, name: 'small', bytes, hash: HASH, make: () => {} }
  expect(() => readOrMakeTable(wish)).toThrow('is made with its listed hash')
  expect(() => readdirSync(folder)).toThrow()
})

function keepInProcess(trouble: string) {
  const child = spawn(process.execPath, ['--import', 'tsx', KEEPER, folder, trouble], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  let output = ''
  child.stdout.on('data', (piece) => {
    output += piece
  })
  return new Promise<{ signal: string | null; outcome: unknown }>((resolve) =>
    child.on('close', (_code, signal) => resolve({ signal, outcome: output === '' ? undefined : JSON.parse(output) })),
  )
}

test.each(['killed-while-writing', 'killed-before-renaming'])(
  '[DU19] a process %s leaves no half table, and the next one tidies up',
  async (trouble) => {
    expect(await keepInProcess(trouble)).toEqual({ signal: 'SIGKILL', outcome: undefined })
    expect(readdirSync(folder).filter((name) => name.endsWith('.bin'))).toEqual([])
    expect(readdirSync(folder)).toHaveLength(1)
    expect(await keepInProcess('none')).toEqual({ signal: null, outcome: { how: 'made' } })
    expect(readdirSync(folder)).toEqual(['sevens.bin'])
    expect(readFileSync(join(folder, 'sevens.bin')).every((byte) => byte === 7)).toBe(true)
  },
)

test('[DU20] a disk that fills up costs the keeping only, and keeps nothing half', async () => {
  expect(await keepInProcess('disk-full')).toEqual({ signal: null, outcome: { how: 'made', notKept: 'ENOSPC' } })
  expect(readdirSync(folder)).toEqual([])
})

test('[DU21] two processes that keep the same table at once both have it', async () => {
  const both = await Promise.all([keepInProcess('none'), keepInProcess('none')])
  for (const { outcome } of both) expect(outcome).toMatchObject({ how: expect.stringMatching(/^(made|read)$/u) })
  expect(readdirSync(folder)).toEqual(['sevens.bin'])
  expect(await keepInProcess('none')).toMatchObject({ outcome: { how: 'read' } })
})

test('[DU19] what another process is writing just now is left alone, what was left behind long ago is not', () => {
  mkdirSync(folder)
  // Process 1 is always there.
  const [fresh, old] = ['small.1-fresh.unfinished', 'small.1-old.unfinished']
  for (const name of [fresh, old]) writeFileSync(join(folder, name), 'half')
  const anHourAgo = Date.now() / 1_000 - 3_600
  utimesSync(join(folder, old), anHourAgo, anHourAgo)
  bring()
  expect(readdirSync(folder).sort()).toEqual([fresh, 'small.bin'].sort())
})
