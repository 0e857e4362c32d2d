/** Searches in threads: answers, budgets, calling off, dying. Rules SE: tests/RULES.md. */

import { setMaxListeners } from 'node:events'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import type { KeptName } from '../../../server/search/kept-names.ts'
import { keptForGoal } from '../../../server/search/kept-names.ts'
import { openSearchPool, type SearchPool, type SearchPoolOptions } from '../../../server/search/search-pool.ts'

/** Tables that all tests share; made at the first run. */
const CACHE = fileURLToPath(new URL('../../../.cache', import.meta.url))
const DYING_THREAD = new URL('./support/dying-thread.mjs', import.meta.url)
/** Nothing here lasts so long: an answer that comes was called for. */
const LONG_MS = 600_000
/** A thread's own errands, and a machine that does other things too. */
const SOON_MS = 5_000

const warnings: string[] = []
const log: SearchPoolOptions['log'] = {
  info: () => {},
  warn: ((_: object, line: string) => warnings.push(line)) as never,
}
const pools: SearchPool[] = []
beforeEach(() => {
  warnings.length = 0
})
afterEach(async () => {
  for (const pool of pools.splice(0)) await pool.close()
})

/** For tests that leave the pool as they found it. */
let shared: SearchPool
beforeAll(() => {
  shared = openSearchPool({ dataDir: CACHE, log, tables: keptForGoal(3), nThreads: 2, nLongAtOnce: 2 })
})
afterAll(() => shared.close())

function aPool(over: Partial<SearchPoolOptions> = {}): SearchPool {
  const pool = openSearchPool({ dataDir: CACHE, log, tables: keptForGoal(3), nThreads: 2, nLongAtOnce: 2, ...over })
  pools.push(pool)
  return pool
}

/** Far from the goal of stage 3: its proof takes minutes. */
const FAR = drawArrangement(1, chachaSource(new Uint8Array(32).fill(7)))

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms))

test('[SE47] the shortest way over two stages is found, proven, and leads to the goal in the hold that was given', async () => {
  const held = afterTurns(FAR, [turnOf('x'), turnOf("y'")])
  const [home, otherwise] = await Promise.all(
    [FAR, held].map((position) => shared.shortest({ position, to: 2, budgetMs: LONG_MS })),
  )
  expect(home).toMatchObject({ ok: true, value: { proven: true } })
  if (!home.ok || !otherwise.ok) return
  expect(goalMet(afterTurns(FAR, home.value.turns), 2)).toBe(true)
  expect(goalMet(afterTurns(held, otherwise.value.turns), 2)).toBe(true)
  expect(otherwise.value.turns).toHaveLength(home.value.turns.length)
  expect(home.value.lowerBound).toBe(home.value.turns.length)
})

test('[SE47] one stage is looked up, before any table is there and when none can be', async () => {
  const pool = aPool({ tables: ['corners'], threadFile: DYING_THREAD })
  const position = afterTurns(solvedCube(), [turnOf('F'), turnOf('R'), turnOf('U')])
  const answer = await pool.shortest({ position, to: 1, budgetMs: LONG_MS })
  expect(answer).toMatchObject({ ok: true, value: { proven: true, lowerBound: 2, nNodes: 0 } })
  expect(await pool.shortest({ position: solvedCube(), to: 7, budgetMs: LONG_MS })).toMatchObject({
    ok: true,
    value: { turns: [] },
  })
  await expect(pool.ready).rejects.toThrow('corners')
  expect(await pool.shortest({ position: FAR, to: 3, budgetMs: 1 })).toEqual({
    ok: false,
    error: { code: 'search/failed' },
  })
  expect(await pool.shortest({ position, to: 1, budgetMs: LONG_MS })).toEqual(answer)
})

test('[SE47] when the time is up the best known line is the answer, with what is proven', async () => {
  const answer = await shared.shortest({ position: FAR, to: 3, budgetMs: 300 })
  if (!answer.ok) throw new Error(answer.error.code)
  const { turns, proven, lowerBound } = answer.value
  expect(proven).toBe(false)
  expect(lowerBound).toBeLessThan(turns.length)
  expect(lowerBound).toBeGreaterThan(5)
  expect(goalMet(afterTurns(FAR, turns), 3)).toBe(true)
})

test('[SE47] with a budget of positions the answer is the same every time', async () => {
  const task = { position: FAR, to: 3, budgetMs: LONG_MS, budgetNodes: 500_000 } as const
  const [one, two] = await Promise.all([shared.shortest(task), shared.shortest(task)])
  expect(one).toMatchObject({ ok: true, value: { proven: false } })
  expect(two).toEqual(one)
})

test('[SE48] a search that is called off answers soon, with the best known line and what is proven', async () => {
  await shared.ready
  const caller = new AbortController()
  const answer = shared.shortest({ position: FAR, to: 3, budgetMs: LONG_MS, signal: caller.signal })
  await wait(600)
  const calledOffAtMs = performance.now()
  caller.abort()
  expect(await answer).toMatchObject({ ok: true, value: { proven: false, lowerBound: expect.any(Number) } })
  expect(performance.now() - calledOffAtMs).toBeLessThan(SOON_MS)
  // Called off before it was asked.
  const late = shared.shortest({ position: FAR, to: 3, budgetMs: LONG_MS, signal: caller.signal })
  expect(await late).toEqual({ ok: false, error: { code: 'search/stopped' } })
})

