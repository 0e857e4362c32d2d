/** Pictures to check a real cube by after its setup. */

import type { CubePosition } from '../../cube/cube-position.ts'
import { FACES, type Face, faceIndex } from '../../cube/faces.ts'
import { asHeldHome } from '../../cube/hold.ts'
import { STICKERS_PER_FACE } from '../../cube/sticker-places.ts'
import { stickersOf } from '../../cube/stickers.ts'

/**
 * @param start in any hold
 * @returns for each face of the cube held home the nine home faces whose colours it shows, in the reading order of
 *   `stickers.ts`; the fifth is the face's own
 */
export function setupFaces(start: CubePosition): Record<Face, Face[]> {
  const stickers = Array.from(stickersOf(asHeldHome(start)), (face) => FACES[face])
  const nineOf = (face: Face) => {
    const first = faceIndex(face) * STICKERS_PER_FACE
    return stickers.slice(first, first + STICKERS_PER_FACE)
  }
  return { U: nineOf('U'), R: nineOf('R'), F: nineOf('F'), D: nineOf('D'), L: nineOf('L'), B: nineOf('B') }
}
