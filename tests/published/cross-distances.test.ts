/**
 * Distances of the cross, read off a table that the searches use.
 * Source: computed, and recounted independently twice (check values, section 2): 190,080 arrangements of the four edges,
 * in face turns.
 */

import { expect, test } from 'vitest'
import { PAIR_TABLES } from '../../engine/search/tables/pair-tables.ts'
import { filledSearchTables } from '../engine/search/tables/filled-search-tables.ts'

test('[SE53] the cross is at each distance as often as counted, whatever the corner does', () => {
  const { rows, columns } = PAIR_TABLES['cross-corner']
  const { 'cross-corner': bytes } = filledSearchTables(['cross-corner'])
  if (bytes === undefined) throw new Error('The table was asked for')
  const counts = new Array<number>(9).fill(0)
  for (let row = 0; row < rows.n; row++) {
    let least = 15
    for (let entry = row * columns.n; entry < (row + 1) * columns.n; entry++) {
      least = Math.min(least, (bytes[entry >> 1] >> ((entry & 1) * 4)) & 15)
    }
    counts[least]++
  }
  expect(counts).toEqual([1, 15, 158, 1_394, 9_809, 46_381, 97_254, 34_966, 102])
})
