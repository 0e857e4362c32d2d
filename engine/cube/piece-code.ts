/**
 * One byte says which piece stands at a place and how it is turned there.
 *
 * Corner: `piece * 3 + twist`, 0..23. The twist is how many stickers clockwise of the place's reference sticker the
 * piece's reference sticker sits. Edge: `piece * 2 + flip`, 0..23, the flip counted in the same way.
 */

/** Number of codes of a corner and of an edge: 8 * 3 = 12 * 2. */
export const N_PIECE_CODES = 24

/** Width of a row of `CODE_AFTER_ADDING`: the next power of two, so that `row + code` is the index. */
const ROW_WIDTH = 32

/** Start of the row that changes nothing. Used for every piece that is carried along without being turned. */
export const ADD_NOTHING = 0

/**
 * What a code becomes when a turn carries the piece to its next place: `CODE_AFTER_ADDING[row + code]`. Rows: nothing,
 * one third of a corner, two thirds of a corner, an edge flip. Optimisation: one look-up serves corners, edges and
 * centres, so that the loop of a turn has no branches.
 */
export const CODE_AFTER_ADDING: Uint8Array = buildRows()

/** @returns the row that twists a corner by `thirds` (0..2) clockwise */
export function cornerRow(thirds: number): number {
  return thirds * ROW_WIDTH
}

/** @returns the row that flips an edge (1) or does not (0) */
export function edgeRow(flip: number): number {
  return flip === 0 ? ADD_NOTHING : 3 * ROW_WIDTH
}

/** @param piece 0..7 @param twist 0..2 @returns code 0..23 */
export function cornerCode(piece: number, twist: number): number {
  return piece * 3 + twist
}

/** @param piece 0..11 @param flip 0..1 @returns code 0..23 */
export function edgeCode(piece: number, flip: number): number {
  return piece * 2 + flip
}

/** @param code 0..23 @returns the piece 0..7 */
export function cornerPiece(code: number): number {
  return Math.trunc(code / 3)
}

/** @param code 0..23 @returns the twist 0..2, in clockwise thirds */
export function cornerTwist(code: number): number {
  return code % 3
}

/** @param code 0..23 @returns the piece 0..11 */
export function edgePiece(code: number): number {
  return code >> 1
}

/** @param code 0..23 @returns 1 when flipped, else 0 */
export function edgeFlip(code: number): number {
  return code & 1
}

function buildRows(): Uint8Array {
  const rows = new Uint8Array(4 * ROW_WIDTH)
  for (let code = 0; code < ROW_WIDTH; code++) rows[ADD_NOTHING + code] = code
  for (let code = 0; code < N_PIECE_CODES; code++) {
    for (const thirds of [1, 2]) {
      rows[cornerRow(thirds) + code] = cornerCode(cornerPiece(code), (cornerTwist(code) + thirds) % 3)
    }
    rows[edgeRow(1) + code] = edgeCode(edgePiece(code), 1 - edgeFlip(code))
  }
  return rows
}
