/** All tables together, as the server has them. Rules SE: tests/RULES.md. */

import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { cubesEqual, solvedCube } from '../../../engine/cube/cube-position.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { drawStart } from '../../../engine/method/draw-start.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { KEPT_NAMES } from '../../../server/search/kept-names.ts'
import { openSearchPool, type SearchPool, type SearchPoolOptions } from '../../../server/search/search-pool.ts'
import { bytesOfTable, hashOfTable } from '../../../server/search/table-hashes.ts'

const CACHE = fileURLToPath(new URL('../../../.cache', import.meta.url))
const log: SearchPoolOptions['log'] = { info: () => {}, warn: () => {} }
/** Making them takes some seconds on a quiet machine, at the first run only. */
const MAKING_MS_MAX = 120_000

let pool: SearchPool
const shares: number[] = []
beforeAll(async () => {
  pool = openSearchPool({ dataDir: CACHE, log, nThreads: 2, onProgress: (share) => shares.push(share) })
  await pool.ready
}, MAKING_MS_MAX)
afterAll(() => pool.close())

test('[SE40] every table is there, and kept with its listed length and hash; progress never goes back', async () => {
  const stories = await pool.ready
  expect(stories.map(({ name }) => name).sort()).toEqual([...KEPT_NAMES].sort())
  for (const name of KEPT_NAMES) {
    const bytes = readFileSync(join(CACHE, 'search-tables', `${name}.bin`))
    expect(bytes.length).toBe(bytesOfTable(name))
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(hashOfTable(name))
  }
  expect(shares).toEqual([...shares].sort((a, b) => a - b))
})

const random = chachaSource(new Uint8Array(32).fill(3))

test('[SE47] even in a short time the way over all stages stays near 20 turns', async () => {
  const position = drawStart({ span: { from: 1, to: 7 }, random })
  const answer = await pool.shortest({ position, to: 7, budgetMs: 1_000, budgetNodes: 300_000 })
  if (!answer.ok) throw new Error(answer.error.code)
  expect(answer.value.turns.length).toBeLessThanOrEqual(24)
  expect(answer.value.lowerBound).toBeGreaterThanOrEqual(10)
  expect(goalMet(afterTurns(position, answer.value.turns), 7)).toBe(true)
})

test('[SE47] a setup leads to the start, and takes six turns more than par when it must give nothing away', async () => {
  const position = drawStart({ span: { from: 4, to: 4 }, random })
  const setup = await pool.setup({
    position,
    secrets: { to: 4, parTurns: 9, lessonWay: [turnOf('F')] },
    budgetMs: 10_000,
    budgetNodes: 200_000,
  })
  if (!setup.ok) throw new Error(setup.error.code)
  expect(cubesEqual(afterTurns(solvedCube(), setup.value.turns), position)).toBe(true)
  expect(setup.value.turns.length).toBeGreaterThanOrEqual(15)
})

test('[SE48] a setup that is called off is no longer searched for', async () => {
  const caller = new AbortController()
  const position = drawStart({ span: { from: 1, to: 1 }, random })
  const setup = pool.setup({ position, budgetMs: 600_000, signal: caller.signal })
  setTimeout(() => caller.abort(), 300)
  expect(await setup).toEqual({ ok: false, error: { code: 'search/stopped' } })
})
