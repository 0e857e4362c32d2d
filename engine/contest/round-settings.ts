/** What a teacher sets for a round. Sensible defaults let a class begin without touching any of it. */

import type { Colour } from '../cube/colour-scheme.ts'
import type { CaseId } from '../method/cases.ts'
import type { Stage } from '../method/stages.ts'

/** Who sees the board while the clock runs: everybody, the desk alone, or each student only the own lane. */
export const BOARD_SEEN_BY = ['all', 'teacher', 'own'] as const
/** One of the three; what it covers is decided in one place on the server. */
export type BoardSeenBy = (typeof BOARD_SEEN_BY)[number]

/** The settings of one round; fixed once it has begun. */
export type RoundSettings = {
  /** The stage whose start is given: all goals before it are met. */
  readonly from: Stage
  /** The stage whose goal is to be reached; not before `from`. */
  readonly to: Stage
  /** Only these cases of stage `from` are dealt (stages 4 to 7); null deals all. */
  readonly cases: readonly CaseId[] | null
  /** The colour of the first layer, which lies at the bottom. */
  readonly baseColour: Colour
  /** Length of the clock; null plays without one. */
  readonly timeLimitMs: number | null
  readonly tries: 'one' | 'many'
  /** When allowed, a take-back removes the turn and its count. */
  readonly takeBack: boolean
  readonly boardSeenBy: BoardSeenBy
}

/** What a new room begins with: the first stage that is taught by cases, five minutes, as many tries as one likes. */
export const DEFAULT_ROUND_SETTINGS: RoundSettings = {
  from: 4,
  to: 4,
  cases: null,
  baseColour: 'white',
  timeLimitMs: 5 * 60_000,
  tries: 'many',
  takeBack: true,
  boardSeenBy: 'all',
}
