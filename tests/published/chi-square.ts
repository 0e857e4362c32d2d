/**
 * The chi-square test of whether drawn things are as frequent as they should be.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, sections 1.3.5.15 (test; at least 5 expected in each cell) and
 * 1.3.6.7.4 (critical values).
 */

/**
 * Values that a fair sampler exceeds once in a thousand runs, by degrees of freedom. Seeds are fixed, so a run that
 * passes once passes always.
 */
const CRITICAL_VALUE_AT_0_1_PERCENT: Readonly<Record<number, number>> = {
  1: 10.828,
  2: 13.816,
  3: 16.266,
  4: 18.467,
  5: 20.515,
  6: 22.458,
  7: 24.322,
  10: 29.588,
  11: 31.264,
  15: 37.697,
  22: 48.268,
  23: 49.728,
  25: 52.62,
  26: 54.052,
}

const EXPECTED_PER_CELL_MIN = 5

/**
 * @param counts how often each cell was drawn; cells never drawn are 0
 * @param weights how likely each cell is beside the others; all equal when left out
 * @returns does the draw look as if the weights were right?
 */
export function looksFair(counts: readonly number[], weights: readonly number[] = counts.map(() => 1)): boolean {
  const critical = CRITICAL_VALUE_AT_0_1_PERCENT[counts.length - 1]
  if (critical === undefined) throw new Error(`No critical value for ${counts.length - 1} degrees of freedom`)
  return chiSquare(counts, weights) < critical
}

/** @returns the sum over all cells of (observed - expected)^2 / expected */
function chiSquare(counts: readonly number[], weights: readonly number[]): number {
  const nDrawn = sum(counts)
  return sum(
    counts.map((count, cell) => {
      const expected = (nDrawn * weights[cell]) / sum(weights)
      if (expected < EXPECTED_PER_CELL_MIN) throw new Error('Too few draws for this many cells')
      return (count - expected) ** 2 / expected
    }),
  )
}

/** @returns how often `draw` gave each of the cells 0..nCells-1 */
export function tally(nDraws: number, nCells: number, draw: () => number): number[] {
  const counts: number[] = new Array(nCells).fill(0)
  for (let draws = 0; draws < nDraws; draws++) counts[draw()]++
  return counts
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
