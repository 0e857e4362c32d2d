/**
 * Where the four pieces of stage 1, 2 or 3 are, on a cube as seen, and what turns do to them.
 *
 * A spot is a place with the way in which the piece is turned there, 0..23: place times ways, plus how it is turned,
 * places counted from the first of the kind. A slot, 0..3, is one of the four homes.
 */

import { EDGES_AT } from '../../cube/cube-position.ts'
import { N_PIECE_CODES } from '../../cube/piece-code.ts'
import { BASE_CORNERS, BASE_EDGES, MIDDLE_EDGES } from '../goal-part.ts'
import type { PieceStage } from '../piece-cases.ts'
import { N_SEEN_PLACES, type SeenCube, type SeenEffect } from './seen-cube.ts'

/** The home places of each stage's four pieces. */
export const SLOTS_OF_STAGE: Readonly<Record<PieceStage, readonly number[]>> = {
  1: BASE_EDGES,
  2: BASE_CORNERS,
  3: MIDDLE_EDGES,
}

/** Slots of a stage. */
export const N_SLOTS = 4

const NO_SLOT = 255

/** By slot: the spot of its piece. */
export type PieceSpots = Uint8Array

/** How a stage counts spots. */
export type SpotKind = {
  /** Index of the first place of the kind in a position. */
  readonly firstPlace: number
  /** One behind the last. */
  readonly endPlace: number
  /** 3 for corners, 2 for edges. */
  readonly nWays: number
  /** The spot of each slot's piece when it is home; also its code there, since both count in the same way. */
  readonly homes: readonly number[]
  /** By code: which slot's piece it is; `NO_SLOT` for pieces of other stages. */
  readonly slotOfCode: Uint8Array
}

/** What turns do to one piece, and to the slots. */
export type PieceEffect = {
  /** `slot * 24 + spot` afterwards, by `slot * 24 + spot`. Re-holds give a slot another number. */
  readonly spotAfter: Uint8Array
  /** The slots as a mask afterwards, by mask. */
  readonly maskAfter: Uint8Array
  /** The slots whose piece stays home, as a mask. */
  readonly keeps: number
}

/** @returns how the pieces of a stage are counted */
export function spotKindOf(stage: PieceStage): SpotKind {
  const isCorner = stage === 2
  const firstPlace = isCorner ? 0 : EDGES_AT
  const nWays = isCorner ? 3 : 2
  const homes = SLOTS_OF_STAGE[stage].map((place) => (place - firstPlace) * nWays)
  const slotOfCode = new Uint8Array(N_PIECE_CODES).fill(NO_SLOT)
  for (const [slot, home] of homes.entries()) slotOfCode.fill(slot, home, home + nWays)
  return { firstPlace, endPlace: isCorner ? EDGES_AT : N_SEEN_PLACES, nWays, homes, slotOfCode }
}

/** Finds the four pieces of a stage on a seen cube and writes their spots. */
export function findSpots(seen: SeenCube, kind: SpotKind, spots: PieceSpots): void {
  const { firstPlace, endPlace, nWays, slotOfCode } = kind
  for (let place = firstPlace; place < endPlace; place++) {
    const slot = slotOfCode[seen[place]]
    if (slot !== NO_SLOT) spots[slot] = (place - firstPlace) * nWays + (seen[place] % nWays)
  }
}

/** @returns the slots whose piece is home, as a mask */
export function doneMaskOf(spots: PieceSpots, { homes }: SpotKind): number {
  let mask = 0
  for (let slot = 0; slot < N_SLOTS; slot++) if (spots[slot] === homes[slot]) mask |= 1 << slot
  return mask
}

/** @returns what turns with this effect do to the four pieces of a stage and to its slots */
export function pieceEffectOf({ source, codeAfter }: SeenEffect, kind: SpotKind): PieceEffect {
  const { firstPlace, endPlace, nWays, homes, slotOfCode } = kind
  const spotAfter = new Uint8Array(N_SLOTS * N_PIECE_CODES)
  for (let place = firstPlace; place < endPlace; place++) {
    for (let code = 0; code < N_PIECE_CODES; code++) {
      const slot = slotOfCode[code]
      if (slot === NO_SLOT) continue
      const after = codeAfter[place * N_PIECE_CODES + code]
      const spot = (source[place] - firstPlace) * nWays + (code % nWays)
      const newSpot = (place - firstPlace) * nWays + (after % nWays)
      spotAfter[slot * N_PIECE_CODES + spot] = slotOfCode[after] * N_PIECE_CODES + newSpot
    }
  }
  const slotsAfter = homes.map((_, slot) => Math.trunc(spotAfter[slot * N_PIECE_CODES] / N_PIECE_CODES))
  const maskAfter = Uint8Array.from({ length: 2 ** N_SLOTS }, (_, mask) =>
    slotsAfter.reduce((after, slot, before) => after | (((mask >> before) & 1) << slot), 0),
  )
  const keeps = homes.reduce((mask, home, slot) => {
    const isHome = spotAfter[slot * N_PIECE_CODES + home] % N_PIECE_CODES === homes[slotsAfter[slot]]
    return mask | (Number(isHome) << slot)
  }, 0)
  return { spotAfter, maskAfter, keeps }
}
