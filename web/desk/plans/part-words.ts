/** A part of a plan, its length and that of a plan in words. */

import type { TFunction } from 'i18next'
import type { LessonPart, LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { LESSON_MINUTES, partMinutes, planMinutes } from '../../../engine/contest/plans/plan-minutes.ts'
import { DEFAULT_ROUND_SETTINGS, type RoundSettings } from '../../../engine/contest/round-settings.ts'
import { spanWords, stageWords } from '../../parts/stage-words.ts'
import { parRangeWords } from '../plan/par-range-words.ts'

/** What a part is called: a round by its own title. */
export function partName(t: TFunction, part: LessonPart): string {
  return part.kind === 'round' && part.title !== '' ? part.title : t(`plans:kind.${part.kind}`)
}

/** "stage 4 · dot · hints up to 2": what is done in it; empty for a review. */
export function partContent(t: TFunction, part: LessonPart): string {
  switch (part.kind) {
    case 'example':
      return [
        stageWords(t, part.stage, DEFAULT_ROUND_SETTINGS.baseColour).title,
        part.caseId === null ? '' : t(`desk:case.${part.caseId}`),
      ]
        .filter(isSaid)
        .join(' · ')
    case 'round':
      return roundContent(t, part.settings)
    case 'review':
      return ''
  }
}

/** "10 min", "no clock" */
export function partLength(t: TFunction, part: LessonPart): string {
  const minutes = partMinutes(part)
  return minutes === null ? t('plans:noClock') : t('plans:minutesShort', { minutes })
}

/** "45 minutes", "5 rounds without a clock": for a list */
export function planLengthInShort(t: TFunction, plan: Pick<LessonPlan, 'parts'>): string {
  const { minutes, nWithoutClock } = planMinutes(plan)
  return [
    minutes === 0 ? '' : t('plans:minutes', { count: minutes }),
    nWithoutClock === 0 ? '' : t('plans:withoutClock', { count: nWithoutClock }),
  ]
    .filter(isSaid)
    .join(' · ')
}

/** "43 of 45 minutes", "60 minutes, more than a lesson of 45", "5 rounds without a clock" */
export function planLength(t: TFunction, plan: Pick<LessonPlan, 'parts'>): string {
  const { minutes, nWithoutClock } = planMinutes(plan)
  const summed =
    minutes > LESSON_MINUTES
      ? t('plans:minutesOver', { minutes, lesson: LESSON_MINUTES })
      : t('plans:minutesOf', { minutes, lesson: LESSON_MINUTES })
  const unbounded = t('plans:withoutClock', { count: nWithoutClock })
  if (nWithoutClock === 0) return summed
  return minutes === 0 ? unbounded : `${summed} · ${unbounded}`
}

function roundContent(t: TFunction, settings: RoundSettings): string {
  const { cases, hints } = settings
  const caseWords =
    cases === null
      ? ''
      : cases.length === 1
        ? t(`desk:case.${cases[0]}`)
        : t('plans:part.cases', { count: cases.length })
  return [
    spanWords(t, settings),
    caseWords,
    parRangeWords(t, settings),
    hints === 0 ? '' : t(`plans:part.hints.${hints}`),
    settings.cube === 'screen' ? '' : t(`desk:plan.summary.cube.${settings.cube}`),
  ]
    .filter(isSaid)
    .join(' · ')
}

function isSaid(words: string): boolean {
  return words !== ''
}
