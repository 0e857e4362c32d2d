/**
 * The goals as bit masks, for every hold: `mask >>> code & 1` says whether a code may stand at a place. Built once from
 * the parts of the stages, turned into each hold by the same composition that turns positions.
 */

import { whereFrom } from '../cube/compose-positions.ts'
import { CENTRES_AT } from '../cube/cube-position.ts'
import { HELD_CUBES, type Hold, N_HOLDS } from '../cube/hold.ts'
import { CODE_AFTER_ADDING, N_PIECE_CODES } from '../cube/piece-code.ts'
import type { GoalPart } from './goal-part.ts'
import { CROSS_PARTS } from './stage-1-cross.ts'
import { FIRST_LAYER_PARTS } from './stage-2-first-layer.ts'
import { SECOND_LAYER_PARTS } from './stage-3-second-layer.ts'
import { TOP_CROSS_PARTS } from './stage-4-top-cross.ts'
import { TOP_FACE_PARTS } from './stage-5-top-face.ts'
import { TOP_CORNERS_PARTS } from './stage-6-top-corners.ts'
import { SOLVED_PARTS } from './stage-7-solved.ts'
import { STAGES, type Stage } from './stages.ts'

/** Places that goals speak of: all but the centres. */
export const N_GOAL_PLACES = CENTRES_AT

/** A mask that allows every code. */
export const ANY_CODE = 2 ** N_PIECE_CODES - 1

const PARTS_OF_STAGE: Readonly<Record<Stage, readonly GoalPart[]>> = {
  1: CROSS_PARTS,
  2: FIRST_LAYER_PARTS,
  3: SECOND_LAYER_PARTS,
  4: TOP_CROSS_PARTS,
  5: TOP_FACE_PARTS,
  6: TOP_CORNERS_PARTS,
  7: SOLVED_PARTS,
}

/** One row of 20 masks for each stage (0 is "no goal yet") and hold: what the goals up to this stage allow. */
export const GOAL_MASKS: Uint32Array = rowsForHolds((stage) => [...STAGES].filter((upTo) => upTo <= stage))

/** The same rows for what the stage itself adds, all other places left free. */
export const PART_MASKS: Uint32Array = rowsForHolds((stage) => (stage === 0 ? [] : [stage]))

/** @param stage 0..7 @returns index of the first of 20 masks in `GOAL_MASKS` or `PART_MASKS` */
export function maskRow(stage: Stage | 0, hold: Hold): number {
  return (stage * N_HOLDS + hold) * N_GOAL_PLACES
}

function rowsForHolds(stagesThatCount: (stage: Stage | 0) => readonly Stage[]): Uint32Array {
  const masks = new Uint32Array((STAGES.length + 1) * N_HOLDS * N_GOAL_PLACES)
  for (const stage of [0, ...STAGES] as const) {
    const atHome = masksAtHome(stagesThatCount(stage).flatMap((counted) => PARTS_OF_STAGE[counted]))
    for (let hold = 0; hold < N_HOLDS; hold++) masks.set(masksInHold(atHome, hold), maskRow(stage, hold))
  }
  return masks
}

function masksAtHome(parts: readonly GoalPart[]): number[] {
  const masks: number[] = new Array(N_GOAL_PLACES).fill(ANY_CODE)
  for (const { place, allowed } of parts) {
    masks[place] &= allowed.reduce((mask, code) => mask | (1 << code), 0)
  }
  return masks
}

/** What may stand at a place of the held cube is what may stand at the place it came from, turned along. */
function masksInHold(atHome: readonly number[], hold: Hold): number[] {
  return atHome.map((_, place) => {
    const { source, row } = whereFrom(HELD_CUBES[hold], place)
    let mask = 0
    for (let code = 0; code < N_PIECE_CODES; code++) {
      if ((atHome[source] >>> code) & 1) mask |= 1 << CODE_AFTER_ADDING[row + code]
    }
    return mask
  })
}
