/**
 * The cube as its solver sees it: base down, the colours renamed so that every centre is at home. A teacher's hold is
 * "the place in front right", whichever colours are there; in this form a case looks the same from all four sides, and
 * the tables of the lesson way need no hold.
 *
 * Renaming is composition from the left (`compose-positions.ts`): turns from a held cube instead of a solved one.
 */

import { afterTurns } from '../../cube/apply-turn.ts'
import { composePositions, whereFrom } from '../../cube/compose-positions.ts'
import { CENTRES_AT, type CubePosition, cubesEqual, EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { centreAt, HELD_CUBES, type Hold, holdOf } from '../../cube/hold.ts'
import {
  CODE_AFTER_ADDING,
  cornerPiece,
  cornerRow,
  cornerTwist,
  edgeFlip,
  edgePiece,
  edgeRow,
  N_PIECE_CODES,
} from '../../cube/piece-code.ts'
import { type Turn, turnOf } from '../../cube/turns.ts'
import { assert } from '../../result.ts'

/** The codes of the 20 places that pieces have, centres left out. */
export type SeenCube = Uint8Array

/** Places of a seen cube. */
export const N_SEEN_PLACES = CENTRES_AT

/** What turns do to a seen cube. */
export type SeenEffect = {
  /** By place: index 0..19 of the place that its piece comes from. */
  readonly source: Uint8Array
  /** By place and code: what the code of the piece that comes becomes, `codeAfter[place * 24 + code]`. */
  readonly codeAfter: Uint8Array
}

/** Any five re-holds that bring each of the other faces down; `x2` serves for the face that is up. */
const RE_HOLDS_FOR_BASE: ReadonlyArray<readonly Turn[]> = [
  [],
  ...(['x', "x'", 'x2', 'z', "z'"] as const).map((name) => [turnOf(name)]),
]

const TO_BRING_BASE_DOWN: ReadonlyArray<readonly Turn[]> = HELD_CUBES.map((held) => {
  const turns = RE_HOLDS_FOR_BASE.find((reHold) => centreAt(afterTurns(held, reHold), 'D') === 'D')
  assert(turns !== undefined, 'one of these re-holds brings the base down')
  return turns
})

/** By hold: the new names of all codes, corners' first. */
const NEW_NAMES: readonly Uint8Array[] = HELD_CUBES.map(newNamesFrom)

/** @returns no turn when the base is down, else the re-hold that brings it down */
export function turnsToBringBaseDown(position: CubePosition): readonly Turn[] {
  return TO_BRING_BASE_DOWN[holdOf(position)]
}

/** @param position base down; asserted @returns the cube as its solver sees it: a new one */
export function asSeen(position: CubePosition): SeenCube {
  assert(centreAt(position, 'D') === 'D', 'the cube is held with the base down')
  const names = NEW_NAMES[holdOf(position)]
  const seen = new Uint8Array(N_SEEN_PLACES)
  for (let place = 0; place < N_SEEN_PLACES; place++) seen[place] = names[namesAt(place) + position[place]]
  return seen
}

/** @param turns end with the base down; asserted */
export function seenEffectOf(turns: readonly Turn[]): SeenEffect {
  const after = afterTurns(solvedCube(), turns)
  assert(centreAt(after, 'D') === 'D', 'the base is down again after the turns')
  const names = NEW_NAMES[holdOf(after)]
  const source = new Uint8Array(N_SEEN_PLACES)
  const codeAfter = new Uint8Array(N_SEEN_PLACES * N_PIECE_CODES)
  for (let place = 0; place < N_SEEN_PLACES; place++) {
    const from = whereFrom(after, place)
    source[place] = from.source
    for (let code = 0; code < N_PIECE_CODES; code++) {
      codeAfter[place * N_PIECE_CODES + code] = names[namesAt(place) + CODE_AFTER_ADDING[from.row + code]]
    }
  }
  return { source, codeAfter }
}

/** Writes into `to` what `from` becomes. Allocates nothing; the two must not be the same. */
export function applySeen(from: SeenCube, effect: SeenEffect, to: SeenCube): void {
  const { source, codeAfter } = effect
  for (let place = 0; place < N_SEEN_PLACES; place++) {
    to[place] = codeAfter[place * N_PIECE_CODES + from[source[place]]]
  }
}

/** @returns index 0..19 of the home place, on a cube held home, of the piece that a solver in this hold calls `place` */
export function homeOfSeen(hold: Hold, place: number): number {
  return whereFrom(HELD_CUBES[hold], place).source
}

function namesAt(place: number): number {
  return place < EDGES_AT ? 0 : N_PIECE_CODES
}

function newNamesFrom(held: CubePosition): Uint8Array {
  const undone = HELD_CUBES.find((other) => cubesEqual(composePositions(other, held), solvedCube()))
  assert(undone !== undefined, 'every hold is undone by one of the holds')
  const names = new Uint8Array(2 * N_PIECE_CODES)
  for (let code = 0; code < N_PIECE_CODES; code++) {
    names[code] = CODE_AFTER_ADDING[cornerRow(cornerTwist(code)) + undone[cornerPiece(code)]]
    names[N_PIECE_CODES + code] = CODE_AFTER_ADDING[edgeRow(edgeFlip(code)) + undone[EDGES_AT + edgePiece(code)]]
  }
  return names
}
