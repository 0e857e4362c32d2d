/** How large the cubes of the wall are. Rules WL: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { wallLayout } from '../../../../web/desk/wall/wall-layout.ts'
import { SEED } from '../../../engine/cube/arbitraries.ts'

/** The sheet of a round under way, in a browser's window of 1366 by 768 and of 1920 by 1080: measured. */
const CHROMEBOOK = [1309, 563] as const
const LARGE = [1863, 875] as const

test.each<[n: number, sheet: readonly [number, number], columns: number, rows: number, cubeAtLeast: number]>([
  [1, CHROMEBOOK, 1, 1, 400],
  [2, CHROMEBOOK, 2, 1, 400],
  [5, CHROMEBOOK, 5, 1, 220],
  [8, CHROMEBOOK, 4, 2, 200],
  [14, CHROMEBOOK, 7, 2, 140],
  [30, CHROMEBOOK, 10, 3, 85],
  [40, CHROMEBOOK, 10, 4, 60],
  [1, LARGE, 1, 1, 480],
  [2, LARGE, 2, 1, 480],
  [5, LARGE, 5, 1, 350],
  [8, LARGE, 4, 2, 350],
  [14, LARGE, 7, 2, 230],
  [30, LARGE, 8, 4, 150],
  [40, LARGE, 10, 4, 135],
])(
  '[WL3] %i students on a sheet of %j stand in %i columns and %i rows, large enough to be seen',
  (n, sheet, columns, rows, least) => {
    const layout = wallLayout(n, ...sheet, false)
    expect([layout.columns, Math.ceil(n / layout.columns)]).toEqual([columns, rows])
    expect(layout.cube).toBeGreaterThanOrEqual(least)
  },
)

const aSheet = fc.record({
  n: fc.integer({ min: 1, max: 40 }),
  width: fc.integer({ min: 320, max: 3_800 }),
  height: fc.integer({ min: 200, max: 2_000 }),
  hasMarks: fc.boolean(),
})

test('[WL3] more room never makes the cubes smaller, one more student never larger, nor a line of marks', () => {
  fc.assert(
    fc.property(aSheet, fc.nat(400), fc.nat(400), ({ n, width, height, hasMarks }, more, higher) => {
      const { cube } = wallLayout(n, width, height, hasMarks)
      expect(wallLayout(n, width + more, height + higher, hasMarks).cube).toBeGreaterThanOrEqual(cube)
      expect(wallLayout(n + 1, width, height, hasMarks).cube).toBeLessThanOrEqual(cube)
      expect(wallLayout(n, width, height, true).cube).toBeLessThanOrEqual(cube)
    }),
    { seed: SEED },
  )
})

test('[WL3] the columns fit the width, no more of them than students, and no row is left empty', () => {
  fc.assert(
    fc.property(aSheet, ({ n, width, height, hasMarks }) => {
      const { columns, cube, cellWidthMax } = wallLayout(n, width, height, hasMarks)
      expect(columns).toBeGreaterThanOrEqual(1)
      expect(columns).toBeLessThanOrEqual(n)
      // The drawing is nine tenths as wide as high.
      expect(columns * 0.9 * cube).toBeLessThanOrEqual(width)
      expect(cellWidthMax).toBeGreaterThanOrEqual(0.9 * cube)
    }),
    { seed: SEED },
  )
})

test('[WL3] unless the cubes are as small as they may be, all rows fit the height with three lines of words', () => {
  fc.assert(
    fc.property(aSheet, ({ n, width, height, hasMarks }) => {
      const { columns, cube, text } = wallLayout(n, width, height, hasMarks)
      fc.pre(cube > 54)
      const words = text * 1.2 * 1.87 + (hasMarks ? 18 : 0)
      expect(Math.ceil(n / columns) * (cube + words + 11)).toBeLessThanOrEqual(height)
    }),
    { seed: SEED },
  )
})
