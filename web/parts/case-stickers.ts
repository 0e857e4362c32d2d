/**
 * The stickers by which a last-layer case is recognised: nine on top and three on the rim of each side, as seen from
 * above with the front at the bottom of the picture.
 */

import type { LastLayerStage } from '../../engine/method/cases.ts'

export type CaseSticker = {
  /** In the order of `stickersOf`. */
  readonly index: number
  /** 0 to 2 on the face, -1 or 3 on the rim. */
  readonly column: number
  readonly row: number
  readonly matters: boolean
}

/** Home face U, whose colour is the top colour. */
const TOP = 0
const FACE_SIZE = 9
const [RIGHT, FRONT, LEFT, BACK] = [1, 2, 4, 5].map((face) => face * FACE_SIZE)

/** Each side's top row is numbered from its own left, seen from outside. */
const PLACES: readonly Omit<CaseSticker, 'matters'>[] = [
  ...Array.from({ length: FACE_SIZE }, (_, index) => ({ index, column: index % 3, row: Math.floor(index / 3) })),
  ...[0, 1, 2].map((column) => ({ index: FRONT + column, column, row: 3 })),
  ...[0, 1, 2].map((column) => ({ index: BACK + 2 - column, column, row: -1 })),
  ...[0, 1, 2].map((row) => ({ index: RIGHT + 2 - row, column: 3, row })),
  ...[0, 1, 2].map((row) => ({ index: LEFT + row, column: -1, row })),
]

/** While the top is not one colour only that colour matters; then the sides do: of the corners first, of all at last. */
export function caseStickers(stage: LastLayerStage, stickers: Uint8Array): CaseSticker[] {
  return PLACES.map((place) => ({ ...place, matters: matters(stage, place, stickers[place.index]) }))
}

function matters(stage: LastLayerStage, { column, row }: { column: number; row: number }, homeFace: number): boolean {
  const isRim = column < 0 || column > 2 || row < 0 || row > 2
  const isCorner = column !== 1 && row !== 1
  if (stage === 4) return homeFace === TOP && !isCorner
  if (stage === 5) return homeFace === TOP
  return !isRim || stage === 7 || isCorner
}
