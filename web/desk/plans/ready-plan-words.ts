/** A ready-made plan in the language of the page: from then on it is a plan like any other. */

import type { TFunction } from 'i18next'
import type { LessonPart, LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import type { ReadyPart, ReadyPlan } from '../../../engine/contest/plans/ready-plans.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import { stageWords } from '../../parts/stage-words.ts'

export function inWords(t: TFunction, { occasion, parts }: ReadyPlan): LessonPlan {
  return { title: titleOf(t, occasion), parts: parts.map((part) => partInWords(t, part)) }
}

function titleOf(t: TFunction, occasion: ReadyPlan['occasion']): string {
  if (typeof occasion === 'string') return t(`plans:readyPlan.${occasion}`)
  const { stage } = occasion
  return t('plans:readyPlan.stage', { stage, title: stageWords(t, stage, DEFAULT_ROUND_SETTINGS.baseColour).title })
}

function partInWords(t: TFunction, { words, part }: ReadyPart): LessonPart {
  const note = t(`plans:readyPart.${words}.note`)
  if (part.kind !== 'round') return { ...part, note }
  const { to, baseColour } = part.settings
  const title = t(`plans:readyPart.${words}.title`, { stage: stageWords(t, to, baseColour).title })
  return { ...part, title, note }
}
