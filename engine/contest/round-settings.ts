/** What a teacher sets for a round. Sensible defaults let a class begin without touching any of it. */

import type { Colour } from '../cube/colour-scheme.ts'
import type { CaseId } from '../method/cases.ts'
import type { Stage } from '../method/stages.ts'
import type { HintLevel } from '../method/way/hint-level.ts'

/** Who sees the board while the clock runs: everybody, the desk alone, or each student only the own lane. */
export const BOARD_SEEN_BY = ['all', 'teacher', 'own'] as const
/** One of the three; what it covers is decided in one place on the server. */
export type BoardSeenBy = (typeof BOARD_SEEN_BY)[number]

/** What the class turns: the cube on the screen, a real one in the hand, or each student as they like. */
export const CUBES_IN_HAND = ['screen', 'real', 'either'] as const
/** One of the three. */
export type CubeInHand = (typeof CUBES_IN_HAND)[number]

/** All at once, on one clock; or each alone in one's own time, as in a take-home room, where moments do not count. */
export const PACES = ['together', 'alone'] as const
/** One of the two. */
export type Pace = (typeof PACES)[number]

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
  /** The highest hint that a student may ask for; 0 gives none. */
  readonly hints: 0 | HintLevel
  /** Counted turns that each hint costs. */
  readonly hintCost: number
  /** Starts of a smaller par are drawn again; null for no limit. Only where one stage is played. */
  readonly parFrom: number | null
  /** Starts of a larger par are drawn again; null for no limit. Only where one stage is played. */
  readonly parTo: number | null
  readonly cube: CubeInHand
  readonly pace: Pace
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
  hints: 0,
  hintCost: 0,
  parFrom: null,
  parTo: null,
  cube: 'screen',
  pace: 'together',
}

/**
 * Settings that were stored by an earlier version lack what has been added since; they meant what these defaults say.
 *
 * @param stored whatever an earlier version wrote
 */
export function withLaterSettings(stored: Partial<RoundSettings>): RoundSettings {
  return { ...DEFAULT_ROUND_SETTINGS, ...stored }
}
