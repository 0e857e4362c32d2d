/**
 * Which colour each home face has, for every choice of the base layer's colour.
 *
 * The engine knows faces only; the base layer is always the one of home face D. Another base colour is the same real
 * cube, turned over so that this colour is down. The scheme is the usual one: white opposite yellow, green opposite
 * blue, red opposite orange; with white up and green in front red is on the right.
 * Source: usual scheme of the trade; orientation white up, green in front: World Cube Association, Regulations 2024, 4d1.
 */

import { assert } from '../result.ts'
import { CENTRES_AT } from './cube-position.ts'
import { FACES, type Face, faceIndex, oppositeFace } from './faces.ts'
import { HELD_CUBES, holdWith } from './hold.ts'

/** The six colours of the usual cube. */
export const COLOURS = ['white', 'yellow', 'orange', 'green', 'red', 'blue'] as const

/** One of the six colours. */
export type Colour = (typeof COLOURS)[number]

/** The scheme for the white base. All others are this cube in another hold. */
const WHITE_BASE: Readonly<Record<Face, Colour>> = {
  U: 'yellow',
  R: 'orange',
  F: 'green',
  D: 'white',
  L: 'red',
  B: 'blue',
}

/** The colour that goes in front: green where it can, else white (the base being green or blue). */
const FRONT_WISHES: readonly Colour[] = ['green', 'white']

/**
 * @param base colour of the base layer, which is the home face D
 * @returns the colour of each home face; a real cube can be held so. Front: green, or white for a green or blue base.
 */
export function colourOfFaces(base: Colour): Record<Face, Colour> {
  const down = faceOfColour(base)
  const front = FRONT_WISHES.map(faceOfColour).find((face) => face !== down && face !== oppositeFace(down))
  assert(front !== undefined, 'green and white are neither the same nor opposite')
  const hold = holdWith(oppositeFace(down), front)
  assert(hold !== undefined, 'the front is beside the base')
  const colourSeenAt = (face: Face) => WHITE_BASE[FACES[HELD_CUBES[hold][CENTRES_AT + faceIndex(face)]]]
  return Object.fromEntries(FACES.map((face) => [face, colourSeenAt(face)])) as Record<Face, Colour>
}

function faceOfColour(colour: Colour): Face {
  const face = FACES.find((candidate) => WHITE_BASE[candidate] === colour)
  assert(face !== undefined, `${colour} is a colour of the scheme`)
  return face
}
