/**
 * A step of a try: a turn, a re-hold, or a take-back. The record keeps steps, so that taking back is a fact of its own
 * and nothing is ever erased.
 */

import { TURN_NAMES, type Turn, type TurnName } from '../cube/turns.ts'

/** 0 to 53 is the turn of that number; 54 takes the last standing turn back. */
export type Step = Turn | typeof TAKE_BACK
/** The step behind the 54 turns. */
export const TAKE_BACK = 54

/** Names of steps by their number: the 54 turns, then `take-back`. */
export const STEP_NAMES = [...TURN_NAMES, 'take-back'] as const
/** A step as it crosses the wire. */
export type StepName = TurnName | 'take-back'

const STEP_OF_NAME: ReadonlyMap<string, Step> = new Map(STEP_NAMES.map((name, step) => [name, step as Step]))

/** @returns the step with this name */
export function stepOf(name: StepName): Step {
  return STEP_OF_NAME.get(name) as Step
}

/** @returns the name of this step; inverse: `stepOf` */
export function stepName(step: Step): StepName {
  return STEP_NAMES[step]
}
