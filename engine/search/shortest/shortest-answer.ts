/** What is said about the fewest turns to a goal: the same shape for a number looked up, a finished proof and a search cut short. */

import type { Turn } from '../../cube/turns.ts'

/** How short can it be? */
export type ShortestAnswer = {
  /** As the solver sees the cube, in the hold in which the position is held. Best known, and shortest when `proven`. */
  readonly turns: readonly Turn[]
  /** Nothing shorter reaches the goal: `turns.length` is par. */
  readonly proven: boolean
  /** No solution is shorter than this: equal to `turns.length` exactly when `proven`. */
  readonly lowerBound: number
  /** Positions looked at, 0 when the answer was looked up. */
  readonly nNodes: number
}
