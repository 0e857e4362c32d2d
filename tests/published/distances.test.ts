/**
 * Positions first met after n turns from the solved cube.
 *
 * Sources: face turns, OEIS A080583 (whose terms are the sums of these); quarter turns, OEIS A080602; any one layer, up
 * to a re-hold, computed with GAP 4.12.1; corners in quarter turns, OEIS A080630; the corners of three faces alone, which
 * are the puzzle of two layers, OEIS A079761 and A079762; half turns, OEIS A080627; two faces in quarter turns, OEIS
 * A080628; quarter slices, OEIS A080619. Corners, cross and two faces in face turns, and cross in quarter turns: computed
 * by an exhaustive count in another language. A row ends where a test should, or where nothing new is met.
 */

import { expect, test } from 'vitest'
import { ALL_TURNS, FACE_TURNS, type Turn, turnKind, turnName, turnQuarters } from '../../engine/cube/turns.ts'
import { BASE_EDGES } from '../../engine/method/goal-part.ts'
import { allPieces, countFirstMet, onlyPieces, piecesAndHold, piecesUpToHold, type Sight } from './breadth-first.ts'

const isQuarter = (turn: Turn) => turnQuarters(turn) !== 2
const isHalf = (turn: Turn) => turnQuarters(turn) === 2
const quarterTurns = FACE_TURNS.filter(isQuarter)
const sliceTurns = ALL_TURNS.filter((turn) => turnKind(turn) === 'slice')
const onFaces = (faces: string, turns: readonly Turn[] = FACE_TURNS) =>
  turns.filter((turn) => faces.includes(turnName(turn)[0]))

const corners = onlyPieces([0, 1, 2, 3, 4, 5, 6, 7])
const cross = onlyPieces(BASE_EDGES)

type Row = readonly [what: string, turns: readonly Turn[], sight: Sight, counts: readonly number[]]

const ROWS: readonly Row[] = [
  ['face turns', FACE_TURNS, allPieces, [1, 18, 243, 3_240, 43_239, 574_908]],
  ['quarter turns', quarterTurns, allPieces, [1, 12, 114, 1_068, 10_011, 93_840]],
  ['turns of any layer, up to a re-hold', [...FACE_TURNS, ...sliceTurns], piecesUpToHold, [1, 27, 501, 9_175]],
  ['face turns, corners alone', FACE_TURNS, corners, [1, 18, 243, 2_874, 28_000]],
  ['quarter turns, corners alone', quarterTurns, corners, [1, 12, 114, 924, 6_539, 39_528]],
  ['turns of U, R and F, corners alone', onFaces('URF'), corners, [1, 9, 54, 321, 1_847, 9_992, 50_136]],
  [
    'quarter turns of U, R and F, corners alone',
    onFaces('URF', quarterTurns),
    corners,
    [1, 6, 27, 120, 534, 2_256, 8_969, 33_058],
  ],
  ['face turns, cross alone', FACE_TURNS, cross, [1, 15, 158, 1_394, 9_809, 46_381, 97_254, 34_966, 102, 0]],
  ['quarter turns, cross alone', quarterTurns, cross, [1, 10, 73, 500, 3_078, 15_528, 57_180, 91_654, 21_849, 207, 0]],
  ['half turns', FACE_TURNS.filter(isHalf), allPieces, [1, 6, 27, 120, 519, 1_932, 6_484, 20_310, 55_034]],
  [
    'quarter turns of U and R',
    onFaces('UR', quarterTurns),
    allPieces,
    [1, 4, 10, 24, 58, 140, 338, 816, 1_970, 4_756, 11_448, 27_448],
  ],
  ['turns of U and R', onFaces('UR'), allPieces, [1, 6, 18, 54, 162, 486, 1_457, 4_360, 13_016, 38_482]],
  ['quarter slices', sliceTurns.filter(isQuarter), piecesAndHold, [1, 6, 27, 120, 287, 258, 69, 0]],
]

const metOfRow = new Map<Row, number[]>()

/** One search serves all depths of a row. */
function countOnce(row: Row): number[] {
  const [, turns, sight, counts] = row
  const known = metOfRow.get(row) ?? countFirstMet(turns, counts.length - 1, sight)
  metOfRow.set(row, known)
  return known
}

test.each(ROWS.flatMap((row) => row[3].map((nPositions, depth) => [depth, row[0], nPositions, row] as const)))(
  '[CU2] depth %i in %s first meets %i positions',
  (depth, _, nPositions, row) => {
    expect(countOnce(row)[depth]).toBe(nPositions)
  },
)
