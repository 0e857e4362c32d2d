/**
 * Which turns may follow which, so that no search walks one word in two spellings: never the same face twice running, and
 * of two opposite faces always the one that comes first in `FACES` before the other.
 */

import { FACES, faceIndex, oppositeFace } from '../../cube/faces.ts'
import { type Turn, turnAxis } from '../../cube/turns.ts'

/** In the place of the face turned last, where nothing was turned yet. */
export const NO_FACE = FACES.length

/**
 * @param turns face turns that a search may choose from
 * @returns by the index of the face turned last, or `NO_FACE`: the indexes of the turns that may follow, in their order
 */
export function nextTurns(turns: readonly Turn[]): readonly Uint8Array[] {
  const indexes = turns.map((_, index) => index)
  const after = FACES.map((last) =>
    Uint8Array.from(
      indexes.filter((index) => {
        const face = turnAxis(turns[index])
        return face !== last && !(face === oppositeFace(last) && faceIndex(face) < faceIndex(last))
      }),
    ),
  )
  return [...after, Uint8Array.from(indexes)]
}
