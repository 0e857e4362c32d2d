/**
 * Draws the start of a round as its settings want it: stage, cases and par. Uniform over all starts that fit, because what
 * does not fit is drawn again (rejection, as in `method/draw-start.ts`).
 */

import type { RandomSource } from '../chance/random-source.ts'
import type { CubePosition } from '../cube/cube-position.ts'
import { caseOf, isLastLayerStage } from '../method/cases.ts'
import { casesLeaveAStart, drawStart } from '../method/draw-start.ts'
import { goalMet } from '../method/goals.ts'
import { arrangementsOf } from '../method/last-layer-arrangements.ts'
import type { ParTables } from '../search/par/open-par-tables.ts'
import type { RoundSettings } from './round-settings.ts'

/** What of the settings decides about a start. */
export type WantedStart = Pick<RoundSettings, 'from' | 'to' | 'cases' | 'parFrom' | 'parTo'>

/**
 * Draws after which a round's start can be given up. The rarest par that can be asked for alone, par 13 of stage 2, has 4 of
 * 136,080 arrangements; a sound source fails to meet it this often in a row once in 10^8 rounds.
 */
export const START_DRAWS_MAX = 650_000

/**
 * @param pars for a range of pars
 * @param nDraws after which it gives up, so that a caller can look after other things between two askings
 * @returns a start held home; null when none was met, which is no proof that there is none: `someStartIsLeft` says that
 */
export function drawRoundStart(
  wanted: WantedStart,
  random: RandomSource,
  pars: ParTables,
  nDraws: number = START_DRAWS_MAX,
): CubePosition | null {
  const { from, to, cases, parFrom, parTo } = wanted
  const asks = parFrom !== null || parTo !== null
  for (let draw = 0; draw < nDraws; draw++) {
    const start = drawStart({ span: { from, to }, random, ...(cases === null ? {} : { cases }) })
    if (!asks || isInRange(pars.parOf(start, from), wanted)) return start
  }
  return null
}

/** Do stage, cases and pars leave a start? Exact: the starts of the last layer are gone through, those below are counted. */
export function someStartIsLeft(wanted: WantedStart, pars: ParTables): boolean {
  const { from, to, cases } = wanted
  if (cases !== null && !casesLeaveAStart({ from, to }, cases)) return false
  if (wanted.parFrom === null && wanted.parTo === null) return true
  if (from !== to) return false
  if (!isLastLayerStage(from)) return pars.distributionOf(from).some((n, par) => n > 0 && isInRange(par, wanted))
  return arrangementsOf(from).some(
    (start) =>
      !goalMet(start, from) &&
      (cases === null || cases.includes(caseOf(start, from))) &&
      isInRange(pars.parOf(start, from), wanted),
  )
}

/** A start at the goal, par 0, is never dealt. */
function isInRange(par: number, { parFrom, parTo }: WantedStart): boolean {
  return Math.max(1, parFrom ?? 1) <= par && (parTo === null || par <= parTo)
}
