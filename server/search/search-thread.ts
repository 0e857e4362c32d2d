/**
 * A thread that searches: takes a task, asks the engine, answers. It reads or makes tables too, because that is long work;
 * they lie in memory that all threads share.
 */

import { workerData } from 'node:worker_threads'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import { asHeldHome } from '../../engine/cube/hold.ts'
import { inverseTurns, type Turn } from '../../engine/cube/turns.ts'
import { assert, err, type Result } from '../../engine/result.ts'
import { openParTables } from '../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../engine/search/par/open-shortest-solutions.ts'
import { findSetup } from '../../engine/search/setup/find-setup.ts'
import { findShortest, type SearchGround } from '../../engine/search/shortest/find-shortest.ts'
import { openTables } from '../../engine/search/tables/lower-bounds.ts'
import { TABLE_NAMES, type TableBytes, type TableName } from '../../engine/search/tables/search-tables.ts'
import { searchTwoPhase, type TwoPhaseTables } from '../../engine/search/two-phase/two-phase-search.ts'
import {
  KEPT_NAMES,
  type KeptName,
  makeKept,
  type PairMoves,
  TWO_PHASE_FROM_GOAL,
  type TwoPhaseSmall,
} from './kept-names.ts'
import { readOrMakeTable } from './kept-table.ts'
import { unpackArrays } from './packed-arrays.ts'
import { isStopRaised, searchEnd } from './search-stop.ts'
import type { FromThread, ThreadData, ToThread } from './search-thread-messages.ts'
import { hashOfTable } from './table-hashes.ts'

type TaskOf<Kind extends ToThread['kind']> = Extract<ToThread, { kind: Kind }>

const { folder, tables, permille } = workerData as ThreadData

const WHOLE_PERMILLE = 1_000
/** The two phases find a way near 20 turns in some milliseconds and hardly a shorter one later: they get little of a budget. */
const TWO_PHASE_MS_MAX = 150
const TWO_PHASE_NODES_MAX = 1_000_000
const TWO_PHASE_SHARE = 0.25

/** The one function that the pool calls. */
export default async function answer(task: ToThread): Promise<FromThread[ToThread['kind']]> {
  switch (task.kind) {
    case 'table':
      return bringTable(task.name)
    case 'shortest':
      return shortest(task)
    case 'setup':
      return setup(task)
  }
}

function bringTable(name: KeptName): FromThread['table'] {
  const beganAtMs = performance.now()
  const say = (share: number) => Atomics.store(permille, KEPT_NAMES.indexOf(name), Math.floor(WHOLE_PERMILLE * share))
  const outcome = readOrMakeTable({
    folder,
    name,
    bytes: bytesOf(name),
    hash: hashOfTable(name),
    make: (bytes) => makeKept(name, bytes, (nDone, nTotal) => say(nDone / nTotal)),
  })
  say(1)
  return { ...outcome, ms: performance.now() - beganAtMs }
}

async function shortest(task: TaskOf<'shortest'>): Promise<FromThread['shortest']> {
  const ground = await searchGround()
  const position = task.position as CubePosition
  const shouldStop = searchEnd(task, task.stop)
  const known = task.to < TWO_PHASE_FROM_GOAL ? [] : wayByTwoPhases(position, task)
  return findShortest({ position, to: task.to, known, shouldStop }, ground)
}

/** A setup of the position, undone, leads through every goal on its way to the solved cube. */
function wayByTwoPhases(position: CubePosition, { budgetMs, budgetNodes, stop }: TaskOf<'shortest'>): Turn[][] {
  const isOver = searchEnd(
    {
      budgetMs: budgetNodes === undefined ? Math.min(TWO_PHASE_MS_MAX, TWO_PHASE_SHARE * budgetMs) : budgetMs,
      budgetNodes: Math.min(TWO_PHASE_NODES_MAX, TWO_PHASE_SHARE * (budgetNodes ?? Number.POSITIVE_INFINITY)),
    },
    stop,
  )
  const { turns } = searchTwoPhase({ tables: twoPhaseTables(), position: asHeldHome(position), isOver })
  return turns === null ? [] : [inverseTurns(turns)]
}

function setup(task: TaskOf<'setup'>): FromThread['setup'] {
  const isOver = searchEnd(task, task.stop)
  return unlessStopped(() =>
    findSetup({
      tables: twoPhaseTables(),
      start: task.position as CubePosition,
      ...(task.secrets === undefined ? {} : { secrets: task.secrets }),
      isOver: () => {
        // Whoever no longer wants a setup does not wait for the rest of the search either.
        if (isStopRaised(task.stop)) throw new Stopped()
        return isOver()
      },
    }),
  )
}

/** Leaves a search in the middle. */
class Stopped extends Error {}

function unlessStopped<T, E>(search: () => Result<T, E>): Result<T, E | { code: 'search/stopped' }> {
  try {
    return search()
  } catch (fault) {
    if (fault instanceof Stopped) return err({ code: 'search/stopped' })
    throw fault
  }
}

let ground: SearchGround | undefined

async function searchGround(): Promise<SearchGround> {
  if (ground === undefined) {
    const pars = await openParTables()
    const solutions = await openShortestSolutions()
    assert(pars.ok && solutions.ok, 'the shipped pars and solutions can be read')
    ground = { pars: pars.value, solutions: solutions.value, tables: openTables(largeTables(), smallTables()) }
  }
  return ground
}

function smallTables() {
  const twoPhase = tables['two-phase-small'] === undefined ? {} : twoPhaseSmall()
  return { ...twoPhase, moves: unpackArrays(bytesOf('pair-moves')) as unknown as PairMoves }
}

function twoPhaseTables(): TwoPhaseTables {
  const { phase1, phase2 } = twoPhaseSmall()
  return { phase1, phase2, phase1Distances: bytesOf('phase-1') }
}

let unpacked: TwoPhaseSmall | undefined

function twoPhaseSmall(): TwoPhaseSmall {
  unpacked ??= unpackArrays(bytesOf('two-phase-small')) as unknown as TwoPhaseSmall
  return unpacked
}

function largeTables(): TableBytes {
  const atHand = TABLE_NAMES.filter((name) => tables[name] !== undefined)
  return Object.fromEntries(atHand.map((name): [TableName, Uint8Array] => [name, bytesOf(name)]))
}

function bytesOf(name: KeptName): Uint8Array {
  const memory = tables[name]
  assert(memory !== undefined, `there is memory for the table ${name}`)
  return new Uint8Array(memory)
}
