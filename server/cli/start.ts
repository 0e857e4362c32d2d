/**
 * `start --stage K [--to M] --count N --seed S [--least-par P]`: starts of a round, each as a setup for a solved cube held yellow
 * up, green in front. The same options give the same lines on every machine: searches end after so many positions, not after
 * so much time.
 */

import { createHash } from 'node:crypto'
import { chachaSource } from '../../engine/chance/chacha-source.ts'
import type { RandomSource } from '../../engine/chance/random-source.ts'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { formatTurns } from '../../engine/cube/format-turns.ts'
import { drawStart } from '../../engine/method/draw-start.ts'
import { lessonWay } from '../../engine/method/lesson-way.ts'
import type { StageSpan } from '../../engine/method/stages.ts'
import { assert, err, ok, type Result } from '../../engine/result.ts'
import { openParTables, type ParTables } from '../../engine/search/par/open-par-tables.ts'
import type { SearchPool } from '../search/search-pool.ts'
import type { OpenSearch } from './open-search.ts'
import { type InputFault, readNumber, readSpan } from './read-input.ts'
import { shown } from './read-options.ts'

/** What was asked for, as it was written. */
export type WrittenStart = Readonly<Partial<Record<'stage' | 'to' | 'count' | 'seed' | 'least-par', string>>>

/** A start, as it is printed. */
type StartLine =
  | { readonly stage: number; readonly setup: string; readonly par: number }
  | {
      readonly stage: number
      readonly to: number
      readonly setup: string
      readonly par: number
      readonly proven: boolean
      readonly lowerBound: number
    }

const COUNT_RANGE = { least: 1, most: 10_000, whole: true }
const SEED_CHARACTERS_MAX = 1_000
/** Some tenths of a second: setups of 18 or 19 turns, mostly. */
const SETUP_NODES = 500_000
/** A second or two for the way over several stages, where a span asks for it. */
const SPAN_NODES = 4_000_000
/** No search takes so long; it only keeps a machine that hangs from hanging for ever. */
const BUDGET_MS = 600_000
/** The rarest par of a stage is met once in some 3,000 draws. */
const DRAWS_MAX = 1_000_000

/** What is wanted. */
type StartWish = {
  readonly span: StageSpan
  readonly count: number
  readonly leastPar: number
  readonly random: RandomSource
  readonly pars: ParTables
}

/** @returns the starts, one after the other, as they are found; or what is wrong with the options */
export async function openStart(
  written: WrittenStart,
  openSearch: OpenSearch,
): Promise<Result<AsyncGenerator<StartLine | { readonly error: string }>, InputFault>> {
  const wish = await readWish(written)
  return wish.ok ? ok(starts(wish.value, openSearch)) : wish
}

async function readWish(written: WrittenStart): Promise<Result<StartWish, InputFault>> {
  const span = readSpan(written.stage, written.to)
  if (!span.ok) return span
  const count = readNumber('--count', written.count, COUNT_RANGE)
  if (!count.ok) return count
  const { seed } = written
  if (seed === undefined || seed === '')
    return err('--seed is missing: give any text; the same text gives the same starts')
  if (seed.length > SEED_CHARACTERS_MAX)
    return err(`--seed: ${shown(seed)} has more than ${SEED_CHARACTERS_MAX} characters`)
  const pars = await openParTables()
  assert(pars.ok, 'the shipped pars can be read')
  const { from, to } = span.value
  const most = from === to ? pars.value.distributionOf(from).length - 1 : 1
  if (from !== to && written['least-par'] !== undefined) return err('--least-par is for one stage; leave out --to')
  const leastPar = readNumber('--least-par', written['least-par'] ?? '1', { least: 1, most, whole: true })
  if (!leastPar.ok) return leastPar
  const random = chachaSource(createHash('sha256').update(seed).digest())
  return ok({ span: span.value, count: count.value, leastPar: leastPar.value, random, pars: pars.value })
}

/** Setups are searched for in several threads, while the ones before are printed. */
async function* starts(
  wish: StartWish,
  openSearch: OpenSearch,
): AsyncGenerator<StartLine | { readonly error: string }> {
  const { from, to } = wish.span
  const search = openSearch(from === to ? 'setup' : 'all')
  const underWay: Array<Promise<StartLine | { readonly error: string }>> = []
  try {
    for (let index = 0; index < wish.count; index++) {
      underWay.push(startLine(drawWanted(wish), wish, search))
      const next = underWay.length > N_AHEAD ? underWay.shift() : undefined
      if (next !== undefined) yield await next
    }
    for (const line of underWay) yield await line
  } finally {
    await search.close()
  }
}

/** Enough to keep all threads at work. */
const N_AHEAD = 8

function drawWanted({ span, leastPar, random, pars }: StartWish): CubePosition {
  for (let draw = 0; draw < DRAWS_MAX; draw++) {
    const start = drawStart({ span, random })
    if (span.from !== span.to || pars.parOf(start, span.from) >= leastPar) return start
  }
  throw new Error(`No start of stage ${span.from} with par ${leastPar} was drawn`)
}

async function startLine(
  start: CubePosition,
  { span, pars }: StartWish,
  search: SearchPool,
): Promise<StartLine | { readonly error: string }> {
  const { from, to } = span
  const isOneStage = from === to
  const shortest = isOneStage
    ? undefined
    : await search.shortest({ position: start, to, budgetMs: BUDGET_MS, budgetNodes: SPAN_NODES })
  if (shortest?.ok === false) return { error: `the search ended with ${shortest.error.code}` }
  const par = shortest === undefined ? pars.parOf(start, from) : shortest.value.turns.length
  const setup = await search.setup({
    position: start,
    secrets: { to, parTurns: par, lessonWay: lessonWay(start, span) },
    budgetMs: BUDGET_MS,
    budgetNodes: SETUP_NODES,
  })
  if (!setup.ok) return { error: `there is no setup for this start (${setup.error.code})` }
  const turns = formatTurns(setup.value.turns)
  if (shortest === undefined) return { stage: from, setup: turns, par }
  const { proven, lowerBound } = shortest.value
  return { stage: from, to, setup: turns, par, proven, lowerBound }
}
