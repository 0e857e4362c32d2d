/** How large the cubes of the wall are drawn, so that the class fills the room there is without scrolling. Pure, in pixels. */

type WallLayout = {
  readonly columns: number
  /** Height of a cube. */
  readonly cube: number
  /** Height of the letters of a name. */
  readonly text: number
  /** Cells are no wider than this: a lone cube does not stand in an empty hall. */
  readonly cellWidthMax: number
}

/** From here on a larger cube tells a teacher at the desk no more. */
const CUBE_MAX = 480
/** The six colours of a smaller one are hard to tell apart; a sheet of such cubes scrolls. */
const CUBE_MIN = 54
/** The flat drawing is a little higher than wide: see FLAT_VIEW_BOXES. */
const CUBE_WIDTH_SHARE = 0.9
/** Beside the cube: a sign over two squares of what is done, the gap, and the edges of the cell. */
const BESIDE = 26 + 6 + 10 + 8
/** Over and under what stands in a cell: its edges, and the gap under the cube. */
const AROUND = 6 + 5 + 4 + 4
/** Lines of text, as high as their letters by this. */
const LINE_HEIGHT = 1.25
const MARKS_LINE = 22
const CELL_WIDTH_STRETCH = 1.3

/** Name: 15.5 px under a small cube, growing with it. */
function textOf(cube: number): number {
  return Math.min(26, Math.max(15.5, cube * 0.105))
}

function cellOf(cube: number, hasMarks: boolean) {
  const text = textOf(cube)
  // The second line is smaller by a seventh.
  const lines = text * LINE_HEIGHT * (1 + 0.87) + (hasMarks ? MARKS_LINE : 0)
  return {
    // However small the cube, a name and the turns with the seconds want some width.
    width: Math.max(cube * CUBE_WIDTH_SHARE + BESIDE, text * 7.5),
    height: Math.ceil(cube + lines + AROUND),
  }
}

/**
 * @param n students on the page, at least 1
 * @param width of the sheet
 * @param height of the sheet
 * @param hasMarks whether somebody has a line of marks: came late, is simulated
 * @returns the largest cubes with which all fit; where none fit, the smallest, and as many columns as go side by side
 */
export function wallLayout(n: number, width: number, height: number, hasMarks: boolean): WallLayout {
  for (let cube = CUBE_MAX; cube > CUBE_MIN; cube--) {
    const cell = cellOf(cube, hasMarks)
    const side = Math.min(n, Math.floor(width / cell.width))
    if (side === 0) continue
    const rows = Math.ceil(n / side)
    // As many in the last row as in the others, or nearly.
    if (rows * cell.height <= height) return layout(Math.ceil(n / rows), cube, cell.width)
  }
  const { width: least } = cellOf(CUBE_MIN, hasMarks)
  return layout(Math.min(n, Math.max(1, Math.floor(width / least))), CUBE_MIN, least)
}

function layout(columns: number, cube: number, width: number): WallLayout {
  return { columns, cube, text: textOf(cube), cellWidthMax: Math.round(width * CELL_WIDTH_STRETCH) }
}
