/** Where par stands on the page of lanes, and that a hidden one leaves no trace there. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { measureLanes } from '../../../web/parts/lanes/lane-measures.ts'
import { hasRoomForUnit, placePar, rulerNumbers } from '../../../web/parts/lanes/par-mark.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

const pages = fc
  .record({
    widthPx: fc.integer({ min: 560, max: 2_400 }),
    heightPx: fc.integer({ min: 300, max: 1_600 }),
    nRows: fc.integer({ min: 5, max: 41 }),
    longestName: fc.integer({ min: 1, max: 16 }),
  })
  .map(measureLanes)
const pars = fc.integer({ min: 1, max: 60 })
/** From "par 5" to three long words in another language. */
const tabLetters = fc.integer({ min: 5, max: 24 })

describe('placePar', () => {
  test.each([
    // Origin: the drawn board for 30 students at 1920 by 1080, a square of 31 px, par 11.
    [11, 34, 11, 11 * 31],
    // Origin: the ruling of 28 squares ends before 29.
    [29, 28, null, null],
    [28, 28, 28, 28 * 31],
  ])('[BO11] par %i on a ruling of %i squares stands at the end of square %s', (turns, nSquares, atSquares, atPx) => {
    const mark = placePar(turns, 6, { ...measureLanes(THIRTY), squarePx: 31, nSquares })
    expect(mark.atSquares).toBe(atSquares)
    if (atPx !== null) expect(mark.tab.fromPx).toBeLessThan(atPx)
  })

  test('[BO11] the tab stands over its line and never leaves the ruling at the far end', () => {
    fc.assert(
      fc.property(pages, pars, tabLetters, (measures, turns, nLetters) => {
        const { atSquares, tab } = placePar(turns, nLetters, measures)
        const rulingPx = measures.nSquares * measures.squarePx
        expect(tab.toPx).toBeLessThanOrEqual(rulingPx + 1e-6)
        expect(atSquares).toBe(turns <= measures.nSquares ? turns : null)
        const linePx = Math.min(turns, measures.nSquares) * measures.squarePx
        expect(tab.fromPx).toBeLessThan(linePx)
        expect(tab.toPx).toBeGreaterThanOrEqual(linePx - 1e-6)
      }),
      { seed: SEED },
    )
  })
})

describe('the ruler', () => {
  test('[BO11] no number lies under the tab, and no other is missing', () => {
    fc.assert(
      fc.property(pages, pars, tabLetters, (measures, turns, nLetters) => {
        const { tab } = placePar(turns, nLetters, measures)
        const shown = rulerNumbers(measures, tab)
        for (const n of rulerNumbers(measures, null)) {
          const isUnder = tab.fromPx < n * measures.squarePx && n * measures.squarePx < tab.toPx
          if (isUnder) expect(shown).not.toContain(n)
          const farPx = Math.max(tab.fromPx - n * measures.squarePx, n * measures.squarePx - tab.toPx)
          if (farPx > measures.rulerPx) expect(shown).toContain(n)
        }
      }),
      { seed: SEED },
    )
  })

  test('[BO12] a hidden par leaves the ruler whole: its unit, and every fourth number as far as the ruling runs', () => {
    fc.assert(
      fc.property(pages, (measures) => {
        const numbers = rulerNumbers(measures, null)
        expect(numbers).toEqual(Array.from(numbers, (_, index) => 4 * (index + 1)))
        expect(measures.nSquares - (numbers.at(-1) ?? 0)).toBeLessThanOrEqual(4)
        expect(hasRoomForUnit(5, measures, null)).toBe(true)
      }),
      { seed: SEED },
    )
  })

  test('[BO11] the word beside turn 0 gives way to the tab of a very low par', () => {
    const measures = measureLanes(THIRTY)
    expect(hasRoomForUnit(5, measures, placePar(2, 5, measures).tab)).toBe(false)
    expect(hasRoomForUnit(5, measures, placePar(11, 6, measures).tab)).toBe(true)
  })
})

const THIRTY = { widthPx: 1_382, heightPx: 1_080, nRows: 31, longestName: 6 }
