/**
 * All tables that searches use, by name: how long each is, how it is filled, and which ones a goal needs. Who keeps the
 * bytes (a worker's shared memory, a file) is not known here.
 */

import type { Stage } from '../../method/stages.ts'
import { buildCornerTables, CORNER_BYTES, fillCornerDistances } from '../two-phase/corner-distances.ts'
import { buildPhase1Tables, fillPhase1Distances, PHASE_1_BYTES } from '../two-phase/phase-1-distances.ts'
import { buildDistanceTable } from './build-distance-table.ts'
import { PAIR_TABLE_NAMES, PAIR_TABLES, type PairTableName, pairTableBytes } from './pair-tables.ts'

/** Every table; the longest to make comes first, so that several threads end at about the same time. */
export const TABLE_NAMES = ['phase-1', ...PAIR_TABLE_NAMES.toReversed(), 'corners'] as const

/** The name of a table, and of its file. */
export type TableName = (typeof TABLE_NAMES)[number]

/** The bytes of tables, some or all. */
export type TableBytes = Readonly<Partial<Record<TableName, Uint8Array>>>

/** @returns the length of a table in bytes */
export function tableLength(name: TableName): number {
  if (name === 'phase-1') return PHASE_1_BYTES
  if (name === 'corners') return CORNER_BYTES
  return pairTableBytes(name)
}

/**
 * Makes a table anew: always the same bytes.
 *
 * @param bytes `tableLength` long; may lie on shared memory
 * @param onProgress told how many entries are found, and how many there are
 */
export function fillTable(
  name: TableName,
  bytes: Uint8Array,
  onProgress?: (nDone: number, nTotal: number) => void,
): void {
  if (name === 'phase-1') fillPhase1Distances(buildPhase1Tables(), bytes, onProgress)
  else if (name === 'corners') fillCornerDistances(buildCornerTables(), bytes, onProgress)
  else buildDistanceTable(PAIR_TABLES[name], bytes, onProgress)
}

const FIRST_LAYER_TABLES: readonly PairTableName[] = ['cross-corner', 'base-corners-edge']
const TWO_LAYER_TABLES: readonly PairTableName[] = ['middle-corner', 'middle-edge', ...FIRST_LAYER_TABLES]
const TOP_CROSS_TABLES: readonly PairTableName[] = ['flips-middle', 'flips-base', ...TWO_LAYER_TABLES]

/** The tables that a search for the goal of each stage asks. The cross has an exact table of its own, in `par/`. */
export const TABLES_FOR_GOAL: Readonly<Record<Stage, readonly TableName[]>> = {
  1: [],
  2: FIRST_LAYER_TABLES,
  3: TWO_LAYER_TABLES,
  4: TOP_CROSS_TABLES,
  5: ['phase-1', ...TOP_CROSS_TABLES],
  6: ['corners', 'phase-1', ...TOP_CROSS_TABLES],
  7: ['corners', 'phase-1', ...TOP_CROSS_TABLES],
}
