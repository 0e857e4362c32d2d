/**
 * Where a few chosen pieces of one kind stand and how they are turned there, as one number; and a table of what each
 * face turn makes of that number. The other pieces are not looked at, which is what makes such numbers few enough for
 * tables.
 *
 * The number is `placing * nWays^k + turned`: `placing` as `rank-places.ts` numbers places, `turned` with one digit a
 * piece (2 ways for an edge, 3 for a corner), the first piece highest.
 */

import { afterTurns } from '../../cube/apply-turn.ts'
import { CENTRES_AT, type CubePosition, EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { FACE_TURNS, type Turn } from '../../cube/turns.ts'
import { nPlacings, rankPlaces, unrankPlaces } from '../rank-places.ts'
import { N_FACE_TURNS } from '../two-phase/coordinate.ts'

/** What is tracked: how many pieces of which kind, and whether it matters how they are turned. */
export type Tracking = { readonly kind: 'corner' | 'edge'; readonly nPieces: number; readonly turned: boolean }

/** @returns how many numbers there are */
export function nTracked({ kind, nPieces, turned }: Tracking): number {
  return nPlacings(nPieces, nPlacesOf(kind)) * (turned ? nWaysOf(kind) ** nPieces : 1)
}

/**
 * @param position held home
 * @param pieces numbers of the pieces: their home places, 0..7 or 0..11
 * @returns 0..nTracked-1
 */
export function trackedNumber(position: CubePosition, pieces: readonly number[], { kind, turned }: Tracking): number {
  const nWays = nWaysOf(kind)
  const first = kind === 'corner' ? 0 : EDGES_AT
  const end = kind === 'corner' ? EDGES_AT : CENTRES_AT
  const places: number[] = []
  let turns = 0
  for (const piece of pieces) {
    for (let place = first; place < end; place++) {
      if (Math.trunc(position[place] / nWays) !== piece) continue
      places.push(place - first)
      turns = turns * nWays + (position[place] % nWays)
    }
  }
  const placing = rankPlaces(places, end - first)
  return turned ? placing * nWays ** pieces.length + turns : placing
}

/**
 * @returns for every number `n` and face turn `t` (index into `FACE_TURNS`) the number after the turn, at `n * 18 + t`.
 *   Which pieces are tracked makes no difference: a turn carries whatever stands there.
 */
export function buildTrackedMoves(tracking: Tracking): Uint32Array {
  const { kind, nPieces, turned } = tracking
  const nWays = nWaysOf(kind)
  const nPlaces = nPlacesOf(kind)
  const nTurned = turned ? nWays ** nPieces : 1
  const carried = FACE_TURNS.map((turn) => carriedBy(turn, kind))
  const moves = new Uint32Array(nTracked(tracking) * N_FACE_TURNS)
  const places = new Uint8Array(nPieces)
  const newPlaces = new Uint8Array(nPieces)
  const sums = sumsOfTurned(nWays, nPieces)
  for (let placing = 0; placing < nPlacings(nPieces, nPlaces); placing++) {
    unrankPlaces(placing, nPlaces, places)
    for (const [turn, { target, turnedBy }] of carried.entries()) {
      let added = 0
      for (let piece = 0; piece < nPieces; piece++) {
        newPlaces[piece] = target[places[piece]]
        added = added * nWays + turnedBy[places[piece]]
      }
      const newFirst = rankPlaces(newPlaces, nPlaces) * nTurned
      for (let turns = 0; turns < nTurned; turns++) {
        moves[(placing * nTurned + turns) * N_FACE_TURNS + turn] =
          newFirst + (turned ? sums[added * nTurned + turns] : 0)
      }
    }
  }
  return moves
}

function nPlacesOf(kind: 'corner' | 'edge'): number {
  return kind === 'corner' ? EDGES_AT : CENTRES_AT - EDGES_AT
}

function nWaysOf(kind: 'corner' | 'edge'): number {
  return kind === 'corner' ? 3 : 2
}

/** Where a turn carries the piece at each place, and by how much it is turned on the way. */
function carriedBy(turn: Turn, kind: 'corner' | 'edge'): { target: Uint8Array; turnedBy: Uint8Array } {
  const after = afterTurns(solvedCube(), [turn])
  const first = kind === 'corner' ? 0 : EDGES_AT
  const nWays = nWaysOf(kind)
  const target = new Uint8Array(nPlacesOf(kind))
  const turnedBy = new Uint8Array(nPlacesOf(kind))
  for (let place = 0; place < target.length; place++) {
    const piece = Math.trunc(after[first + place] / nWays)
    target[piece] = place
    turnedBy[piece] = after[first + place] % nWays
  }
  return { target, turnedBy }
}

/** Sums digit by digit, without carry: `sums[a * n + b]`. */
function sumsOfTurned(nWays: number, nDigits: number): Uint8Array {
  const size = nWays ** nDigits
  const sums = new Uint8Array(size * size)
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) {
      let sum = 0
      for (let unit = 1; unit < size; unit *= nWays) {
        sum += ((Math.trunc(a / unit) + Math.trunc(b / unit)) % nWays) * unit
      }
      sums[a * size + b] = sum
    }
  }
  return sums
}
