/**
 * The six faces. A face letter names two things: a direction as the holder sees it (up, right, front, down, left,
 * back), and the colour whose centre stands there when the cube is held home.
 * Source of the letters: World Cube Association, Regulations 2024, article 12a1.
 */

/** The faces in the one order that every table of the engine follows. */
export const FACES = ['U', 'R', 'F', 'D', 'L', 'B'] as const

/** One of the six letters. */
export type Face = (typeof FACES)[number]

/** The place of a face in `FACES`. */
export type FaceIndex = 0 | 1 | 2 | 3 | 4 | 5

const OPPOSITE: Readonly<Record<Face, Face>> = { U: 'D', R: 'L', F: 'B', D: 'U', L: 'R', B: 'F' }

/** @returns the face on the other side of the cube */
export function oppositeFace(face: Face): Face {
  return OPPOSITE[face]
}

/** @returns the place of `face` in `FACES`, 0..5 */
export function faceIndex(face: Face): FaceIndex {
  return FACES.indexOf(face) as FaceIndex
}
