/** The lesson plan of a room: one of the teacher's own or a ready-made one, put into use or taken home. */

import { useId, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { readyPlans } from '../../../engine/contest/plans/ready-plans.ts'
import type { DeskView, Shelf } from '../../../engine/wire/views.ts'
import { Button } from '../../ui/button.tsx'
import type { RoomActs } from '../desk-acts.ts'
import { useParTables } from '../plan/use-par-tables.ts'
import { inWords } from '../plans/ready-plan-words.ts'
import styles from './choose-plan.module.css'
import { TakeHome } from './take-home.tsx'

type ChoosePlanProps = {
  readonly view: DeskView
  readonly nowMs: number
  readonly plans: Shelf['plans']
  readonly acts: Pick<RoomActs, 'followPlan' | 'takeHome'>
}

export function ChoosePlan({ view, nowMs, plans, acts }: ChoosePlanProps) {
  const { t } = useTranslation()
  const id = useId()
  const [isTakenHome, setTakenHome] = useState(false)
  const { tables } = useParTables()
  const all = useMemo((): readonly LessonPlan[] => {
    const ready = tables === null ? [] : readyPlans(tables).map((each) => inWords(t, each))
    return [...plans.map(({ plan }) => plan), ...ready]
  }, [plans, tables, t])
  if (view.plan !== null) {
    const { plan } = view.plan
    return (
      <section className={styles.choose}>
        <p>
          <b>{plan.title === '' ? t('plans:untitled') : plan.title}</b>
        </p>
        <div className={styles.acts}>
          {view.nRounds === 0 && (
            <Button onClick={() => setTakenHome(!isTakenHome)} aria-expanded={isTakenHome}>
              {t('desk:lesson.takeHome')}
            </Button>
          )}
          <Button look="quiet" icon="cross" onClick={() => acts.followPlan(null)}>
            {t('desk:lesson.putAway')}
          </Button>
        </div>
        {isTakenHome && view.nRounds === 0 && <TakeHome plan={plan} nowMs={nowMs} onOpen={acts.takeHome} />}
      </section>
    )
  }
  return (
    <section className={styles.choose}>
      <label htmlFor={id}>{t('desk:lesson.choose')}</label>
      <select
        id={id}
        value=""
        onChange={(event) => {
          const plan = all[Number(event.currentTarget.value)]
          if (plan !== undefined) acts.followPlan(plan)
        }}
      >
        <option value="">{t('desk:lesson.none')}</option>
        {all.map((plan, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: plans in this list have no identity but their place.
          <option key={index} value={index}>
            {plan.title === '' ? t('plans:untitled') : plan.title}
          </option>
        ))}
      </select>
    </section>
  )
}
