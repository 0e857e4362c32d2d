/** How long a plan takes. */

import type { LessonPart, LessonPlan } from './lesson-plan.ts'

const MINUTE_MS = 60_000

/** The usual length of a lesson, which ready-made plans fill. Source: common practice of schools, no single source. */
export const LESSON_MINUTES = 45

/** How long a plan takes, as far as clocks say. */
export type PlanMinutes = {
  /** Sum of all parts with a length. */
  readonly minutes: number
  /** Rounds without a clock, which take as long as they take. */
  readonly nWithoutClock: number
}

/** @returns minutes of a part, halves and all; null for a round without a clock */
export function partMinutes(part: LessonPart): number | null {
  if (part.kind !== 'round') return part.minutes
  return part.settings.timeLimitMs === null ? null : part.settings.timeLimitMs / MINUTE_MS
}

/** @returns the sum over a plan */
export function planMinutes({ parts }: Pick<LessonPlan, 'parts'>): PlanMinutes {
  const lengths = parts.map(partMinutes)
  return {
    minutes: lengths.reduce<number>((sum, minutes) => sum + (minutes ?? 0), 0),
    nWithoutClock: lengths.filter((minutes) => minutes === null).length,
  }
}
