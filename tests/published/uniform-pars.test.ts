/**
 * Drawn starts are as hard as they should be: every arrangement of stages 1 to 3 is equally likely, so their pars are
 * distributed as counted.
 *
 * Source of the counts: computed independently of the project, every value proven (check values, section 8). Source of the
 * test: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.15; critical values at 0.1 %.
 */

import { expect, test } from 'vitest'
import { drawArrangement } from '../../engine/method/draw-start.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { nArrangements, rankArrangement } from '../../engine/search/par/arrangement-rank.ts'
import { openParTables } from '../../engine/search/par/open-par-tables.ts'
import { sourceNumbered } from '../engine/method/starts.ts'
import { looksFair, tally } from './chi-square.ts'

const N_DRAWS = 24_000

// Rare pars at both ends are put together, so that each cell is drawn often enough.
test.each([
  [1, [3, 4, 5, 6, 7], [1 + 15 + 158 + 1_394, 9_809, 46_381, 97_254, 34_966 + 102]],
  [2, [6, 7, 8, 9, 10, 11], [1 + 24 + 28 + 282 + 1_395, 4_598, 17_932, 52_964, 55_272, 3_580 + 4]],
  [3, [7, 8, 9, 10, 11, 12], [1 + 22 + 24 + 283, 682, 2_590, 7_006, 12_400, 3_854 + 18]],
] as const)('[ST2] the pars of drawn starts of stage %i are as frequent as counted', async (stage, upTo, weights) => {
  const pars = await openParTables()
  if (!pars.ok) throw new Error('the shipped pars open')
  const random = sourceNumbered(stage)
  const cellOf = (par: number) => upTo.findIndex((most, cell) => par <= most || cell === upTo.length - 1)
  const counts = tally(N_DRAWS, upTo.length, () => cellOf(pars.value.parOf(drawArrangement(stage, random), stage)))
  expect(looksFair(counts, weights)).toBe(true)
})

test.each([1, 2, 3] satisfies Stage[])('[ST2] no part of the arrangements of stage %i is preferred', (stage) => {
  const random = sourceNumbered(10 + stage)
  const nParts = 24
  const perPart = nArrangements(stage) / nParts
  const draw = () => rankArrangement(drawArrangement(stage, random), stage)
  expect(looksFair(tally(N_DRAWS, nParts, () => Math.trunc(draw() / perPart)))).toBe(true)
  expect(looksFair(tally(N_DRAWS, nParts, () => draw() % nParts))).toBe(true)
})
