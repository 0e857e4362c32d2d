/**
 * The cases of stages 1 to 3, which are taught one piece at a time: where the piece is that is looked for, and how it is
 * turned. Named by what the eye sees on a cube held with the base down.
 */

import { EDGES_AT } from '../cube/cube-position.ts'
import { faceIndex } from '../cube/faces.ts'
import { EDGE_PLACES } from '../cube/piece-places.ts'
import type { CaseId } from './cases.ts'
import { MIDDLE_EDGES, TOP_CORNERS, TOP_EDGES } from './goal-part.ts'

/** The stages that bring pieces home one by one. */
export const PIECE_STAGES = [1, 2, 3] as const

/** A stage from 1 to 3. */
export type PieceStage = (typeof PIECE_STAGES)[number]

/** Stage 1: the edge is in the top layer and its base colour faces up or to a side; in the middle layer; in its place
 * but turned over; in another place of the base layer. */
const CROSS_PIECE_CASES = [
  'edge-above-facing-up',
  'edge-above-facing-side',
  'edge-between',
  'edge-below-turned',
  'edge-below-elsewhere',
] as const

/** Stage 2: the corner is in the top layer and its base colour faces up, or, were it held at the front right, to the
 * right or to the front; in its place but turned; in another place of the base layer. */
const FIRST_LAYER_PIECE_CASES = [
  'corner-above-facing-right',
  'corner-above-facing-front',
  'corner-above-facing-up',
  'corner-below-turned',
  'corner-below-elsewhere',
] as const

/** Stage 3: the edge is in the top layer and goes, from above the centre of its side colour, to the right or to the
 * left; in its place but turned over; in another place of the middle layer. */
const SECOND_LAYER_PIECE_CASES = [
  'edge-to-right',
  'edge-to-left',
  'edge-beside-turned',
  'edge-beside-elsewhere',
] as const

/** A case of a piece; its name belongs to one stage only. */
export type PieceCaseId =
  | (typeof CROSS_PIECE_CASES)[number]
  | (typeof FIRST_LAYER_PIECE_CASES)[number]
  | (typeof SECOND_LAYER_PIECE_CASES)[number]

/** A case of any stage: of a piece (1 to 3), or of the whole last layer (4 to 7). */
export type StageCaseId = PieceCaseId | CaseId

/** The cases of each stage, in the order in which they are taught. */
export const PIECE_CASES_OF_STAGE: Readonly<Record<PieceStage, readonly PieceCaseId[]>> = {
  1: CROSS_PIECE_CASES,
  2: FIRST_LAYER_PIECE_CASES,
  3: SECOND_LAYER_PIECE_CASES,
}

/** Is the stage taught piece by piece? */
export function isPieceStage(stage: number): stage is PieceStage {
  return stage <= PIECE_STAGES[PIECE_STAGES.length - 1]
}

/** The side faces, each followed by the one to its right. */
const SIDES = [faceIndex('F'), faceIndex('R'), faceIndex('B'), faceIndex('L')]

/**
 * @param home index of the piece's home place, cube held home
 * @param place index of the place where it is
 * @param turned its twist 0..2 or flip 0..1 there, as in `piece-code.ts`; the piece is not home
 */
export function pieceCaseOf(stage: PieceStage, home: number, place: number, turned: number): PieceCaseId {
  switch (stage) {
    case 1:
      return crossPieceCase(home, place, turned)
    case 2:
      return firstLayerPieceCase(home, place, turned)
    case 3:
      return secondLayerPieceCase(home, place, turned)
  }
}

function crossPieceCase(home: number, place: number, flip: number): PieceCaseId {
  if (TOP_EDGES.includes(place)) return flip === 0 ? 'edge-above-facing-up' : 'edge-above-facing-side'
  if (MIDDLE_EDGES.includes(place)) return 'edge-between'
  return place === home ? 'edge-below-turned' : 'edge-below-elsewhere'
}

function firstLayerPieceCase(home: number, place: number, twist: number): PieceCaseId {
  if (!TOP_CORNERS.includes(place)) return place === home ? 'corner-below-turned' : 'corner-below-elsewhere'
  if (twist === 0) return 'corner-above-facing-up'
  // The stickers of a place follow clockwise, so that at the front right one third from up is right, not front.
  return twist === 1 ? 'corner-above-facing-right' : 'corner-above-facing-front'
}

function secondLayerPieceCase(home: number, place: number, flip: number): PieceCaseId {
  if (!TOP_EDGES.includes(place)) return place === home ? 'edge-beside-turned' : 'edge-beside-elsewhere'
  return goesRight(home, flip) ? 'edge-to-right' : 'edge-to-left'
}

/** @returns does the colour on top belong to the right of the colour at the side? */
function goesRight(home: number, flip: number): boolean {
  const { faces } = EDGE_PLACES[home - EDGES_AT]
  const [up, side] = flip === 0 ? faces : [faces[1], faces[0]]
  return SIDES[(SIDES.indexOf(side) + 1) % SIDES.length] === up
}
