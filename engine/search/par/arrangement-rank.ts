/**
 * Numbers what a stage sees of its start, without gaps: 190,080 arrangements for stage 1, then 136,080, 26,880, 8, 27, 24
 * and 12. Two starts of a stage have the same number exactly when the same turns bring both to its goal.
 * Source: mixed-radix numbers, Knuth, The Art of Computer Programming 4A, 7.2.1.1.
 */

import type { CubePosition } from '../../cube/cube-position.ts'
import { BASE_CORNERS, BASE_EDGES, MIDDLE_EDGES } from '../../method/goal-part.ts'
import { STAGES, type Stage } from '../../method/stages.ts'
import { freedomBefore } from '../../method/start-freedom.ts'
import { CORNER_ORDER_RANKS, EDGE_ORDER_RANKS, FLIP_PATTERN_RANKS, TWIST_PATTERN_RANKS } from './rank-last-layer.ts'
import { ownPieceRanks } from './rank-own-pieces.ts'
import type { StageRanks } from './stage-ranks.ts'

const RANKS: readonly StageRanks[] = [
  ownPieceRanks(freedomBefore(1).edges.places, BASE_EDGES),
  ownPieceRanks(freedomBefore(2).corners.places, BASE_CORNERS),
  ownPieceRanks(freedomBefore(3).edges.places, MIDDLE_EDGES),
  FLIP_PATTERN_RANKS,
  TWIST_PATTERN_RANKS,
  CORNER_ORDER_RANKS,
  EDGE_ORDER_RANKS,
]

/** @returns how many arrangements the stage has */
export function nArrangements(stage: Stage): number {
  return RANKS[stage - STAGES[0]].nRanks
}

/**
 * @param homeHeld held home, and meets the goals before `stage`; neither is asserted, because this is asked often. (The
 *   numbers of stages 1 and 2 see all places of their kind, so they make sense for any cube held home.)
 * @returns 0..nArrangements-1; allocates nothing; inverse: `unrankArrangement`
 */
export function rankArrangement(homeHeld: CubePosition, stage: Stage): number {
  return RANKS[stage - STAGES[0]].rank(homeHeld)
}

/**
 * @param rank 0..nArrangements-1
 * @returns a legal cube held home that meets the goals before `stage` and has this number; inverse: `rankArrangement`
 */
export function unrankArrangement(rank: number, stage: Stage): CubePosition {
  return RANKS[stage - STAGES[0]].unrank(rank)
}

/** @param images 8 entries, filled: the number of what each upright symmetry (0..7) makes of this arrangement */
export function imagesOfArrangement(rank: number, stage: Stage, images: Uint32Array): void {
  RANKS[stage - STAGES[0]].imagesOf(rank, images)
}