test('[SE45] more than can wait are turned away; [SE46] who waits and is called off is told at once', async () => {
  const caller = new AbortController()
  setMaxListeners(100, caller.signal)
  // Two under way, and as many waiting as there may be.
  await shared.ready
  const asked = Array.from({ length: 2 + 64 + 1 }, () =>
    shared.shortest({ position: FAR, to: 3, budgetMs: LONG_MS, signal: caller.signal }),
  )
  expect(await asked[66]).toEqual({ ok: false, error: { code: 'search/too-busy' } })
  await wait(300)
  caller.abort()
  const answers = await Promise.all(asked.slice(0, 66))
  expect(answers.slice(0, 2).every(({ ok }) => ok)).toBe(true)
  expect(answers.slice(2)).toEqual(Array(64).fill({ ok: false, error: { code: 'search/stopped' } }))
})

test('[SE60] a short search is answered soon while long ones are under way and wait', async () => {
  const pool = aPool({ nLongAtOnce: 1 })
  await pool.ready
  const long = [1, 2, 3].map(() => pool.shortest({ position: FAR, to: 3, budgetMs: LONG_MS }))
  await wait(200)
  const askedAtMs = performance.now()
  expect(await pool.shortest({ position: FAR, to: 3, budgetMs: 300 })).toMatchObject({ ok: true })
  expect(performance.now() - askedAtMs).toBeLessThan(300 + SOON_MS)
  await pool.close()
  await Promise.all(long)
})

test('[SE46] closing ends what is under way with the best known line, and refuses what waits and what comes later', async () => {
  const pool = aPool()
  await pool.ready
  const asked = [1, 2, 3].map(() => pool.shortest({ position: FAR, to: 3, budgetMs: LONG_MS }))
  await wait(600)
  const closedAtMs = performance.now()
  await pool.close()
  expect(performance.now() - closedAtMs).toBeLessThan(SOON_MS)
  const [one, two, three] = await Promise.all(asked)
  expect([one, two]).toMatchObject([{ ok: true }, { ok: true }])
  const stopped = { ok: false, error: { code: 'search/stopped' } }
  expect(three).toEqual(stopped)
  expect(await pool.shortest({ position: FAR, to: 3, budgetMs: 1 })).toEqual(stopped)
  expect(await pool.setup({ position: FAR, budgetMs: 1 })).toEqual(stopped)
})

test('[SE46] closing while tables are made ends at once', async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'tables-'))
  const pool = aPool({ dataDir })
  const asked = pool.shortest({ position: FAR, to: 3, budgetMs: 1 })
  await wait(100)
  await pool.close()
  expect(await asked).toEqual({ ok: false, error: { code: 'search/stopped' } })
  await expect(pool.ready).rejects.toThrow()
  rmSync(dataDir, { recursive: true })
})

test.each([
  ['ends in the middle', 1_001],
  ['dies of something that nobody caught', 1_002],
  ['hangs', 1_003],
  ['runs into a bug of ours', 1_004],
])('[SE49] a thread that %s fails its search and no other; the next one works', async (_what, budgetMs) => {
  const pool = aPool({ threadFile: DYING_THREAD, tables: keptForGoal(2), nThreads: 1, graceMs: 500 })
  const [failed, next] = await Promise.all([
    pool.shortest({ position: FAR, to: 2, budgetMs }),
    pool.shortest({ position: FAR, to: 2, budgetMs: LONG_MS }),
  ])
  expect(failed).toEqual({ ok: false, error: { code: 'search/failed' } })
  expect(next).toMatchObject({ ok: true, value: { proven: true } })
  expect(warnings).toContainEqual(expect.stringContaining('failed'))
})

test('[SE41] a damaged table is made again, which the log says; [SE42] so is one that cannot be kept', async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'tables-'))
  const folder = join(dataDir, 'search-tables')
  const tables: KeptName[] = ['cross-corner', 'corners']
  mkdirSync(folder)
  writeFileSync(join(folder, 'cross-corner.bin'), 'no table')
  mkdirSync(join(folder, 'corners.bin'))
  const stories = await aPool({ dataDir, tables }).ready
  expect(Object.fromEntries(stories.map(({ name, how }) => [name, how]))).toEqual({
    'cross-corner': 'made-again',
    corners: 'made-again',
  })
  expect(warnings.sort()).toEqual([
    expect.stringContaining('corners.bin could not be kept'),
    expect.stringContaining('corners.bin could not be used'),
    expect.stringContaining('cross-corner.bin could not be used (it has 8 bytes'),
  ])
  expect((await aPool({ dataDir, tables: ['cross-corner'] }).ready).map(({ how }) => how)).toEqual(['read'])
  rmSync(dataDir, { recursive: true })
})
