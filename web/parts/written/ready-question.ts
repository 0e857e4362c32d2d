/**
 * The question that shows whether a real cube stands at the start: which of three pictures does one of its hidden sides
 * show? Whoever has made every turn knows by a look; whoever has slipped sees a fourth picture. Pure; chance is handed in.
 */

import { below, type RandomSource, shuffle } from '../../../engine/chance/random-source.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { type Face, faceIndex } from '../../../engine/cube/faces.ts'
import { STICKERS_PER_FACE } from '../../../engine/cube/sticker-places.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { FACE_TURNS } from '../../../engine/cube/turns.ts'
import { assert } from '../../../engine/result.ts'

/** Nine home faces in reading order, as one looks straight at a side. */
export type FaceLook = readonly number[]

export type ReadyQuestion = {
  /** The side to look at, as the cube is held. */
  readonly face: Face
  readonly options: readonly FaceLook[]
  /** Index of the true one. */
  readonly answer: number
}

/** How many pictures there are to choose from. */
const N_OPTIONS = 3
/** Sides that a first look does not show; the pictures to check by show them, so that nothing is asked that was not shown. */
const HIDDEN_FACES: readonly Face[] = ['B', 'L', 'D']

/** @param start in the hold in which the setup ends @param but a side that was asked before and is not asked again */
export function readyQuestion(start: CubePosition, random: RandomSource, but: Face | null = null): ReadyQuestion {
  const faces = HIDDEN_FACES.filter((face) => face !== but)
  // A side of one colour is soon right by luck.
  const telling = faces.filter((face) => new Set(lookOf(start, face)).size > 1)
  const face = pick(telling.length > 0 ? telling : faces, random)
  const truth = lookOf(start, face)
  const options: FaceLook[] = [truth]
  const others = FACE_TURNS.map((turn) => lookOf(afterTurns(start, [turn]), face))
  shuffle(random, others)
  for (const other of others) {
    // Held another way round a picture would look true, so a picture that is another one turned is no other picture.
    if (options.length < N_OPTIONS && !options.some((option) => isTurnedAlike(option, other))) options.push(other)
  }
  assert(options.length === N_OPTIONS, 'a turn of each neighbour changes a side in its own way')
  shuffle(random, options)
  return { face, options, answer: options.indexOf(truth) }
}

/** @returns what this side shows, as the cube is held */
export function lookOf(position: CubePosition, face: Face): FaceLook {
  const first = faceIndex(face) * STICKERS_PER_FACE
  return [...stickersOf(position).subarray(first, first + STICKERS_PER_FACE)]
}

/** Where each sticker of a side comes from when the picture is turned by a quarter. */
const QUARTER = [6, 3, 0, 7, 4, 1, 8, 5, 2]

function isTurnedAlike(one: FaceLook, other: FaceLook): boolean {
  let turned = one
  for (let quarter = 0; quarter < 4; quarter++) {
    if (turned.every((colour, index) => colour === other[index])) return true
    turned = QUARTER.map((from) => turned[from])
  }
  return false
}

function pick(faces: readonly Face[], random: RandomSource): Face {
  return faces[below(random, faces.length)]
}
