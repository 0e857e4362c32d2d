/** Which colour a sticker has: the cube knows home faces, the round knows the colour of its first layer. */

import { type Colour, colourOfFaces } from '../../engine/cube/colour-scheme.ts'
import { FACES } from '../../engine/cube/faces.ts'

/** How stickers can be told apart besides their colour. */
export const MARK_STYLES = ['plain', 'letters', 'marks'] as const
export type MarkStyle = (typeof MARK_STYLES)[number]

/** The colour of each home face, by its index 0..5 in `FACES`. */
export function coloursByHomeFace(baseColour: Colour): readonly Colour[] {
  const colours = colourOfFaces(baseColour)
  return FACES.map((face) => colours[face])
}
