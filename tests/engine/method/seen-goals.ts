/**
 * The goals once more, as a person checks them: by looking at stickers. Free of `engine/`; works on the 54 letters of a
 * picture of a cube with the base down and every centre at home.
 *
 * Stickers are counted 0..8 on each face in reading order; 4 is the centre.
 */

const FACE_ORDER = 'URFDLB'
const SIDES = 'RFLB'

/** The places of a face that belong to the top, middle and bottom row of a side. */
const [TOP_ROW, MIDDLE_ROW, BOTTOM_ROW] = [
  [0, 1, 2],
  [3, 4, 5],
  [6, 7, 8],
]
const EDGES_OF_A_FACE = [1, 3, 5, 7]
const CORNERS_OF_A_FACE = [0, 2, 6, 8]

/** For each stage what it adds: stickers that must have the colour of their face. */
const LOOKS: ReadonlyArray<(looksRight: (faces: string, places: readonly number[]) => boolean) => boolean> = [
  (looksRight) => looksRight('D', EDGES_OF_A_FACE) && looksRight(SIDES, [7]),
  (looksRight) => looksRight('D', CORNERS_OF_A_FACE) && looksRight(SIDES, BOTTOM_ROW),
  (looksRight) => looksRight(SIDES, MIDDLE_ROW),
  (looksRight) => looksRight('U', EDGES_OF_A_FACE),
  (looksRight) => looksRight('U', CORNERS_OF_A_FACE),
  (looksRight) => looksRight(SIDES, [0, 2]),
  (looksRight) => looksRight(SIDES, TOP_ROW),
]

/** @returns does the picture show the goals of stages 1 to `stage`? */
export function looksLikeGoal(picture: string, stage: number): boolean {
  const looksRight = (faces: string, places: readonly number[]) =>
    [...faces].every((face) => places.every((place) => picture[FACE_ORDER.indexOf(face) * 9 + place] === face))
  return LOOKS.slice(0, stage).every((looksOfStage) => looksOfStage(looksRight))
}
