/** What a cube in the hand needs done for it: a round's try, the cube of the waiting time and solo practice have their own. */

import type { Turn } from '../../../engine/cube/turns.ts'

export type HandActs = {
  /** Several at once for a trigger; re-holds are turns, too. */
  readonly turn: (turns: readonly Turn[]) => void
  readonly takeBack: () => void
  readonly startAgain: () => void
}
