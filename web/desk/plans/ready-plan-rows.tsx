/** The ready-made plans in a list. What is hard is computed from the pars, which are fetched first. */

import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { readyPlans } from '../../../engine/contest/plans/ready-plans.ts'
import { Button } from '../../ui/button.tsx'
import { useParTables } from '../plan/use-par-tables.ts'
import rowStyles from '../shelf/rows.module.css'
import { PlanRow } from './plan-row.tsx'
import { inWords } from './ready-plan-words.ts'

type ReadyPlanRowsProps = { onOpen: (plan: LessonPlan) => void; onUse: (plan: LessonPlan) => void }

export function ReadyPlanRows({ onOpen, onUse }: ReadyPlanRowsProps) {
  const { t } = useTranslation()
  const { tables, failed, tryAgain } = useParTables()
  const ready = useMemo(() => (tables === null ? [] : readyPlans(tables)), [tables])
  if (ready.length === 0) {
    return failed ? (
      <Button icon="again" onClick={tryAgain}>
        {t('desk:plan.parAgain')}
      </Button>
    ) : (
      <p className={rowStyles.none}>{t('plans:readyLoading')}</p>
    )
  }
  return (
    <ul className={rowStyles.rows}>
      {ready.map((each) => {
        const plan = inWords(t, each)
        return (
          <PlanRow
            key={plan.title}
            title={plan.title}
            plan={plan}
            onOpen={() => onOpen(plan)}
            onUse={() => onUse(plan)}
          />
        )
      })}
    </ul>
  )
}
