/**
 * Measures the pars: look-ups a second in home and in other holds, shortest solutions a second, the time to open the tables,
 * their size on the way to the browser; and shows how the pars of each stage are distributed.
 *
 * Alone: `npx tsx tests/bench/par-bench.ts`. Each figure of speed is the best of several short runs, because on a shared
 * machine the best run is the one least disturbed. Opening is measured once, as it happens once.
 */

import { readFileSync } from 'node:fs'
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { gzipSync } from 'node:zlib'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import { below } from '../../engine/chance/random-source.ts'
import { afterTurns } from '../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { N_HOLDS, turnsToHold } from '../../engine/cube/hold.ts'
import { drawArrangement } from '../../engine/method/draw-start.ts'
import { STAGES, type Stage } from '../../engine/method/stages.ts'
import { assert, type Result } from '../../engine/result.ts'
import { openParTables } from '../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../engine/search/par/open-shortest-solutions.ts'
import { PAR_TABLE_DATA } from '../../engine/search/par/par-table-data.ts'
import { SHORTEST_SOLUTION_DATA } from '../../engine/search/par/shortest-solution-data.ts'
import type { Figure } from './engine-bench.ts'

const N_RUNS = 5
const RUN_TIME_MS = 100
const N_STARTS = 1_000
const NS_PER_SECOND = 1e9

/** Every bench draws from the same seed, so that two runs do the same work. */
const random = chachaSource(new Uint8Array(32).fill(2))

/** What was worked out last: kept, so that no compiler may leave the work out. */
let lastResult: unknown

/** @returns the figures of the pars in the order in which they are printed */
export async function benchPars(): Promise<Figure[]> {
  const pars = await timedMs(openParTables)
  const solutions = await timedMs(openShortestSolutions)
  const { parOf, distributionOf, meanPar } = pars.value
  const lookUps = STAGES.flatMap((stage) => {
    const starts = Array.from({ length: N_STARTS }, () => drawArrangement(stage, random))
    const home = perSecond(starts, (start) => parOf(start, stage))
    const held = perSecond(starts.map(inSomeHold), (start) => parOf(start, stage))
    const solved = perSecond(starts, (start) => solutions.value.shortestSolutionOf(start, stage))
    return [
      { name: `pars of stage ${stage}`, value: home, unit: '1/s', note: nanoseconds(home) },
      { name: `pars of stage ${stage}, any hold`, value: held, unit: '1/s', note: nanoseconds(held) },
      { name: `shortest solutions of stage ${stage}`, value: solved, unit: '1/s', note: nanoseconds(solved) },
    ]
  })
  return [
    { name: 'par tables opened in', value: pars.ms, unit: 'ms', note: 'loading the module included' },
    { name: 'shortest solutions opened in', value: solutions.ms, unit: 'ms', note: 'once the pars are open' },
    ...lookUps,
    ...sizes('par tables', 'par-table-data.ts', PAR_TABLE_DATA.base64),
    ...sizes('shortest solutions', 'shortest-solution-data.ts', SHORTEST_SOLUTION_DATA.base64),
    ...STAGES.map((stage: Stage) => ({
      name: `mean par of stage ${stage}`,
      value: meanPar(stage),
      unit: 'turns',
      note: `par 0, 1, 2, ...: ${distributionOf(stage).join(' ')}`,
    })),
  ]
}

function inSomeHold(start: CubePosition): CubePosition {
  return afterTurns(start, turnsToHold(below(random, N_HOLDS)))
}

function sizes(what: string, file: string, base64: string): Figure[] {
  const bytes = Buffer.from(base64, 'base64')
  const module = readFileSync(fileURLToPath(new URL(`../../engine/search/par/${file}`, import.meta.url)))
  return [
    { name: `${what}, bytes`, value: bytes.length, unit: 'bytes' },
    { name: `${what}, as text`, value: base64.replace(/\s/g, '').length, unit: 'bytes' },
    { name: `${what}, module compressed`, value: gzipSync(module).length, unit: 'bytes', note: 'gzip, as it is sent' },
  ]
}

async function timedMs<T>(open: () => Promise<Result<T, unknown>>): Promise<{ value: T; ms: number }> {
  const startMs = performance.now()
  const opened = await open()
  const ms = performance.now() - startMs
  assert(opened.ok, 'the shipped tables open')
  return { value: opened.value, ms }
}

function nanoseconds(perSecond: number): string {
  return `${(NS_PER_SECOND / perSecond).toFixed(0)} ns each`
}

/** @returns how often a second the starts can be asked, best of several runs after one to warm up */
function perSecond(starts: readonly CubePosition[], ask: (start: CubePosition) => unknown): number {
  runOnce(starts, ask)
  return Math.max(...Array.from({ length: N_RUNS }, () => runOnce(starts, ask)))
}

function runOnce(starts: readonly CubePosition[], ask: (start: CubePosition) => unknown): number {
  const startMs = performance.now()
  let nDone = 0
  let elapsedMs = 0
  while (elapsedMs < RUN_TIME_MS) {
    for (let index = 0; index < starts.length; index++) lastResult = ask(starts[index])
    nDone += starts.length
    elapsedMs = performance.now() - startMs
  }
  assert(lastResult !== undefined, 'the work was done')
  return (nDone / elapsedMs) * 1_000
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const { name, value, unit, note } of await benchPars()) {
    const figure = value.toLocaleString('en', { maximumFractionDigits: value < 100 ? 6 : 0 })
    console.log(`${name.padEnd(36)}${figure.padStart(14)} ${unit.padEnd(6)} ${note ?? ''}`.trimEnd())
  }
}
