/**
 * The 48 symmetries of the cube: its 24 rotations, and each of them followed by a mirror. Two positions that a symmetry
 * turns into each other are alike in everything that counts turns, so tables need only one of them.
 *
 * Derived from geometry: a symmetry is a way to send the three axes to each other, possibly backwards. The order is
 * made for search: number 0 changes nothing, 0..7 keep the base layer below, 0..15 keep the vertical axis.
 */

import { assert } from '../result.ts'
import { CENTRES_AT, type CubePosition, copyCube, EDGES_AT } from './cube-position.ts'
import { FACES, type Face } from './faces.ts'
import { dot, FACE_NORMALS, sameVector, type Vector } from './geometry.ts'
import { cornerCode, cornerPiece, cornerTwist, edgeCode, edgeFlip, edgePiece, N_PIECE_CODES } from './piece-code.ts'
import { CORNER_PLACES, EDGE_PLACES, type PiecePlace } from './piece-places.ts'
import { STICKER_PLACES, stickerIndexAt } from './sticker-places.ts'
import { FACE_TURNS, inverseTurn, type Turn, type TurnName, turnAxis, turnName, turnOf } from './turns.ts'

/** Number 0..47 of a symmetry; see above for the order. */
export type Symmetry = number

/** Rotations and mirrors of the cube. */
export const N_SYMMETRIES = 48

/** Symmetries 0..7 keep the top layer above and the base layer below. */
export const N_UPRIGHT_SYMMETRIES = 8

/** Symmetries 0..15 keep the vertical axis, and may exchange top and base. */
export const N_AXIS_SYMMETRIES = 16

/** Where the unit vectors of x, y and z go. */
type AxisMap = readonly [Vector, Vector, Vector]

const AXES: readonly Vector[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]
const AXIS_MAPS: readonly AxisMap[] = allAxisMaps()
const STICKER_MAPS: readonly Uint8Array[] = AXIS_MAPS.map((map) =>
  Uint8Array.from(STICKER_PLACES, ({ cell, facing }) => stickerIndexAt(image(map, cell), image(map, facing))),
)
const PIECE_MAPS = STICKER_MAPS.map((stickerMap) => ({
  corners: pieceMap(CORNER_PLACES, stickerMap, cornerPiece, cornerTwist, cornerCode),
  edges: pieceMap(EDGE_PLACES, stickerMap, edgePiece, edgeFlip, edgeCode),
}))
const TURN_MAPS: ReadonlyArray<readonly Turn[]> = AXIS_MAPS.map((map) =>
  FACE_TURNS.map((turn) => imageOfTurn(map, turn)),
)
const INVERSES: readonly Symmetry[] = AXIS_MAPS.map((map) =>
  AXIS_MAPS.findIndex((other) => AXES.every((axis) => sameVector(image(other, image(map, axis)), axis))),
)

/** @returns the symmetry that undoes this one */
export function inverseSymmetry(symmetry: Symmetry): Symmetry {
  return INVERSES[symmetry]
}

/**
 * @param turn one of the 18 face turns; asserted
 * @returns what the turn looks like after the symmetry: turned over to another face, and backwards in a mirror
 */
export function conjugateTurn(turn: Turn, symmetry: Symmetry): Turn {
  const image = TURN_MAPS[symmetry][turn]
  assert(image !== undefined, 'a face turn is conjugated')
  return image
}

/**
 * @param position held home; asserted nowhere: centres are taken to be home
 * @returns a new position, held home: what the position looks like after the symmetry, the colours renamed so that a
 *   solved cube stays solved. Turns commute with this: turning and looking is looking and turning the image.
 */
export function conjugatePosition(position: CubePosition, symmetry: Symmetry): CubePosition {
  const { corners, edges } = PIECE_MAPS[symmetry]
  const result = copyCube(position)
  for (let place = 0; place < EDGES_AT; place++) {
    result[corners.placeMap[place]] = corners.codeMap[place * N_PIECE_CODES + position[place]]
  }
  for (let place = 0; place < CENTRES_AT - EDGES_AT; place++) {
    result[EDGES_AT + edges.placeMap[place]] = edges.codeMap[place * N_PIECE_CODES + position[EDGES_AT + place]]
  }
  return result
}

function allAxisMaps(): AxisMap[] {
  const faces = FACES.map((face) => FACE_NORMALS[face])
  const maps = faces.flatMap((x) => faces.flatMap((y) => faces.map((z): AxisMap => [x, y, z])))
  const isSymmetry = ([x, y, z]: AxisMap) => dot(x, y) === 0 && dot(y, z) === 0 && dot(z, x) === 0
  const tilt = ([x, y, z]: AxisMap) => {
    if (sameVector(x, [1, 0, 0]) && sameVector(y, [0, 1, 0]) && sameVector(z, [0, 0, 1])) return 0
    if (y[1] === 1) return 1
    return y[1] === -1 ? 2 : 3
  }
  return maps.filter(isSymmetry).sort((a, b) => tilt(a) - tilt(b))
}

function image([x, y, z]: AxisMap, [a, b, c]: Vector): Vector {
  const along = (axis: 0 | 1 | 2) => x[axis] * a + y[axis] * b + z[axis] * c
  return [along(0), along(1), along(2)]
}

function imageOfTurn(map: AxisMap, turn: Turn): Turn {
  const face = imageOfFace(map, turnAxis(turn))
  const turned = turnOf(turnName(turn).replace(turnAxis(turn), face) as TurnName)
  return isMirror(map) ? inverseTurn(turned) : turned
}

function imageOfFace(map: AxisMap, face: Face): Face {
  const normal = image(map, FACE_NORMALS[face])
  const found = FACES.find((each) => sameVector(FACE_NORMALS[each], normal))
  assert(found !== undefined, 'a symmetry sends faces to faces')
  return found
}

/** A mirror changes the sign of the volume that the three axes span. */
function isMirror([x, y, z]: AxisMap): boolean {
  const volume =
    x[0] * (y[1] * z[2] - y[2] * z[1]) - x[1] * (y[0] * z[2] - y[2] * z[0]) + x[2] * (y[0] * z[1] - y[1] * z[0])
  return volume < 0
}

/** Where each place goes, and which code there is the image of each code here: `codeMap[place * 24 + code]`. */
function pieceMap(
  places: readonly PiecePlace[],
  stickerMap: Uint8Array,
  pieceOf: (code: number) => number,
  turnedBy: (code: number) => number,
  codeOf: (piece: number, turned: number) => number,
): { placeMap: Uint8Array; codeMap: Uint8Array } {
  const placeWith = (sticker: number) => places.findIndex(({ stickers }) => stickers.includes(sticker))
  const placeMap = Uint8Array.from(places, ({ stickers }) => placeWith(stickerMap[stickers[0]]))
  const codeMap = new Uint8Array(places.length * N_PIECE_CODES)
  for (let place = 0; place < places.length; place++) {
    for (let code = 0; code < N_PIECE_CODES; code++) {
      const { stickers } = places[place]
      const piece = placeMap[pieceOf(code)]
      // The sticker of the piece that becomes number `own` of its image is seen at number `seen` of the place's image.
      const own = places[piece].stickers.indexOf(stickerMap[places[pieceOf(code)].stickers[0]])
      const seen = places[placeMap[place]].stickers.indexOf(stickerMap[stickers[turnedBy(code)]])
      codeMap[place * N_PIECE_CODES + code] = codeOf(piece, (seen - own + stickers.length) % stickers.length)
    }
  }
  return { placeMap, codeMap }
}
