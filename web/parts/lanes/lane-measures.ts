/**
 * How large a lane is drawn. One turn is the side of one square, and that side follows from the page and the number of
 * rows alone, so it stays the same through a round. Nothing is ever stretched.
 */

import type { BoxSize } from '../../ui/box-size.ts'

export type LaneMeasures = {
  /** Up to 15 students every second line is written on. */
  readonly isRoomy: boolean
  /** Height of a row, in whole pixels, so that all lines are equally sharp. */
  readonly rowPx: number
  /** Side of a square: one turn. */
  readonly squarePx: number
  /** Squares that the ruling has room for. */
  readonly nSquares: number
  readonly rulerPx: number
  readonly placePx: number
  readonly namePx: number
  /** Size of type: names and turns. */
  readonly typePx: number
}

export type LanePage = BoxSize & {
  readonly nRows: number
  /** Letters of the longest name, so that the names' column is wide enough and no wider. */
  readonly longestName: number
}

/** Rows of a page up to which each lane has an empty line under it: 15 students and the skipped line. */
const ROOMY_ROWS_MAX = 16
const RULER_SHARE = 0.06
const FOOT_SHARE = 0.024
const PLACE_SHARE = 0.066
const NAME_SHARE_MIN = 0.21
const NAME_SHARE_MAX = 0.33
/** Names never take more of the width than this, whatever the height. */
const NAME_WIDTH_SHARE_MAX = 0.27
/** Room for so many turns at least, or in a small class all lanes would end torn off at the same place and tell nothing. */
const SQUARES_MIN = 28
/** With squares that had to be small, names and figures need not be as small as they. */
const TYPE_PER_SQUARE_MAX = 1.35
/** Mean width of a letter in parts of the size of type, a little more than measured. */
const LETTER_WIDTH = 0.57
/** Free width behind a name, in parts of its size; see .name in lane-row.module.css. */
const NAME_GAP = 0.4
/** Below this many pixels a row cannot be read; the page scrolls instead. */
const ROW_PX_MIN = 17
/** Smaller squares cannot be told apart. */
const SQUARE_PX_MIN = 12

export function measureLanes({ widthPx, heightPx, nRows, longestName }: LanePage): LaneMeasures {
  const isRoomy = nRows <= ROOMY_ROWS_MAX
  const rulerPx = Math.round(Math.max(30, heightPx * RULER_SHARE))
  const placePx = Math.round(Math.max(34, heightPx * PLACE_SHARE))
  const rowRoomPx = Math.max(ROW_PX_MIN, Math.floor((heightPx - rulerPx - heightPx * FOOT_SHARE) / nRows))
  const typeRoomPx = rowRoomPx * (isRoomy ? 0.52 : 0.76)
  const nameWidth = (typePx: number) =>
    Math.round(
      Math.min(
        Math.max((longestName * LETTER_WIDTH + NAME_GAP) * typePx, heightPx * NAME_SHARE_MIN),
        heightPx * NAME_SHARE_MAX,
        widthPx * NAME_WIDTH_SHARE_MAX,
      ),
    )
  const squarePx = Math.max(
    SQUARE_PX_MIN,
    Math.min(
      isRoomy ? Math.floor(rowRoomPx / 2) : rowRoomPx,
      Math.floor((widthPx - placePx - nameWidth(typeRoomPx)) / SQUARES_MIN),
    ),
  )
  // As much above a bar as below it, in whole pixels.
  const rowPx = rowRoomPx - ((rowRoomPx - squarePx) % 2)
  const typePx = Math.min(typeRoomPx, squarePx * TYPE_PER_SQUARE_MAX)
  const namePx = nameWidth(typePx)
  const nSquares = Math.max(8, Math.floor((widthPx - placePx - namePx) / squarePx))
  return { isRoomy, rowPx, squarePx, nSquares, rulerPx, placePx, namePx, typePx }
}

/** The height that all rows take; more than the page has when they would be too low to read. */
export function lanesHeightPx({ rulerPx, rowPx }: LaneMeasures, nRows: number): number {
  return rulerPx + nRows * rowPx
}

/** A long name is set smaller rather than cut; what still does not fit ends in an ellipsis. */
export function nameTypePx(nLetters: number, { namePx, typePx }: LaneMeasures): number {
  const fittingPx = namePx / (Math.max(1, nLetters) * LETTER_WIDTH + NAME_GAP)
  return Math.max(Math.min(typePx, fittingPx), Math.min(typePx, 15))
}

/** What stands at the end of a lane, besides its number of turns. */
export type LaneEnd = { readonly hasFlag: boolean; readonly nMomentLetters: number; readonly nPips: number }

/** A figure is this wide, in parts of the size of type; and so is the second, smaller figure of a lane. */
const FIGURE_WIDTH = 0.6
const SECOND_FIGURE_WIDTH = { roomy: 0.45, close: 0.53 }

/** The ruling ends at a whole square, so a little room is left beside it. */
const SPARE_SQUARES = 0.25

/** Squares after which a lane of so many turns is torn off, so that what stands at its end keeps room. */
export function squaresBeforeTheEdge(nTurns: number, end: LaneEnd, measures: LaneMeasures): number {
  const { nSquares, squarePx, typePx, isRoomy } = measures
  const flagPx = end.hasFlag ? squarePx * (isRoomy ? 1.4 : 1) : typePx * 0.3
  const turnsPx = typePx * (String(nTurns).length * FIGURE_WIDTH + 0.4)
  const momentWidth = end.nMomentLetters * (isRoomy ? SECOND_FIGURE_WIDTH.roomy : SECOND_FIGURE_WIDTH.close)
  const momentPx = end.nMomentLetters === 0 ? 0 : typePx * (momentWidth + 0.35)
  const pipsPx = end.nPips * (squarePx * 0.4 + 3) + (end.nPips === 0 ? 0 : typePx * 0.22)
  return Math.max(2, nSquares - Math.ceil((flagPx + turnsPx + momentPx + pipsPx) / squarePx - SPARE_SQUARES))
}
