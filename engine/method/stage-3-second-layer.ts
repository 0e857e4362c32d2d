/**
 * Stage 3, the second layer: the four middle edges are home as well.
 *
 *     a side, before      after       the usual slip
 *         . . .           . . .       an edge in its place but turned over is left
 *         . F .           F F F       there, because it "already is where it belongs"
 *         F F F           F F F
 *
 * Starts: the first layer is done; 26,880 arrangements of the middle edges.
 */

import { type GoalPart, homePart, MIDDLE_EDGES } from './goal-part.ts'

/** The four middle edges at home. */
export const SECOND_LAYER_PARTS: readonly GoalPart[] = MIDDLE_EDGES.map(homePart)
