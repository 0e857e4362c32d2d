/**
 * The quiet signs on the wall: stuck, and broke an earlier layer. Computed from what a student has done and the round's own
 * clock, so a pause or an outage makes nobody look stuck. A sign waits until it is sure: every sequence breaks a layer for
 * a while, and a child that looks at the cube is thinking.
 */

import type { Stage, StageSpan } from '../method/stages.ts'
import type { RoundSettings } from './round-settings.ts'

/** What the signs are computed from; all times are played milliseconds of the round. */
export type StudentActivity = {
  /** When the last turn came in; 0 before the first. */
  readonly lastStepMs: number
  /** When the try last came further. */
  readonly lastGainMs: number
  /** When an earlier layer broke; null while all are whole. */
  readonly brokeMs: number | null
  /** Steps since then; 0 while all are whole. */
  readonly nStepsBroken: number
  /** Steps of the try under way. */
  readonly nSteps: number
  /** Whether the try under way has reached the goal, or an earlier one has. */
  readonly reached: boolean
}

/** Since when, in played milliseconds; null for no sign. */
export type StudentSigns = { readonly stuckSinceMs: number | null; readonly brokeSinceMs: number | null }

/** No turn for so long: looked long enough. */
export const STUCK_IDLE_MS = 45_000
/** Turning for so long, and so much, without coming any further. */
export const STUCK_NO_GAIN_MS = 150_000
export const STUCK_NO_GAIN_STEPS = 40
/** Broken, and no turn for so long: nothing is under way that would mend it. */
export const BROKE_IDLE_MS = 20_000

/**
 * The most steps of one sequence of the lesson, re-holds included, by stage: behind so many a broken layer is no longer
 * part of a sequence under way. Stage 7, A^5 B^5 A B, is the longest: 48 turns. The ladder of stages 2 and 3 is five
 * triggers; at stage 1 nothing is above that could break.
 */
const SEQUENCE_STEPS_MAX: Readonly<Record<Stage, number>> = { 1: 4, 2: 22, 3: 12, 4: 8, 5: 26, 6: 30, 7: 50 }

/**
 * Where each plays alone, for days, moments say nothing and nobody is waited for: only turns count there.
 *
 * @param playedMs of the round's clock now
 * @returns the signs; none once the goal was reached
 */
export function studentSigns(
  activity: StudentActivity,
  { pace, ...span }: Pick<RoundSettings, 'from' | 'to' | 'pace'>,
  playedMs: number,
): StudentSigns {
  const { lastStepMs, lastGainMs, brokeMs, nStepsBroken, nSteps, reached } = activity
  if (reached) return { stuckSinceMs: null, brokeSinceMs: null }
  const isBeyondSequence = nStepsBroken > longestSequence(span)
  if (pace === 'alone') return { stuckSinceMs: null, brokeSinceMs: isBeyondSequence ? brokeMs : null }
  const isIdle = playedMs - lastStepMs >= STUCK_IDLE_MS
  const gainsNothing = playedMs - lastGainMs >= STUCK_NO_GAIN_MS && nSteps >= STUCK_NO_GAIN_STEPS
  const stuckSinceMs = isIdle ? lastStepMs : gainsNothing ? lastGainMs : null
  if (brokeMs === null) return { stuckSinceMs, brokeSinceMs: null }
  const isLeftSo = playedMs - Math.max(lastStepMs, brokeMs) >= BROKE_IDLE_MS
  return { stuckSinceMs, brokeSinceMs: isBeyondSequence || isLeftSo ? brokeMs : null }
}

function longestSequence({ from, to }: StageSpan): number {
  let most = 0
  for (let stage: number = from; stage <= to; stage++) most = Math.max(most, SEQUENCE_STEPS_MAX[stage as Stage])
  return most
}
