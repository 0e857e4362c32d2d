/** The pars of one stage, unpacked: what the look-up of a par and that of a shortest solution have in common. */

import { STAGES } from '../../method/stages.ts'
import { err, ok, type Result } from '../../result.ts'
import { type ArrangementClasses, arrangementClasses } from './arrangement-classes.ts'
import { openedOnce, type PackedTable, type ParTableFault, unpackTable } from './packed-table.ts'
import { readParBytes } from './par-bytes.ts'

/** Unpacked pars of a stage. */
export type StagePars = {
  readonly classes: ArrangementClasses
  /** By class: par in turns. */
  readonly ofClasses: Uint8Array
  /** By arrangement (`arrangement-rank.ts`): par in turns. */
  readonly ofArrangements: Uint8Array
}

/** @returns the seven stages, from a generated module; some 100 ms, because classes are counted out anew */
export function readStagePars(packed: PackedTable): Result<StagePars[], ParTableFault> {
  const bytes = unpackTable(packed, 'pars')
  if (!bytes.ok) return err(bytes.error)
  const classesOfStages = STAGES.map(arrangementClasses)
  const parsOfStages = readParBytes(
    bytes.value,
    classesOfStages.map(({ nClasses }) => nClasses),
  )
  return ok(
    classesOfStages.map((classes, index) => ({
      classes,
      ofClasses: parsOfStages[index],
      ofArrangements: expanded(parsOfStages[index], classes.classOf),
    })),
  )
}

/** Loads and reads the shipped pars, once. */
export const openStagePars: () => Promise<Result<StagePars[], ParTableFault>> = openedOnce(
  'pars',
  async () => (await import('./par-table-data.ts')).PAR_TABLE_DATA,
  readStagePars,
)

function expanded(ofClasses: Uint8Array, classOf: Uint16Array): Uint8Array {
  const ofArrangements = new Uint8Array(classOf.length)
  for (let rank = 0; rank < classOf.length; rank++) ofArrangements[rank] = ofClasses[classOf[rank]]
  return ofArrangements
}
