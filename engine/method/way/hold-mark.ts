/**
 * By what a student knows that the cube is held right for the next sequence: a landmark that is seen from this side and
 * from no other that looks different. Worked out from the position, so that it fits whatever hold a teacher's book asks
 * for.
 *
 * Places and faces are those that the holder sees: `URF` is the corner at the front right of the top, whatever colours
 * are there.
 */

import { EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { FACES, type Face } from '../../cube/faces.ts'
import { cornerPiece, cornerTwist, edgeFlip, edgePiece } from '../../cube/piece-code.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../cube/piece-places.ts'
import { assert } from '../../result.ts'
import { TOP_EDGES } from '../goal-part.ts'
import type { PieceStage } from '../piece-cases.ts'
import { placeName } from '../place-name.ts'
import { TOP_CORNER_RING } from '../top-ring.ts'
import { type CaseTable, heldFromAllSides } from './case-table.ts'
import type { LessonChoice } from './lesson-choice.ts'
import type { SeenCube } from './seen-cube.ts'

/** A top corner and the face to which its sticker in the top colour looks. */
export type CornerLook = { readonly place: string; readonly facing: Face }

/** How to know that the hold is right, once it has been taken. */
export type HoldMark =
  /** The base is down. */
  | { readonly key: 'hold/base-down' }
  /** Stages 1 and 2: the piece is above its home. */
  | { readonly key: 'hold/piece-above-home'; readonly at: string; readonly home: string }
  /** Stage 3: the edge is above the centre that has the colour of its side. */
  | { readonly key: 'hold/piece-above-centre'; readonly at: string; readonly home: string }
  /** The piece is at this place, and its home there. */
  | { readonly key: 'hold/piece-at'; readonly at: string; readonly home: string }
  /** Stage 4: the line lies so. */
  | { readonly key: 'hold/line'; readonly along: 'left-to-right' | 'front-to-back' }
  /** Stage 4: the two arms of the corner shape point to these faces. */
  | { readonly key: 'hold/arms'; readonly at: readonly [Face, Face] }
  /** Stage 5: the top colour of these corners, one or two, looks there. */
  | { readonly key: 'hold/corners'; readonly corners: readonly CornerLook[] }
  /** Stage 6: the two corners that match each other are on this side. */
  | { readonly key: 'hold/pair'; readonly side: Face }
  /** Stage 7: the finished side is here. */
  | { readonly key: 'hold/finished-side'; readonly side: Face }
  /** Stage 7, where no side is finished: the edges at these two places have to change places. */
  | { readonly key: 'hold/exchange'; readonly at: readonly [string, string] }
  /** Any hold with the base down leads on as well, in as many sequences and re-holds, and perhaps one more top turn. */
  | { readonly key: 'hold/any' }

/** The closed list of marks. */
export type HoldKey = HoldMark['key']

const SOLVED = solvedCube()
const SIDES = ['F', 'R', 'B', 'L'] as const

/** The corners in the order in which a student looks at them: front left first. */
const CORNERS_TO_LOOK_AT = ['UFL', 'URF', 'UBR', 'ULB'].map((name) =>
  CORNER_PLACES.findIndex((place) => place.name === name),
)

/**
 * @param stage 1 to 3
 * @param at where the piece is after re-hold and top turn, and how it is turned there
 * @param home its home place then
 */
export function pieceMark(stage: PieceStage, at: number, turned: number, home: number): HoldMark {
  const places = { at: placeName(at), home: placeName(home) }
  const isAbove = [...places.home.replace('D', 'U')].sort().join() === [...places.at].sort().join()
  if (stage < 3) return { key: isAbove ? 'hold/piece-above-home' : 'hold/piece-at', ...places }
  if (!TOP_EDGES.includes(at)) return { key: 'hold/piece-at', ...places }
  // Flip 0 in the top layer: the piece's first colour is up, its second at the side.
  const sideColour = EDGE_PLACES[home - EDGES_AT].faces[turned === 0 ? 1 : 0]
  const isAboveCentre = EDGE_PLACES[at - EDGES_AT].faces[1] === sideColour
  return { key: isAboveCentre ? 'hold/piece-above-centre' : 'hold/piece-at', ...places }
}

/**
 * @param seen of stage 4 to 7, in the hold in which the sequence begins, before any top turn
 * @param choice what is done then, with its re-hold or without
 */
export function caseMark(table: CaseTable, seen: SeenCube, choice: LessonChoice): HoldMark {
  if (choice.sequenceIndex === undefined || table.isAnyHoldGood(seen, choice)) return { key: 'hold/any' }
  switch (table.stage) {
    case 4:
      return armsMark(seen)
    case 5:
      return cornersMark(seen)
    case 6:
      return pairMark(seen)
    case 7: {
      const isFinished = (side: Face) => seen[topEdgeAt(side)] === SOLVED[topEdgeAt(side)]
      return SIDES.some(isFinished) ? { key: 'hold/finished-side', side: onlySide(isFinished) } : exchangeMark(seen)
    }
  }
}

function armsMark(seen: SeenCube): HoldMark {
  const arms = SIDES.filter((side) => edgeFlip(seen[topEdgeAt(side)]) === 0)
  const [first, second] = arms
  assert(arms.length === 2, 'the hold matters only for a line or a corner shape')
  if (first === 'F' && second === 'B') return { key: 'hold/line', along: 'front-to-back' }
  if (first === 'R' && second === 'L') return { key: 'hold/line', along: 'left-to-right' }
  return { key: 'hold/arms', at: [first, second] }
}

/** The fewest corners by which this side differs from the others: one, or two; one that looks up is preferred. Two are
 * enough for each of the 27 patterns. */
function cornersMark(seen: SeenCube): HoldMark {
  const here = looksOf(seen)
  const others = heldFromAllSides(seen)
    .map(looksOf)
    .filter((looks) => looks.some(({ facing }, index) => facing !== here[index].facing))
  const isTelling = (indexes: readonly number[]) =>
    others.every((looks) => indexes.some((index) => looks[index].facing !== here[index].facing))
  const singles = [...here.keys()].sort((a, b) => Number(here[b].facing === 'U') - Number(here[a].facing === 'U'))
  const pairs = [...here.keys()].flatMap((a) => [...here.keys()].filter((b) => a < b).map((b) => [a, b]))
  const telling = [...singles.map((index) => [index]), ...pairs].find(isTelling)
  assert(telling !== undefined, 'two corners tell a side from the others')
  return { key: 'hold/corners', corners: telling.map((index) => here[index]) }
}

function looksOf(seen: SeenCube): CornerLook[] {
  return CORNERS_TO_LOOK_AT.map((place) => ({
    place: placeName(place),
    facing: FACES[CORNER_PLACES[place].faces[cornerTwist(seen[place])]],
  }))
}

/**
 * Without a pair two corners across have changed places, and from another side it is the same but for a turn of the top
 * layer: then no hold takes fewer sequences, even if one saves that turn for a re-hold.
 */
function pairMark(seen: SeenCube): HoldMark {
  const isPair = (side: Face) => isMatchingPair(seen, side)
  return SIDES.some(isPair) ? { key: 'hold/pair', side: onlySide(isPair) } : { key: 'hold/any' }
}

function onlySide(isMarked: (side: Face) => boolean): Face {
  const [side, ...others] = SIDES.filter(isMarked)
  assert(side !== undefined && others.length === 0, 'where the hold matters one side stands out')
  return side
}

/** Where pairs of neighbours change places, the front edge belongs to the right or to the left. */
function exchangeMark(seen: SeenCube): HoldMark {
  const front = topEdgeAt('F')
  return { key: 'hold/exchange', at: [placeName(front), placeName(EDGES_AT + edgePiece(seen[front]))] }
}

/** Do the two corners of a side belong side by side, wherever the layer is turned to? */
function isMatchingPair(seen: SeenCube, side: Face): boolean {
  const nCorners = TOP_CORNER_RING.length
  const isOfSide = (index: number) => placeName(TOP_CORNER_RING[index % nCorners]).includes(side)
  const first = TOP_CORNER_RING.findIndex((_, index) => isOfSide(index) && isOfSide(index + 1))
  const [home, nextHome] = [first, first + 1].map((index) =>
    TOP_CORNER_RING.indexOf(cornerPiece(seen[TOP_CORNER_RING[index % nCorners]])),
  )
  return (home + 1) % nCorners === nextHome
}

function topEdgeAt(side: Face): number {
  return EDGES_AT + EDGE_PLACES.findIndex(({ name }) => name === `U${side}`)
}
