/**
 * Measures the engine: turns a second and what they leave in memory (beside a plain baseline in the same run), starts a
 * second for each stage, notation read and goals asked a second, lesson ways.
 *
 * Alone: `npx tsx tests/bench/engine-bench.ts`. Each figure is the best of several short runs, because on a shared machine
 * the best run is the one least disturbed.
 */

import { performance } from 'node:perf_hooks'
import { pathToFileURL } from 'node:url'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import { below } from '../../engine/chance/random-source.ts'
import { applyTurn } from '../../engine/cube/apply-turn.ts'
import { type CubePosition, solvedCube } from '../../engine/cube/cube-position.ts'
import { formatTurns } from '../../engine/cube/format-turns.ts'
import { stickerPermutation } from '../../engine/cube/generators.ts'
import { parseTurns } from '../../engine/cube/parse-turns.ts'
import { formatStickers, parseStickers, stickersOf } from '../../engine/cube/stickers.ts'
import { ALL_TURNS, FACE_TURNS, type Turn } from '../../engine/cube/turns.ts'
import { drawArrangement, drawStart } from '../../engine/method/draw-start.ts'
import { goalMet, stageProgress } from '../../engine/method/goals.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import { STAGES } from '../../engine/method/stages.ts'
import { assert } from '../../engine/result.ts'
import { bytesPerPortion } from '../engine/cube/heap-growth.ts'

export type Figure = { name: string; value: number; unit: string; note?: string }

const N_RUNS = 5
const RUN_TIME_MS = 120
const N_TURNS_IN_LIST = 4_096
const N_TURNS_FOR_MEMORY = 50_000_000

/** Every bench draws from the same seed, so that two runs do the same work. */
const random = chachaSource(new Uint8Array(32).fill(1))

/** What was worked out last: kept, so that no compiler may leave the work out. */
let lastResult: unknown

/** @returns the figures of the engine in the order in which they are printed */
export async function benchEngine(): Promise<Figure[]> {
  const anyTurns = drawTurns(ALL_TURNS)
  const faceTurns = drawTurns(FACE_TURNS)
  const inPlace = turnsPerSecond(faceTurns)
  const baseline = baselineTurnsPerSecond(faceTurns)
  return [
    { name: 'turns, faces only', value: inPlace, unit: '1/s' },
    { name: 'turns, all 54 kinds', value: turnsPerSecond(anyTurns), unit: '1/s' },
    { name: 'turns, baseline', value: baseline, unit: '1/s', note: '54 stickers copied into a new array each turn' },
    { name: 'turns beside baseline', value: inPlace / baseline, unit: 'times' },
    {
      name: 'memory taken by a turn',
      value: bytesPerTurn(anyTurns),
      unit: 'bytes',
      note: 'over 50 million turns, the readings included',
    },
    ...STAGES.map((stage) => ({
      name: `starts of stage ${stage}`,
      value: perSecond(() => drawStart({ span: { from: stage, to: stage }, random })),
      unit: '1/s',
    })),
    { name: 'turns read from text', value: turnsReadPerSecond(anyTurns), unit: '1/s' },
    ...askedPerSecond(),
  ]
}

function drawTurns(kinds: readonly Turn[]): Turn[] {
  return Array.from({ length: N_TURNS_IN_LIST }, () => kinds[below(random, kinds.length)])
}

function turnsPerSecond(turns: readonly Turn[]): number {
  const position = solvedCube()
  return N_TURNS_IN_LIST * perSecond(() => turnAll(position, turns))
}

function turnAll(position: CubePosition, turns: readonly Turn[]): void {
  for (let index = 0; index < turns.length; index++) applyTurn(position, turns[index])
}

/** The plainest way to turn a cube: every sticker is copied to where it goes, into an array made for it. */
function baselineTurnsPerSecond(turns: readonly Turn[]): number {
  const targets = ALL_TURNS.map(stickerPermutation)
  let stickers = stickersOf(solvedCube())
  return (
    N_TURNS_IN_LIST *
    perSecond(() => {
      for (const turn of turns) {
        const next = new Uint8Array(stickers.length)
        for (let source = 0; source < stickers.length; source++) next[targets[turn][source]] = stickers[source]
        stickers = next
      }
    })
  )
}

/** What the portions of 50 million turns leave on the heap, a turn. */
function bytesPerTurn(turns: readonly Turn[]): number {
  const position = solvedCube()
  const nLists = 25
  const portion = () => {
    for (let list = 0; list < nLists; list++) turnAll(position, turns)
  }
  const nTurns = nLists * turns.length
  return bytesPerPortion(portion, Math.ceil(N_TURNS_FOR_MEMORY / nTurns)) / nTurns
}

function turnsReadPerSecond(turns: readonly Turn[]): number {
  const text = formatTurns(turns.slice(0, 100))
  return 100 * perSecond(() => parseTurns(text))
}

function askedPerSecond(): Figure[] {
  const positions = STAGES.flatMap((stage) => Array.from({ length: 100 }, () => drawArrangement(stage, random)))
  const pictures = positions.map(formatStickers)
  const lastLayer = Array.from({ length: 100 }, () => drawArrangement(4, random))
  const each = <T>(items: readonly T[], ask: (item: T) => unknown) => {
    let next = 0
    return perSecond(() => ask(items[next++ % items.length]))
  }
  return [
    { name: 'goals asked', value: each(positions, (position) => goalMet(position, 7)), unit: '1/s' },
    {
      name: 'progress asked',
      value: each(positions, (position) => stageProgress(position, { from: 1, to: 7 })),
      unit: '1/s',
    },
    { name: 'pictures read', value: each(pictures, parseStickers), unit: '1/s' },
    {
      name: 'lesson ways, stages 4 to 7',
      value: each(lastLayer, (start) => lessonWay(start, { from: 4, to: 7 })),
      unit: '1/s',
    },
  ]
}

/** @returns how often a second `work` can be done, best of several runs after one to warm up */
function perSecond(work: () => unknown): number {
  runOnce(work)
  return Math.max(...Array.from({ length: N_RUNS }, () => runOnce(work)))
}

function runOnce(work: () => unknown): number {
  const startMs = performance.now()
  let nDone = 0
  let elapsedMs = 0
  while (elapsedMs < RUN_TIME_MS) {
    // The clock is read once in sixteen, so that short work is not measured by the clock's own cost.
    for (let batch = 0; batch < 16; batch++) lastResult = work()
    nDone += 16
    elapsedMs = performance.now() - startMs
  }
  assert(lastResult !== null, 'the work was done')
  return (nDone / elapsedMs) * 1_000
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const { name, value, unit, note } of await benchEngine()) {
    const figure = value.toLocaleString('en', { maximumFractionDigits: value < 100 ? 3 : 0 })
    console.log(`${name.padEnd(30)}${figure.padStart(16)} ${unit.padEnd(6)} ${note ?? ''}`.trimEnd())
  }
}
