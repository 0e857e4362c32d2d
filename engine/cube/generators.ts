/**
 * The turns as permutations of the 54 stickers, straight from geometry: the plainest description of a turn, and the
 * form in which a computer algebra system takes it.
 */

import { dot, FACE_NORMALS, quarterTurned } from './geometry.ts'
import { STICKER_PLACES, stickerIndexAt } from './sticker-places.ts'
import { type Turn, turnAxis, turnLayers, turnQuarters } from './turns.ts'

/**
 * @returns 54 targets by source: the sticker at index `s` (0..53, order of `sticker-places.ts`) goes to `result[s]`
 */
export function stickerPermutation(turn: Turn): Uint8Array {
  const axis = FACE_NORMALS[turnAxis(turn)]
  const layers = turnLayers(turn)
  return Uint8Array.from(STICKER_PLACES, ({ cell, facing }, source) => {
    if (!layers.includes(dot(cell, axis))) return source
    let [newCell, newFacing] = [cell, facing]
    for (let quarter = 0; quarter < turnQuarters(turn); quarter++) {
      newCell = quarterTurned(newCell, axis)
      newFacing = quarterTurned(newFacing, axis)
    }
    return stickerIndexAt(newCell, newFacing)
  })
}

/**
 * Writes a permutation in disjoint cycles, points counted from 1 and fixed points left out, as GAP reads it.
 *
 * @param permutation targets by source, as `stickerPermutation` gives them
 * @returns for example `(1,3,9,7)(2,6,8,4)`; `()` when nothing is moved
 */
export function cycleNotation(permutation: Uint8Array): string {
  const isWritten = new Set<number>()
  let text = ''
  for (let start = 0; start < permutation.length; start++) {
    if (isWritten.has(start) || permutation[start] === start) continue
    const cycle: number[] = []
    for (let point = start; !isWritten.has(point); point = permutation[point]) {
      isWritten.add(point)
      cycle.push(point + 1)
    }
    text += `(${cycle.join(',')})`
  }
  return text === '' ? '()' : text
}
