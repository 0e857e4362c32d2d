/**
 * The cases of the last-layer stages: what a student recognises before choosing a hold. A case is the same after a turn
 * of the top layer and in every hold.
 */

import type { CubePosition } from '../cube/cube-position.ts'
import { asHeldHome } from '../cube/hold.ts'
import { assert } from '../result.ts'
import { goalsBeforeMet } from './goals.ts'
import { TOP_CROSS_CASES, type TopCrossCase, topCrossCase } from './stage-4-top-cross.ts'
import { TOP_FACE_CASES, type TopFaceCase, topFaceCase } from './stage-5-top-face.ts'
import { TOP_CORNERS_CASES, type TopCornersCase, topCornersCase } from './stage-6-top-corners.ts'
import { SOLVED_CASES, type SolvedCase, solvedCase } from './stage-7-solved.ts'
import type { Stage } from './stages.ts'

/** The stages of the last layer, which are taught by cases. */
export const LAST_LAYER_STAGES = [4, 5, 6, 7] as const

/** A stage from 4 to 7. */
export type LastLayerStage = (typeof LAST_LAYER_STAGES)[number]

/** A case; its name belongs to one stage only. */
export type CaseId = TopCrossCase | TopFaceCase | TopCornersCase | SolvedCase

/** The cases of each stage; the first is the one that the goal belongs to. */
export const CASES_OF_STAGE: Readonly<Record<LastLayerStage, readonly CaseId[]>> = {
  4: TOP_CROSS_CASES,
  5: TOP_FACE_CASES,
  6: TOP_CORNERS_CASES,
  7: SOLVED_CASES,
}

const CASE_FINDERS: Readonly<Record<LastLayerStage, (homeHeld: CubePosition) => CaseId>> = {
  4: topCrossCase,
  5: topFaceCase,
  6: topCornersCase,
  7: solvedCase,
}

/** Is the stage taught by cases? */
export function isLastLayerStage(stage: Stage): stage is LastLayerStage {
  return stage >= LAST_LAYER_STAGES[0]
}

/** Does this id name a case of the stage? Stages 1 to 3 have none. */
export function isCaseOf(id: string, stage: Stage): id is CaseId {
  return isLastLayerStage(stage) && (CASES_OF_STAGE[stage] as readonly string[]).includes(id)
}

/**
 * @param position meets the goals before `stage`, in any hold; asserted
 * @returns its case at that stage
 */
export function caseOf(position: CubePosition, stage: LastLayerStage): CaseId {
  assert(goalsBeforeMet(position, stage), `the goals before stage ${stage} are met`)
  return CASE_FINDERS[stage](asHeldHome(position))
}
