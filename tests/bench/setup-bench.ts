/**
 * Measures setups: how long the tables take and how large they are, how many turns a setup has that is found in 200 ms, and
 * how soon the first one is there.
 *
 * Alone: `npx tsx tests/bench/setup-bench.ts`; it takes three quarters of a minute. Positions are drawn uniformly over all
 * legal cubes, from the same seed in every run.
 */

import { performance } from 'node:perf_hooks'
import { pathToFileURL } from 'node:url'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { drawArrangement } from '../../engine/method/draw-start.ts'
import { assert } from '../../engine/result.ts'
import { buildCornerTables, CORNER_BYTES, fillCornerDistances } from '../../engine/search/two-phase/corner-distances.ts'
import {
  buildPhase1Tables,
  fillPhase1Distances,
  PHASE_1_BYTES,
} from '../../engine/search/two-phase/phase-1-distances.ts'
import { buildPhase2Tables } from '../../engine/search/two-phase/phase-2-distances.ts'
import { searchTwoPhase, type TwoPhaseTables } from '../../engine/search/two-phase/two-phase-search.ts'
import type { Figure } from './engine-bench.ts'

const N_POSITIONS = 200
const SEARCH_TIME_MS = 200

/** What one search came to. */
type Run = { readonly nTurns: number; readonly firstMs: number; readonly elapsedMs: number; readonly nNodes: number }

/** @returns the figures of setups in the order in which they are printed */
export async function benchSetups(): Promise<Figure[]> {
  const [phase1, phase1Ms] = timed(buildPhase1Tables)
  const phase1Distances = new Uint8Array(PHASE_1_BYTES)
  const [, phase1FillMs] = timed(() => fillPhase1Distances(phase1, phase1Distances))
  const [corners, cornersMs] = timed(() => buildCornerTables(phase1))
  const cornerDistances = new Uint8Array(CORNER_BYTES)
  const [, cornersFillMs] = timed(() => fillCornerDistances(corners, cornerDistances))
  const [phase2, phase2Ms] = timed(() => buildPhase2Tables(corners.cornerOrderTurns))
  const bytes = (nBytes: number) => `${(nBytes / 1e6).toFixed(1)} MB`

  const random = chachaSource(new Uint8Array(32).fill(2))
  const positions = Array.from({ length: N_POSITIONS }, () => drawArrangement(1, random))
  const runs = positions.map((position) => searchFor({ phase1, phase1Distances, phase2 }, position))
  const sumOf = (amount: (run: Run) => number) => runs.reduce((sum, run) => sum + amount(run), 0)
  const firstMs = runs.map((run) => run.firstMs).sort((a, b) => a - b)
  return [
    { name: 'phase 1, exact table', value: phase1FillMs, unit: 'ms', note: bytes(PHASE_1_BYTES) },
    { name: 'phase 1, small tables', value: phase1Ms, unit: 'ms', note: bytes(bytesOf(phase1)) },
    { name: 'corners, exact table', value: cornersFillMs, unit: 'ms', note: bytes(CORNER_BYTES) },
    { name: 'corners, small tables', value: cornersMs, unit: 'ms', note: bytes(bytesOf(corners)) },
    { name: 'phase 2, all tables', value: phase2Ms, unit: 'ms', note: bytes(bytesOf(phase2)) },
    {
      name: 'setup, turns on average',
      value: sumOf(({ nTurns }) => nTurns) / N_POSITIONS,
      unit: 'turns',
      note: `${SEARCH_TIME_MS} ms each, ${N_POSITIONS} random positions`,
    },
    { name: 'setup, turns at most', value: Math.max(...runs.map(({ nTurns }) => nTurns)), unit: 'turns' },
    { name: 'first setup, median', value: firstMs[N_POSITIONS / 2], unit: 'ms' },
    { name: 'first setup, p99', value: firstMs[Math.floor(0.99 * N_POSITIONS)], unit: 'ms' },
    {
      name: 'two-phase nodes',
      value: (sumOf(({ nNodes }) => nNodes) / sumOf(({ elapsedMs }) => elapsedMs)) * 1_000,
      unit: '1/s',
    },
  ]
}

function searchFor(tables: TwoPhaseTables, position: CubePosition): Run {
  const startMs = performance.now()
  const elapsedMs = () => performance.now() - startMs
  let firstMs = Number.POSITIVE_INFINITY
  const { turns, nNodes } = searchTwoPhase({
    tables,
    position,
    accepts: () => {
      firstMs = Math.min(firstMs, elapsedMs())
      return true
    },
    // Past the time only for a position that has no setup yet: the average is over all positions.
    isOver: () => elapsedMs() >= SEARCH_TIME_MS && firstMs < Number.POSITIVE_INFINITY,
  })
  assert(turns !== null, 'the search ends with a setup')
  return { nTurns: turns.length, firstMs, elapsedMs: elapsedMs(), nNodes }
}

function timed<T>(work: () => T): [result: T, elapsedMs: number] {
  const startMs = performance.now()
  const result = work()
  return [result, performance.now() - startMs]
}

/** All typed arrays of an object, and of the objects in it. */
function bytesOf(tables: object): number {
  return Object.values(tables).reduce((sum: number, part: unknown) => {
    if (ArrayBuffer.isView(part)) return sum + part.byteLength
    return typeof part === 'object' && part !== null ? sum + bytesOf(part) : sum
  }, 0)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const { name, value, unit, note } of await benchSetups()) {
    const figure = value.toLocaleString('en', { maximumFractionDigits: value < 100 ? 2 : 0 })
    console.log(`${name.padEnd(30)}${figure.padStart(16)} ${unit.padEnd(6)} ${note ?? ''}`.trimEnd())
  }
}
