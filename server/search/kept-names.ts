/**
 * What is kept on disk: every table of the engine, and the small tables beside them in two bundles, because making those
 * anew takes a second that a later start does not have. How long each is, how it is made, and what a question needs.
 */

import type { Stage } from '../../engine/method/stages.ts'
import { assert } from '../../engine/result.ts'
import { PAIR_TABLE_NAMES, PAIR_TABLES, type PairTableName } from '../../engine/search/tables/pair-tables.ts'
import {
  fillTable,
  TABLE_NAMES,
  TABLES_FOR_GOAL,
  type TableName,
  tableLength,
} from '../../engine/search/tables/search-tables.ts'
import { buildCornerTables, type CornerTables } from '../../engine/search/two-phase/corner-distances.ts'
import { buildPhase1Tables, type Phase1Tables } from '../../engine/search/two-phase/phase-1-distances.ts'
import { buildPhase2Tables, type Phase2Tables } from '../../engine/search/two-phase/phase-2-distances.ts'
import { type Packable, packArrays, packedLength } from './packed-arrays.ts'

/** All that is kept, the longest to make first. */
export const KEPT_NAMES = [TABLE_NAMES[0], 'two-phase-small', ...TABLE_NAMES.slice(1), 'pair-moves'] as const

/** The name of what is kept, and of its file. */
export type KeptName = (typeof KEPT_NAMES)[number]

/** The bundle `two-phase-small`: all that the two phases and the tables of classes need beside the large tables. */
export type TwoPhaseSmall = {
  readonly phase1: Phase1Tables
  readonly corners: CornerTables
  readonly phase2: Phase2Tables
}

/** The bundle `pair-moves`: what turns make of the rows and columns of each pair table. */
export type PairMoves = Readonly<Record<PairTableName, { readonly rows: Uint32Array; readonly columns: Uint32Array }>>

/** From this goal on a way found by the two phases keeps the best known line near 20 turns. */
export const TWO_PHASE_FROM_GOAL: Stage = 4

/** What the two phases alone need. */
export const KEPT_FOR_SETUPS: readonly KeptName[] = ['phase-1', 'two-phase-small']

/** @returns what the shortest way over several stages to this goal needs */
export function keptForGoal(to: Stage): readonly KeptName[] {
  const tables: ReadonlySet<KeptName> = new Set(TABLES_FOR_GOAL[to])
  const isTwoPhase = TWO_PHASE_FROM_GOAL <= to
  return KEPT_NAMES.filter(
    (name) => tables.has(name) || name === 'pair-moves' || (isTwoPhase && KEPT_FOR_SETUPS.includes(name)),
  )
}

/**
 * Makes one anew: always the same bytes.
 *
 * @param bytes as long as `table-hashes.ts` says; may lie on shared memory
 * @param onProgress told how much is done of how much
 */
export function makeKept(
  name: KeptName,
  bytes: Uint8Array,
  onProgress?: (nDone: number, nTotal: number) => void,
): void {
  const small = smallTables(name)
  if (small === undefined) {
    fillTable(name as TableName, bytes, onProgress)
    return
  }
  const nBytes = packedLength(small)
  assert(nBytes === bytes.length, `the bundle ${name} has its listed length, not ${nBytes}`)
  packArrays(small, bytes)
}

/** @returns what a bundle of small tables holds, made anew; undefined for a large table */
function smallTables(name: KeptName): Packable | undefined {
  if (name === 'two-phase-small') return twoPhaseSmall()
  return name === 'pair-moves' ? pairMoves() : undefined
}

/** @returns the length of a large table; undefined for a bundle, whose length is listed */
export function largeLength(name: KeptName): number | undefined {
  return name === 'two-phase-small' || name === 'pair-moves' ? undefined : tableLength(name)
}

function twoPhaseSmall(): TwoPhaseSmall {
  const phase1 = buildPhase1Tables()
  const corners = buildCornerTables(phase1)
  return { phase1, corners, phase2: buildPhase2Tables(corners.cornerOrderTurns) }
}

function pairMoves(): PairMoves {
  const moves = PAIR_TABLE_NAMES.map((name) => {
    const { rows, columns } = PAIR_TABLES[name]
    return [name, { rows: rows.moves(), columns: columns.moves() }] as const
  })
  return Object.fromEntries(moves) as PairMoves
}
