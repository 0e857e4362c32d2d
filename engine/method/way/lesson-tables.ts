/** The tables of each book, a stage at a time: made when first asked for and kept as long as the book. */

import { assert } from '../../result.ts'
import { isLastLayerStage } from '../cases.ts'
import { isPieceStage } from '../piece-cases.ts'
import type { SequenceBook } from '../sequence-book.ts'
import type { Stage } from '../stages.ts'
import { buildCaseTable } from './case-table.ts'
import { buildPieceTable } from './piece-table.ts'
import type { StageTable } from './stage-table.ts'

const tablesOfBook = new WeakMap<SequenceBook, Map<Stage, StageTable>>()

/**
 * @param book not to be changed afterwards
 * @returns the shortest ways of the stage. Sequences with a fault are not used.
 */
export function stageTable(book: SequenceBook, stage: Stage): StageTable {
  const tables = tablesOfBook.get(book) ?? new Map<Stage, StageTable>()
  tablesOfBook.set(book, tables)
  const table = tables.get(stage) ?? build(book, stage)
  tables.set(stage, table)
  return table
}

function build(book: SequenceBook, stage: Stage): StageTable {
  if (isPieceStage(stage)) return buildPieceTable(stage, book.stages[stage])
  assert(isLastLayerStage(stage), `stage ${stage} is taught by cases`)
  return buildCaseTable(stage, book.stages[stage])
}
