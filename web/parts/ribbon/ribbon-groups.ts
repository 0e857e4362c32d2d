/**
 * The parts of a ribbon that must not be torn from each other where it goes on in the next line: a trigger stays whole,
 * and a re-hold stays with what is turned behind it, since it stands on the seam before that.
 */

import type { Turn } from '../../../engine/cube/turns.ts'
import { type RibbonPart, ribbonParts } from './ribbon-parts.ts'

export type RibbonGroup = {
  /** Index of the group's first turn. */
  readonly at: number
  readonly reHolds: readonly Turn[]
  /** A square or a trigger; null only behind the last turn, where re-holds stand alone. */
  readonly part: Exclude<RibbonPart, { kind: 're-hold' }> | null
  /** Length in squares: counted turns. A re-hold has none. */
  readonly squares: number
}

/** @returns the groups in order; their lengths add up to what the turns count in a round */
export function ribbonGroups(turns: readonly Turn[]): RibbonGroup[] {
  const groups: RibbonGroup[] = []
  let reHolds: Turn[] = []
  for (const part of ribbonParts(turns)) {
    if (part.kind === 're-hold') {
      reHolds.push(part.turn)
      continue
    }
    const squares = part.kind === 'trigger' ? part.turns.length : part.squares
    groups.push({ at: part.at - reHolds.length, reHolds, part, squares })
    reHolds = []
  }
  if (reHolds.length > 0) groups.push({ at: turns.length - reHolds.length, reHolds, part: null, squares: 0 })
  return groups
}
