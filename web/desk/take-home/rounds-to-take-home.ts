/** Which rounds are taken home. Pure. */

import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'

/**
 * @param settings of the next round of the room
 * @returns all rounds of the plan; without a plan, that next round alone
 */
export function roundsToTakeHome(plan: LessonPlan | null, settings: RoundSettings): readonly RoundSettings[] {
  return plan === null ? [settings] : plan.parts.flatMap((part) => (part.kind === 'round' ? [part.settings] : []))
}
