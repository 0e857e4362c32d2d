/**
 * The hints that the teacher sent in a round, with where the cube stood when each was first shown. Kept on this page beside
 * what was put away, so that after a reload a hint still belongs to the step for which it was sent. Pure.
 */

import { HINT_LEVELS } from '../../engine/method/way/hint-level.ts'
import type { NudgesView } from '../../engine/wire/views.ts'
import type { TaughtHint } from '../parts/hints/hint-of-try.ts'

/** A hint, and the try in which it came. */
export type SeenHint = TaughtHint & { readonly tryNumber: number }

/**
 * @param seen those of the round so far
 * @param last the last one that the server tells of
 * @param now the try under way, and how many steps it has
 * @returns the same ones when that is among them, else with it at the end
 */
export function withSeenHint(
  seen: readonly SeenHint[],
  last: NudgesView['hint'],
  now: { readonly tryNumber: number; readonly nSteps: number },
): readonly SeenHint[] {
  if (last === null || seen.some(({ number }) => number === last.number)) return seen
  const { number, nudge } = last
  return [...seen, { number, level: nudge.level, tryNumber: now.tryNumber, afterSteps: now.nSteps }]
}

/** Reads what was kept; what makes no sense is left out. */
export function readSeenHints(kept: unknown): readonly SeenHint[] {
  return Array.isArray(kept) ? kept.filter(isSeenHint) : []
}

function isSeenHint(kept: unknown): kept is SeenHint {
  if (typeof kept !== 'object' || kept === null) return false
  const { number, level, tryNumber, afterSteps } = kept as Partial<SeenHint>
  const areWhole = [number, tryNumber, afterSteps].every((each) => Number.isInteger(each))
  return areWhole && HINT_LEVELS.some((each) => each === level)
}
