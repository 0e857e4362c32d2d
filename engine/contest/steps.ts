/**
 * A step of a try: a turn, a re-hold, a take-back, or a hint that was asked for. The record keeps steps, so that taking
 * back and being helped are facts of their own, stand at their place among the turns, and nothing is ever erased.
 */

import { TURN_NAMES, type Turn, type TurnName } from '../cube/turns.ts'
import { HINT_LEVELS, type HintLevel } from '../method/way/hint-level.ts'

/** 0 to 53 is the turn of that number; 54 takes the last standing turn back; 55 to 57 ask for a hint of level 1 to 3. */
export type Step = Turn | typeof TAKE_BACK | HintStep
/** The step behind the 54 turns. */
export const TAKE_BACK = 54
/** A hint that was asked for. It moves nothing, and no take-back undoes it. */
export type HintStep = 55 | 56 | 57

/** Names of steps by their number: the 54 turns, `take-back`, then the hints. */
export const STEP_NAMES = [...TURN_NAMES, 'take-back', 'hint-1', 'hint-2', 'hint-3'] as const
/** A step as it crosses the wire. */
export type StepName = TurnName | 'take-back' | `hint-${HintLevel}`

const STEP_OF_NAME: ReadonlyMap<string, Step> = new Map(STEP_NAMES.map((name, step) => [name, step as Step]))

/** @returns the step with this name */
export function stepOf(name: StepName): Step {
  return STEP_OF_NAME.get(name) as Step
}

/** @returns the name of this step; inverse: `stepOf` */
export function stepName(step: Step): StepName {
  return STEP_NAMES[step]
}

/** @returns the step that asks for a hint of this level; inverse: `hintLevelOf` */
export function hintStep(level: HintLevel): HintStep {
  return (TAKE_BACK + level) as HintStep
}

/** @returns the level of the hint that this step asks for; null for every other step */
export function hintLevelOf(step: Step): HintLevel | null {
  return HINT_LEVELS.find((level) => step === TAKE_BACK + level) ?? null
}
