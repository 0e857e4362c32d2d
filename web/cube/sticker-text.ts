/** Cubes as they cross the wire: 54 letters in reading order. */

import { FACES } from '../../engine/cube/faces.ts'

/** @returns home face indexes, as `stickersOf` gives them; what the server sends was formatted by the engine */
export function stickersFromText(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => (FACES as readonly string[]).indexOf(letter))
}
