/**
 * A text picture of the cube, unfolded, for tests, logs and error messages.
 *
 *           U U U
 *           U U U
 *           U U U
 *     L L L F F F R R R B B B
 *     L L L F F F R R R B B B
 *     L L L F F F R R R B B B
 *           D D D
 *           D D D
 *           D D D
 */

import type { CubePosition } from './cube-position.ts'
import { FACES, type Face, faceIndex } from './faces.ts'
import { STICKERS_PER_FACE } from './sticker-places.ts'
import { stickersOf } from './stickers.ts'

const ROWS = [0, 1, 2]
const STICKERS_PER_ROW = ROWS.length
const MARGIN = ' '.repeat(2 * STICKERS_PER_ROW)
const SIDES_FROM_THE_LEFT: readonly Face[] = ['L', 'F', 'R', 'B']

/** @returns nine lines without a line end at the last; letters name the home face whose colour is seen */
export function drawCube(position: CubePosition): string {
  const stickers = stickersOf(position)
  const rowOf = (face: Face, row: number) => {
    const start = faceIndex(face) * STICKERS_PER_FACE + row * STICKERS_PER_ROW
    return Array.from(stickers.subarray(start, start + STICKERS_PER_ROW), (seen) => FACES[seen]).join(' ')
  }
  return [
    ...ROWS.map((row) => MARGIN + rowOf('U', row)),
    ...ROWS.map((row) => SIDES_FROM_THE_LEFT.map((face) => rowOf(face, row)).join(' ')),
    ...ROWS.map((row) => MARGIN + rowOf('D', row)),
  ].join('\n')
}
