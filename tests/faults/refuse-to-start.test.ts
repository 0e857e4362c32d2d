/** What a teacher sees when the server cannot start: one sentence that says what to do, and an exit code of 1. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { aRefusal } from './support/a-process.ts'

let dataDir: string
beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'fairturn-start-'))
})
afterEach(() => rmSync(dataDir, { recursive: true, force: true }))

test('[DU14] a port in use', async () => {
  const other = createServer()
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve))
  const { port } = other.address() as { port: number }
  const refused = await aRefusal({ DATA_DIR: dataDir, PORT: String(port) })
  other.close()
  expect(refused.code).toBe(1)
  expect(refused.output).toContain(`Port ${port} is in use`)
  expect(refused.output).toContain(`PORT=${port + 1} npm start`)
})

test('[DU14] a data folder that cannot be written', async () => {
  writeFileSync(join(dataDir, 'file'), '')
  const refused = await aRefusal({ DATA_DIR: join(dataDir, 'file', 'data') })
  expect(refused.code).toBe(1)
  expect(refused.output).toContain('or set DATA_DIR to another folder')
})

test('[DU14] a damaged data file', async () => {
  writeFileSync(join(dataDir, 'fairturn.sqlite'), 'no data '.repeat(1_000))
  const refused = await aRefusal({ DATA_DIR: dataDir })
  expect(refused.code).toBe(1)
  expect(refused.output).toContain('is damaged. Nothing was changed. Put a backup in its place')
})

test('[DU14] settings that make no sense are all named at once', async () => {
  const refused = await aRefusal({ DATA_DIR: dataDir, PORT: 'abc', LOG_LEVEL: 'loud' })
  expect(refused.code).toBe(1)
  expect(refused.output).toContain('PORT is not usable')
  expect(refused.output).toContain('LOG_LEVEL is not usable')
})
