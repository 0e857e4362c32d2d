/**
 * Par of every start of every single stage: how many arrangements have which par.
 *
 * Source: an exact count by a program in another language that shares nothing with this one (section 8 of the check
 * values, every value proven); the row of the cross was recounted independently twice. Means are rounded to six places
 * there.
 */

import { expect, test } from 'vitest'
import type { Stage } from '../../engine/method/stages.ts'
import { PARS } from '../engine/search/par/opened.ts'

type Row = readonly [stage: Stage, nArrangements: number, counts: readonly number[], mean: number, max: number]

const ROWS: readonly Row[] = [
  [1, 190_080, [1, 15, 158, 1_394, 9_809, 46_381, 97_254, 34_966, 102], 5.812058, 8],
  [2, 136_080, [1, 0, 0, 24, 28, 282, 1_395, 4_598, 17_932, 52_964, 55_272, 3_580, 4], 9.218327, 12],
  [3, 26_880, [1, 0, 0, 0, 0, 22, 24, 283, 682, 2_590, 7_006, 12_400, 3_854, 18], 10.563356, 13],
  [4, 8, [1, 0, 0, 0, 0, 0, 6, 0, 0, 0, 0, 1], 5.875, 11],
  [5, 27, [1, 0, 0, 0, 0, 0, 0, 8, 8, 8, 0, 2], 7.925926, 11],
  [6, 24, [1, 3, 0, 0, 0, 0, 0, 0, 0, 8, 8, 0, 0, 4], 8.625, 13],
  [7, 12, [1, 0, 0, 0, 0, 0, 0, 0, 0, 8, 1, 0, 2], 8.833333, 12],
]

test.each(ROWS)('[SE12] stage %i: the pars of %i arrangements are distributed as counted elsewhere', (...row) => {
  const [stage, nArrangements, counts, mean, max] = row
  const distribution = PARS.distributionOf(stage)
  expect(distribution).toEqual(counts)
  expect(distribution.length - 1).toBe(max)
  expect(distribution.reduce((sum, n) => sum + n, 0)).toBe(nArrangements)
  expect(PARS.meanPar(stage).toFixed(6)).toBe(mean.toFixed(6))
})
