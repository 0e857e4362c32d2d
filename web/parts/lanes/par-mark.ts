/**
 * Where par stands on a page of lanes: a line at the end of the square of that number, and a tab in the ruler. Lengths are
 * pixels from the margin line, which is turn 0.
 */

import type { LaneMeasures } from './lane-measures.ts'

export type ParMark = {
  /** Squares left of the line; null when the ruling ends before it: then only the tab stands at the edge. */
  readonly atSquares: number | null
  /** The tab over the line, moved where it would leave the ruling. */
  readonly tab: { readonly fromPx: number; readonly toPx: number }
}

/** Size of type in parts of the ruler's height, as the style sheets of ruler and tab have it. */
const RULER_TYPE = 0.38
const RULER_TYPE_PX_MIN = 12.5
/** A letter is about this wide, in parts of the size of type; a little more than measured. */
const LETTER_WIDTH = 0.57
/** Left and right of the tab's words, in parts of the size of type. */
const TAB_MARGIN = 0.5
/** Between the tab and a number beside it, in the same parts. */
const GAP = 0.25

/** @param nLetters of the tab's words */
export function placePar(turns: number, nLetters: number, measures: LaneMeasures): ParMark {
  const { squarePx, nSquares } = measures
  const typePx = rulerTypePx(measures)
  const widthPx = typePx * (nLetters * LETTER_WIDTH + 2 * TAB_MARGIN)
  const isBeyond = turns > nSquares
  const centrePx = Math.min(turns, nSquares) * squarePx
  const fromPx = Math.min(centrePx - widthPx / 2, nSquares * squarePx - widthPx)
  return { atSquares: isBeyond ? null : turns, tab: { fromPx, toPx: fromPx + widthPx } }
}

/** @returns the numbers of the ruler, every fourth, but for those that the tab would lie on */
export function rulerNumbers(measures: LaneMeasures, tab: ParMark['tab'] | null): number[] {
  const { squarePx, nSquares } = measures
  const typePx = rulerTypePx(measures)
  return Array.from({ length: Math.floor((nSquares - 1) / 4) }, (_, index) => 4 * (index + 1)).filter((n) => {
    const halfPx = typePx * (String(n).length * LETTER_WIDTH * 0.5 + GAP)
    return tab === null || n * squarePx + halfPx <= tab.fromPx || tab.toPx <= n * squarePx - halfPx
  })
}

/** @param nLetters of the word beside turn 0 @returns whether that word has room besides the tab */
export function hasRoomForUnit(nLetters: number, measures: LaneMeasures, tab: ParMark['tab'] | null): boolean {
  return tab === null || rulerTypePx(measures) * (nLetters * LETTER_WIDTH + GAP) <= tab.fromPx
}

function rulerTypePx({ rulerPx }: LaneMeasures): number {
  return Math.max(RULER_TYPE_PX_MIN, rulerPx * RULER_TYPE)
}
