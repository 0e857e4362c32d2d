/** How often each par is dealt, and the thirds into which a teacher may part the starts of a stage. */

import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { caseOf, isLastLayerStage } from '../../../engine/method/cases.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../engine/method/last-layer-arrangements.ts'
import type { ParTables } from '../../../engine/search/par/open-par-tables.ts'

/** From a par to another one; null where there is no end. */
export type ParRange = Pick<RoundSettings, 'parFrom' | 'parTo'>

/** The starts with the fewest turns, those between, those with the most. */
export const PAR_THIRDS = ['shorter', 'middle', 'longer'] as const
export type ParThird = (typeof PAR_THIRDS)[number]

/**
 * @returns how many equally likely arrangements of the stage and its chosen cases have par 0, 1, 2, ...; none has par 0,
 *   because what is at the goal is never dealt
 */
export function dealtPars({ from, cases }: Pick<RoundSettings, 'from' | 'cases'>, tables: ParTables): number[] {
  if (!isLastLayerStage(from)) return tables.distributionOf(from).map((n, par) => (par === 0 ? 0 : n))
  const counts: number[] = []
  for (const start of arrangementsOf(from)) {
    if (goalMet(start, from) || (cases !== null && !cases.includes(caseOf(start, from)))) continue
    const par = tables.parOf(start, from)
    counts[par] = (counts[par] ?? 0) + 1
  }
  return Array.from(counts, (n) => n ?? 0)
}

/** @returns pars that are dealt at all, the least first */
export function parsThatOccur(counts: readonly number[]): number[] {
  return [...counts.keys()].filter((par) => counts[par] > 0)
}

/** @returns share of the starts whose par is in the range, 0..1 */
export function shareInRange(counts: readonly number[], range: ParRange): number {
  const all = counts.reduce((sum, n) => sum + n, 0)
  const inside = counts.reduce((sum, n, par) => (isInRange(par, range) ? sum + n : sum), 0)
  return all === 0 ? 0 : inside / all
}

export function isInRange(par: number, { parFrom, parTo }: ParRange): boolean {
  return (parFrom ?? 1) <= par && (parTo === null || par <= parTo)
}

/**
 * Parts the starts by par as nearly in thirds as whole pars allow: a par belongs to the third in which the middle one of
 * its starts lies.
 *
 * @returns the range of each group that has a start; the first has no least par, the last no greatest. Two groups are the
 *   shorter and the longer one; a single one is no choice
 */
export function parThirds(counts: readonly number[]): Partial<Record<ParThird, ParRange>> {
  const all = counts.reduce((sum, n) => sum + n, 0)
  const parsOf: Record<ParThird, number[]> = { shorter: [], middle: [], longer: [] }
  let nBefore = 0
  for (const par of parsThatOccur(counts)) {
    const third = Math.floor(((nBefore + counts[par] / 2) / all) * PAR_THIRDS.length)
    parsOf[PAR_THIRDS[third]].push(par)
    nBefore += counts[par]
  }
  const groups = PAR_THIRDS.map((third) => parsOf[third]).filter((pars) => pars.length > 0)
  if (groups.length < 2) return {}
  // Two groups are the shorter and the longer half.
  const names = groups.length === 2 ? (['shorter', 'longer'] as const) : PAR_THIRDS
  return Object.fromEntries(
    groups.map((pars, index) => [
      names[index],
      {
        parFrom: index === 0 ? null : pars[0],
        parTo: index === groups.length - 1 ? null : pars[pars.length - 1],
      },
    ]),
  )
}
