/**
 * Measures searches: the tables (time, bytes), live search of single stages over a thousand uniform starts each beside a
 * search without tables, and spans of several stages as the server searches them, in threads.
 *
 * Alone: `npx tsx tests/bench/search-bench.ts`, some four minutes. The server looks single stages up (`par-bench.ts`); the
 * live search is measured to show what the tables are worth and that both agree.
 */

import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { drawArrangement } from '../../engine/method/draw-start.ts'
import { goalMet } from '../../engine/method/goals.ts'
import { arrangementsOf } from '../../engine/method/last-layer-arrangements.ts'
import { STAGES, type Stage } from '../../engine/method/stages.ts'
import { assert } from '../../engine/result.ts'
import { openParTables } from '../../engine/search/par/open-par-tables.ts'
import { type DeepenAnswer, deepen } from '../../engine/search/tables/deepen.ts'
import { type OpenTables, openTables } from '../../engine/search/tables/lower-bounds.ts'
import { fillTable, TABLE_NAMES, type TableName, tableLength } from '../../engine/search/tables/search-tables.ts'
import { openSearchPool } from '../../server/search/search-pool.ts'
import type { Figure } from './engine-bench.ts'

const N_STARTS = 1_000
const TURNS_MAX = 14
/** Where the tests keep their tables too. */
const KEPT_IN = fileURLToPath(new URL('../../.cache', import.meta.url))

/** Stage by stage: from, to, how many starts, and the budget of each. */
const SPANS: ReadonlyArray<readonly [from: Stage, to: Stage, nStarts: number, budgetMs: number]> = [
  [1, 2, 300, 5_000],
  [2, 3, 12, 5_000],
  [1, 3, 12, 5_000],
  [3, 4, 40, 5_000],
  [4, 5, 100, 5_000],
  [4, 7, 40, 5_000],
  [3, 7, 8, 2_000],
  [1, 7, 8, 2_000],
]

/** Every bench draws from the same seed, so that two runs do the same work. */
const random = chachaSource(new Uint8Array(32).fill(4))

/** @returns the figures in the order in which they are printed */
export async function benchSearch(): Promise<Figure[]> {
  const { figures, tables } = timedTables()
  const live = []
  for (const stage of STAGES.slice(1)) live.push(...(await liveStage(tables, stage)))
  return [...figures, ...live, ...withoutTables(tables), ...(await spans())]
}

function timedTables(): { figures: Figure[]; tables: OpenTables } {
  const bytes: Partial<Record<TableName, Uint8Array>> = {}
  const figures = TABLE_NAMES.map((name): Figure => {
    const table = new Uint8Array(tableLength(name))
    bytes[name] = table
    return {
      name: `table ${name}, made in`,
      value: timedMs(() => fillTable(name, table)),
      unit: 'ms',
      note: inMb(table),
    }
  })
  const all = figures.reduce((sum, { value }) => sum + value, 0)
  const nBytes = TABLE_NAMES.reduce((sum, name) => sum + tableLength(name), 0)
  const note = `${(nBytes / 1e6).toFixed(1)} MB, one thread`
  return {
    figures: [...figures, { name: 'all tables, made in', value: all, unit: 'ms', note }],
    tables: openTables(bytes),
  }
}

async function liveStage(tables: OpenTables, stage: Stage): Promise<Figure[]> {
  const pars = await openParTables()
  assert(pars.ok, 'the shipped pars open')
  const runs = startsOf(stage).map((start) => {
    const startMs = performance.now()
    const answer = search(tables, start, stage)
    const ms = performance.now() - startMs
    assert(answer.kind === 'found' && answer.turns.length === pars.value.parOf(start, stage), 'search and table agree')
    return { ms, nNodes: answer.nNodes }
  })
  const ms = sorted(runs.map((run) => run.ms))
  const nodes = sorted(runs.map((run) => run.nNodes))
  const mean = nodes.reduce((sum, n) => sum + n, 0) / nodes.length
  return [
    { name: `stage ${stage}, live search, p50`, value: at(ms, 0.5), unit: 'ms', note: `${at(nodes, 0.5)} nodes` },
    { name: `stage ${stage}, live search, p99`, value: at(ms, 0.99), unit: 'ms', note: `${at(nodes, 0.99)} nodes` },
    {
      name: `stage ${stage}, nodes on average`,
      value: mean,
      unit: 'nodes',
      note: `over ${runs.length} uniform starts`,
    },
  ]
}

