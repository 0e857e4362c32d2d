/** All plans that a teacher can choose from: their own, then the ready-made ones. */

import type { TFunction } from 'i18next'
import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { readyPlans } from '../../../engine/contest/plans/ready-plans.ts'
import type { Shelf } from '../../../engine/wire/views.ts'
import { useParTables } from '../plan/use-par-tables.ts'
import { inWords } from './ready-plan-words.ts'

/** @returns the teacher's own alone, until the pars are there by which the ready-made ones are made */
export function useAllPlans(plans: Shelf['plans']): readonly LessonPlan[] {
  const { t } = useTranslation()
  const { tables } = useParTables()
  return useMemo(() => {
    const ready = tables === null ? [] : readyPlans(tables).map((each) => inWords(t, each))
    return [...plans.map(({ plan }) => plan), ...ready]
  }, [plans, tables, t])
}

export function planTitle(t: TFunction, { title }: Pick<LessonPlan, 'title'>): string {
  return title === '' ? t('plans:untitled') : title
}
