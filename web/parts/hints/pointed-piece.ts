/** Where the piece of a hint is, and from where it is seen: for the picture beside the words. Pure. */

import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { FACES, type Face, faceIndex } from '../../../engine/cube/faces.ts'
import { centreAt } from '../../../engine/cube/hold.ts'
import { CENTRE_STICKERS, CORNER_PLACES, EDGE_PLACES } from '../../../engine/cube/piece-places.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import type { LookFor } from '../../../engine/method/way/lesson-step.ts'
import { assert } from '../../../engine/result.ts'
import type { FlatView } from '../../cube/flat-drawing.ts'

export type PointedPicture = {
  /** Held as it is drawn. */
  readonly position: CubePosition
  readonly view: FlatView
  /** Drawn as somebody across the table sees it; that has to be said. */
  readonly fromBehind: boolean
  /** The stickers to point at, by index 0..53, whether or not the view shows them. */
  readonly stickers: readonly number[]
}

/** @returns the picture with its pointer; null when the hint is about a case of the last layer and not about a piece */
export function pointedPicture(position: CubePosition, lookFor: LookFor): PointedPicture | null {
  if (!('piece' in lookFor)) {
    const at = FACES.find((face) => centreAt(position, face) === 'D')
    assert(at !== undefined, 'the base is somewhere')
    return pictureOf(position, [at])
  }
  return lookFor.piece === null ? null : pictureOf(position, [...lookFor.piece.at] as Face[])
}

const SEEN_FROM_FRONT: readonly Face[] = ['U', 'F', 'R']
const ACROSS: Readonly<Record<Face, Face>> = { U: 'U', D: 'D', F: 'B', B: 'F', R: 'L', L: 'R' }

/** @param at the faces that meet where the piece is, in any order; a single one for a centre */
function pictureOf(position: CubePosition, at: readonly Face[]): PointedPicture {
  const seen = { position, fromBehind: false, stickers: stickersAt(at) }
  if (at.some((face) => SEEN_FROM_FRONT.includes(face))) return { ...seen, view: 'plain' }
  if (at.includes('D')) return { ...seen, view: 'over-mirror' }
  const behind = afterTurns(position, [turnOf('y2')])
  return { position: behind, view: 'plain', fromBehind: true, stickers: stickersAt(at.map((face) => ACROSS[face])) }
}

function stickersAt(faces: readonly Face[]): readonly number[] {
  if (faces.length === 1) return [CENTRE_STICKERS[faceIndex(faces[0])]]
  const place = [...CORNER_PLACES, ...EDGE_PLACES].find(
    ({ name }) => name.length === faces.length && faces.every((face) => name.includes(face)),
  )
  assert(place !== undefined, `${faces} meet in a place`)
  return place.stickers
}
