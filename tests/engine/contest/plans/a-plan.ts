/** Lesson plans for tests. */

import type { LessonPart, LessonPlan } from '../../../../engine/contest/plans/lesson-plan.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../../engine/contest/round-settings.ts'

export const anExample = (changes: Partial<Extract<LessonPart, { kind: 'example' }>> = {}): LessonPart => ({
  kind: 'example',
  stage: 4,
  caseId: 'dot',
  minutes: 8,
  note: 'Show it slowly.',
  ...changes,
})

export const aRound = (settings: Partial<RoundSettings> = {}): LessonPart => ({
  kind: 'round',
  title: 'All together',
  note: '',
  settings: { ...DEFAULT_ROUND_SETTINGS, ...settings },
})

export const aReview: LessonPart = { kind: 'review', minutes: 10, note: 'Who\nfound\na short way?' }

export const aPlan = (...parts: LessonPart[]): LessonPlan => ({ title: 'Yellow cross', parts })
