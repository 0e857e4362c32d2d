/**
 * Nudges: what a teacher sends to one student, or to all, while a round is played. A rung of the hint ladder, a sentence
 * from a short closed list, or a pointer on a piece. Nudges cost nothing; each is on record and in the ranking's footnote.
 */

import { CORNER_PLACES, EDGE_PLACES } from '../cube/piece-places.ts'
import type { HintLevel } from '../method/way/hint-level.ts'
import { err, ok, type Result } from '../result.ts'
import type { ContestRefusal } from './contest-refusal.ts'
import type { SeatId } from './ids.ts'
import { NUDGES_MAX } from './limits.ts'
import { playerOf } from './players.ts'
import type { Round } from './round-state.ts'

/** The sentences, by their keys; the words are in the language catalogues. */
export const NUDGE_WORDS = [
  'look-at-the-goal',
  'check-the-hold',
  'say-the-trigger',
  'finish-the-trigger',
  'take-back-and-look',
  'mind-the-lower-layers',
  'start-again-calmly',
  'well-on-your-way',
] as const
/** One of them. */
export type NudgeWords = (typeof NUDGE_WORDS)[number]

/** Pieces by their home place: `DFR`, `UF`. A pointer on one follows it wherever it goes. */
export const PIECE_NAMES: readonly string[] = [...CORNER_PLACES, ...EDGE_PLACES].map(({ name }) => name)

/** What is sent. */
export type Nudge =
  | { readonly kind: 'hint'; readonly level: HintLevel }
  | { readonly kind: 'words'; readonly words: NudgeWords }
  | { readonly kind: 'point'; readonly piece: string }

/** A nudge as it stands in a round. */
export type GivenNudge = {
  readonly nudge: Nudge
  /** The try under way, and how many of its steps had come in by then. */
  readonly tryNumber: number
  readonly afterSteps: number
  /** Milliseconds of the server's clock. */
  readonly atMs: number
}

/**
 * @returns the round with the nudge given, and the nudge as it stands there; refused where nobody plays, and after
 *   NUDGES_MAX in one round
 */
export function giveNudge(
  round: Round,
  { seatId, nudge, atMs }: { readonly seatId: SeatId; readonly nudge: Nudge; readonly atMs: number },
): Result<{ readonly round: Round; readonly given: GivenNudge }, ContestRefusal> {
  const { phase } = round.clock
  if (phase !== 'running' && phase !== 'paused') return err({ code: 'contest/wrong-phase', phase })
  const before = round.nudges.get(seatId) ?? []
  if (before.length >= NUDGES_MAX) return err({ code: 'contest/too-many-nudges', max: NUDGES_MAX })
  const current = playerOf(round, seatId)?.current
  const given = { nudge, tryNumber: current?.number ?? 1, afterSteps: current?.steps.length ?? 0, atMs }
  return ok({ round: withNudge(round, seatId, given), given })
}

/** Puts a nudge back that is on record: the second half of `giveNudge`, and all of a replay. */
export function withNudge(round: Round, seatId: SeatId, given: GivenNudge): Round {
  const nudges = new Map(round.nudges).set(seatId, [...(round.nudges.get(seatId) ?? []), given])
  return { ...round, nudges }
}
