/**
 * Stage 2, the first layer: the four base corners are home as well.
 *
 *     a side, before      after       the usual slip
 *         . . .           . . .       a corner with the base colour below, but turned
 *         . F .           . F .       for the wrong corner: two colours match nothing
 *         . F .           F F F
 *
 * Starts: the cross is done; 136,080 arrangements of the base corners.
 */

import { BASE_CORNERS, type GoalPart, homePart } from './goal-part.ts'

/** The four base corners at home. */
export const FIRST_LAYER_PARTS: readonly GoalPart[] = BASE_CORNERS.map(homePart)
