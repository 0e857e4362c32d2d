/**
 * What a goal is made of: places, and for each of them the ways in which it may be filled. Places and codes are those
 * of a cube held home.
 */

import { EDGES_AT, solvedCube } from '../cube/cube-position.ts'
import { faceIndex } from '../cube/faces.ts'
import { cornerCode, edgeCode } from '../cube/piece-code.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../cube/piece-places.ts'

/** One of the four parts of a stage's goal. */
export type GoalPart = {
  /** Index 0..19 into a position. */
  readonly place: number
  /** The codes 0..23 that fulfil this part. */
  readonly allowed: readonly number[]
}

const UP = faceIndex('U')
const DOWN = faceIndex('D')

/** The four places of each group as indexes into a position. */
export const BASE_EDGES: readonly number[] = edgesWhere((faces) => faces.includes(DOWN))
export const BASE_CORNERS: readonly number[] = cornersWhere((faces) => faces.includes(DOWN))
export const MIDDLE_EDGES: readonly number[] = edgesWhere((faces) => !faces.includes(DOWN) && !faces.includes(UP))
export const TOP_EDGES: readonly number[] = edgesWhere((faces) => faces.includes(UP))
export const TOP_CORNERS: readonly number[] = cornersWhere((faces) => faces.includes(UP))

/** @returns the part "this place has its own piece, turned right" */
export function homePart(place: number): GoalPart {
  return { place, allowed: [solvedCube()[place]] }
}

/** @returns the part "this top place has any of the four top pieces of its kind, showing the top colour on top" */
export function topColourUpPart(place: number): GoalPart {
  // The reference sticker of a top piece is the one with the top colour: untwisted and unflipped means it looks up.
  const isCorner = place < EDGES_AT
  const allowed = isCorner
    ? TOP_CORNERS.map((piece) => cornerCode(piece, 0))
    : TOP_EDGES.map((piece) => edgeCode(piece - EDGES_AT, 0))
  return { place, allowed }
}

function cornersWhere(isWanted: (faces: readonly number[]) => boolean): number[] {
  return CORNER_PLACES.flatMap(({ faces }, index) => (isWanted(faces) ? [index] : []))
}

function edgesWhere(isWanted: (faces: readonly number[]) => boolean): number[] {
  return EDGE_PLACES.flatMap(({ faces }, index) => (isWanted(faces) ? [EDGES_AT + index] : []))
}
