/**
 * A legal position of the cube together with how it is held.
 *
 * 26 bytes in the holder's space: bytes 0..7 are the corner places, 8..19 the edge places (codes of `piece-code.ts`,
 * places in the order of `piece-places.ts`), 20..25 the centre places in the order of `FACES` (index of the home face
 * whose centre stands there). There are 24 * 43,252,003,274,489,856,000 of them. The type promises that the cube can
 * be solved by turns: only turns and `parseStickers` make one out of another or out of text.
 */

import { cornerCode, edgeCode } from './piece-code.ts'

declare const legal: unique symbol

/** The 26 bytes; see above. */
export type CubePosition = Uint8Array & { readonly [legal]: true }

/** Index of the first edge place in a position. Corners begin at 0. */
export const EDGES_AT = 8

/** Index of the first centre place in a position. */
export const CENTRES_AT = 20

/** Length of a position. */
export const POSITION_BYTES = 26

/** @returns a new solved cube, held home */
export function solvedCube(): CubePosition {
  return Uint8Array.from({ length: POSITION_BYTES }, (_, index) => {
    if (index < EDGES_AT) return cornerCode(index, 0)
    return index < CENTRES_AT ? edgeCode(index - EDGES_AT, 0) : index - CENTRES_AT
  }) as CubePosition
}

/** @returns a position of its own, equal to the given one */
export function copyCube(position: CubePosition): CubePosition {
  return position.slice() as CubePosition
}

/** Same pieces, turned in the same way, held in the same way? */
export function cubesEqual(a: CubePosition, b: CubePosition): boolean {
  for (let index = 0; index < POSITION_BYTES; index++) {
    if (a[index] !== b[index]) return false
  }
  return true
}
