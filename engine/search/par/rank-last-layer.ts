/**
 * Numbers what the four stages of the last layer see: 8 patterns of flipped edges, 27 of twisted corners, 24 orders of the
 * corners, 12 even orders of the edges.
 */

import { type CubePosition, EDGES_AT, solvedCube } from '../../cube/cube-position.ts'
import { isOddPermutation } from '../../cube/legality.ts'
import { cornerCode, cornerPiece, cornerTwist, edgeCode, edgeFlip, edgePiece } from '../../cube/piece-code.ts'
import { TOP_CORNERS, TOP_EDGES } from '../../method/goal-part.ts'
import { nPlacings, rankPlaces, unrankPlaces } from '../rank-places.ts'
import { imagesByPosition, type StageRanks } from './stage-ranks.ts'

const N_TOP = 4
/** The first two pieces of an even order leave the other two no choice. */
const N_FREE_IN_EVEN_ORDER = 2

/** Filled and read within one call, so that ranking allocates nothing. */
const orderSeen = new Uint8Array(N_TOP)
const orderBegun = orderSeen.subarray(0, N_FREE_IN_EVEN_ORDER)

/** Stage 4: which top edges are flipped. The last one follows from the others, as it does in stage 5. */
export const FLIP_PATTERN_RANKS: StageRanks = turnedRanks(TOP_EDGES, 2, edgeFlip, (home, flip) =>
  edgeCode(home - EDGES_AT, flip),
)

/** Stage 5: how the top corners are twisted. */
export const TWIST_PATTERN_RANKS: StageRanks = turnedRanks(TOP_CORNERS, 3, cornerTwist, cornerCode)

/** Stage 6: which top corner stands where. */
export const CORNER_ORDER_RANKS: StageRanks = withImages({
  nRanks: nPlacings(N_TOP, N_TOP),
  rank: (homeHeld) => {
    for (let index = 0; index < N_TOP; index++) orderSeen[index] = cornerPiece(homeHeld[TOP_CORNERS[index]])
    return rankPlaces(orderSeen, N_TOP)
  },
  unrank: (rank) => {
    unrankPlaces(rank, N_TOP, orderSeen)
    const position = placed(TOP_CORNERS, orderSeen)
    if (isOddPermutation([...orderSeen])) exchange(position, TOP_EDGES[0], TOP_EDGES[1])
    return position
  },
})

/** Stage 7: which top edge stands where. */
export const EDGE_ORDER_RANKS: StageRanks = withImages({
  nRanks: nPlacings(N_FREE_IN_EVEN_ORDER, N_TOP),
  rank: (homeHeld) => {
    for (let index = 0; index < N_FREE_IN_EVEN_ORDER; index++) {
      orderBegun[index] = edgePiece(homeHeld[TOP_EDGES[index]])
    }
    return rankPlaces(orderBegun, N_TOP)
  },
  unrank: (rank) => {
    unrankPlaces(rank, N_TOP, orderBegun)
    const others = [0, 1, 2, 3].filter((piece) => !orderBegun.includes(piece))
    const order = [...orderBegun, ...others]
    return placed(TOP_EDGES, isOddPermutation(order) ? [...orderBegun, ...others.reverse()] : order)
  },
})

/** Patterns of pieces turned in their places, whose amounts sum to a multiple of `nWays`. */
function turnedRanks(
  places: readonly number[],
  nWays: number,
  turnOf: (code: number) => number,
  codeOf: (home: number, turned: number) => number,
): StageRanks {
  const [last, ...free] = [places[N_TOP - 1], ...places.slice(0, N_TOP - 1)]
  return withImages({
    nRanks: nWays ** free.length,
    rank: (homeHeld) => {
      let rank = 0
      for (let index = 0; index < free.length; index++) rank = rank * nWays + turnOf(homeHeld[free[index]])
      return rank
    },
    unrank: (rank) => {
      const position = solvedCube()
      let [rest, sum] = [rank, 0]
      for (const place of [...free].reverse()) {
        position[place] = codeOf(place, rest % nWays)
        sum += rest % nWays
        rest = Math.trunc(rest / nWays)
      }
      position[last] = codeOf(last, (nWays * N_TOP - sum) % nWays)
      return position
    },
  })
}

function withImages(ranks: Omit<StageRanks, 'imagesOf'>): StageRanks {
  return { ...ranks, imagesOf: imagesByPosition(ranks) }
}

/** The solved cube, but for the pieces of these places, which stand in another order. */
function placed(places: readonly number[], order: ArrayLike<number>): CubePosition {
  const solved = solvedCube()
  const position = solvedCube()
  places.forEach((place, index) => {
    position[place] = solved[places[order[index]]]
  })
  return position
}

function exchange(position: CubePosition, a: number, b: number): void {
  ;[position[a], position[b]] = [position[b], position[a]]
}
