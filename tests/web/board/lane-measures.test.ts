/** The size of a square: from the height and the rows, never from how long a lane is. */

import { describe, expect, test } from 'vitest'
import { type LaneEnd, measureLanes, nameTypePx, squaresBeforeTheEdge } from '../../../web/parts/lanes/lane-measures.ts'

const PROJECTOR = { widthPx: 1_382, heightPx: 1_080, longestName: 6 }
const BARE_END: LaneEnd = { hasFlag: false, nMomentLetters: 0, nPips: 0 }

describe('measureLanes', () => {
  test.each([
    // Origin: the drawn board for 12 and for 30 students at 1920 by 1080.
    [13, true, 76, 38],
    [31, false, 31, 31],
  ])('[BO2] %i rows: roomy %s, a row of %i px, a square of %i px', (nRows, isRoomy, rowPx, squarePx) => {
    expect(measureLanes({ ...PROJECTOR, nRows })).toMatchObject({ isRoomy, rowPx, squarePx })
  })

  test('[BO2] all rows and the ruler fit the height', () => {
    for (let nRows = 5; nRows <= 41; nRows++) {
      const { rowPx, rulerPx } = measureLanes({ ...PROJECTOR, nRows })
      expect(rulerPx + nRows * rowPx).toBeLessThanOrEqual(PROJECTOR.heightPx)
    }
  })

  test('[BO2] columns and ruling fit the width', () => {
    for (const longestName of [1, 8, 16]) {
      const measures = measureLanes({ ...PROJECTOR, longestName, nRows: 13 })
      expect(measures.placePx + measures.namePx + measures.nSquares * measures.squarePx).toBeLessThanOrEqual(
        PROJECTOR.widthPx,
      )
    }
  })

  test('[BO2] a row is never too low to be read: the page scrolls instead', () => {
    expect(measureLanes({ widthPx: 700, heightPx: 200, longestName: 6, nRows: 31 }).rowPx).toBe(17)
  })
})

test('[BO7] a long name is set smaller, a short one is not', () => {
  const measures = measureLanes({ ...PROJECTOR, nRows: 13 })
  expect(nameTypePx(4, measures)).toBe(measures.typePx)
  expect(nameTypePx(16, measures)).toBeLessThan(measures.typePx)
})

// Origin: the bold letters of "Cleo" were measured 114 px wide at 54 px in Chromium, and the gap behind a name is 0.4 of its size.
test('[BO7] a name of four letters fits its column with the gap behind it, on a low page too', () => {
  const measures = measureLanes({ widthPx: 1_310, heightPx: 463, nRows: 4, longestName: 4 })
  const typePx = nameTypePx(4, measures)
  expect(typePx * (114 / 54 + 0.4)).toBeLessThanOrEqual(measures.namePx)
})

test('[BO8] the more stands at the end of a lane, the earlier it is torn', () => {
  const measures = measureLanes({ ...PROJECTOR, nRows: 13 })
  const bare = squaresBeforeTheEdge(41, BARE_END, measures)
  const withFlag = squaresBeforeTheEdge(41, { hasFlag: true, nMomentLetters: 4, nPips: 0 }, measures)
  expect(withFlag).toBeLessThan(bare)
  expect(bare).toBeLessThan(measures.nSquares)
})