/** Drawn uniformly; of a few arrangements each as often as any other. */
function startsOf(stage: Stage): CubePosition[] {
  if (stage < 4) return Array.from({ length: N_STARTS }, () => drawArrangement(stage, random))
  const arrangements = arrangementsOf(stage as 4 | 5 | 6 | 7)
  const nEach = Math.ceil(N_STARTS / arrangements.length)
  return Array.from({ length: nEach }, () => arrangements).flat()
}

/** The baseline: the same starts and the same walk, with no bound to ask. */
function withoutTables(tables: OpenTables): Figure[] {
  const stage = 4
  const starts = arrangementsOf(stage).filter((start) => {
    const answer = search(tables, start, stage)
    return answer.kind === 'found' && answer.turns.length === 6
  })
  const nodesOf = (ground: OpenTables) => starts.reduce((sum, start) => sum + search(ground, start, stage).nNodes, 0)
  const nWith = nodesOf(tables)
  const startMs = performance.now()
  const nWithout = nodesOf({ boundsFor: () => ({ numbers: [], bounds: [] }) })
  const perSecond = (1_000 * nWithout) / (performance.now() - startMs)
  return [
    {
      name: 'baseline without tables, stage 4, par 6',
      value: nWithout / starts.length,
      unit: 'nodes',
      note: 'a start',
    },
    {
      name: 'with tables',
      value: nWith / starts.length,
      unit: 'nodes',
      note: `${Math.round(nWithout / nWith)} times fewer`,
    },
    { name: 'baseline nodes a second', value: perSecond, unit: '1/s' },
  ]
}

async function spans(): Promise<Figure[]> {
  const startMs = performance.now()
  const pool = openSearchPool({ dataDir: KEPT_IN, log: { info: () => {}, warn: () => {} } })
  const stories = await pool.ready
  const readyMs = performance.now() - startMs
  const how = stories.every((story) => story.how === 'read') ? 'read' : 'made'
  const figures: Figure[] = [{ name: `threads and tables ready, ${how}, in`, value: readyMs, unit: 'ms' }]
  for (const [from, to, nStarts, budgetMs] of SPANS) {
    const runs = []
    for (let draw = 0; draw < nStarts; draw++) {
      const position = drawArrangement(from, random)
      const beganMs = performance.now()
      const answer = await pool.shortest({ position, to, budgetMs })
      assert(answer.ok, 'the pool answers')
      runs.push({ ms: performance.now() - beganMs, nTurns: answer.value.turns.length, proven: answer.value.proven })
    }
    const ms = sorted(runs.map((run) => run.ms))
    const nProven = runs.filter(({ proven }) => proven).length
    const mean = runs.reduce((sum, { nTurns }) => sum + nTurns, 0) / runs.length
    const note = `${nProven} of ${nStarts} proven in ${budgetMs / 1_000} s; p50 ${at(ms, 0.5).toFixed(1)}, p99 ${at(ms, 0.99).toFixed(0)} ms`
    figures.push({ name: `stages ${from} to ${to} in one go, on average`, value: mean, unit: 'turns', note })
  }
  await pool.close()
  return figures
}

function search(tables: OpenTables, start: CubePosition, stage: Stage): DeepenAnswer {
  return deepen({
    ...tables.boundsFor(start, stage),
    isGoal: (turns) => goalMet(afterTurns(start, turns), stage),
    atLeast: 0,
    turnsMax: TURNS_MAX,
    shouldStop: () => false,
  })
}

function timedMs(work: () => void): number {
  const startMs = performance.now()
  work()
  return performance.now() - startMs
}

function sorted(values: readonly number[]): number[] {
  return [...values].sort((a, b) => a - b)
}

function at(ascending: readonly number[], share: number): number {
  return ascending[Math.min(ascending.length - 1, Math.floor(share * ascending.length))]
}

function inMb(bytes: Uint8Array): string {
  return `${(bytes.length / 1e6).toFixed(1)} MB`
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const { name, value, unit, note } of await benchSearch()) {
    const figure = value.toLocaleString('en', { maximumFractionDigits: value < 100 ? 3 : 0 })
    console.log(`${name.padEnd(46)}${figure.padStart(16)} ${unit.padEnd(6)} ${note ?? ''}`.trimEnd())
  }
}
