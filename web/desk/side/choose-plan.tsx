/**
 * The lesson plan of a room: one of the teacher's own or a ready-made one, put into use or taken home. An unused room is made
 * a take-home room itself; one that has been played in stays as it is, and another room is opened beside it.
 */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { DeskView, Shelf } from '../../../engine/wire/views.ts'
import { Button } from '../../ui/button.tsx'
import type { RoomActs } from '../desk-acts.ts'
import { planTitle, useAllPlans } from '../plans/use-all-plans.ts'
import { NewTakeHome } from '../take-home/new-take-home.tsx'
import { roundsToTakeHome } from '../take-home/rounds-to-take-home.ts'
import { TakeHomeForm } from '../take-home/take-home-form.tsx'
import styles from './choose-plan.module.css'

type ChoosePlanProps = {
  readonly view: DeskView
  readonly nowMs: number
  readonly plans: Shelf['plans']
  readonly acts: Pick<RoomActs, 'followPlan' | 'takeHome' | 'newTakeHome'>
}

export function ChoosePlan({ view, nowMs, plans, acts }: ChoosePlanProps) {
  const { t } = useTranslation()
  const [isTakenHome, setTakenHome] = useState(false)
  const plan = view.plan?.plan ?? null
  return (
    <section className={styles.choose}>
      {plan === null ? (
        <PlanList plans={plans} onChoose={acts.followPlan} />
      ) : (
        <p>
          <b>{planTitle(t, plan)}</b>
        </p>
      )}
      <div className={styles.acts}>
        <Button onClick={() => setTakenHome(!isTakenHome)} aria-expanded={isTakenHome}>
          {t(plan === null ? 'desk:takeHome.thisRound' : 'desk:lesson.takeHome')}
        </Button>
        {plan !== null && (
          <Button look="quiet" icon="cross" onClick={() => acts.followPlan(null)}>
            {t('desk:lesson.putAway')}
          </Button>
        )}
      </div>
      {isTakenHome && <TakeHome view={view} nowMs={nowMs} acts={acts} />}
    </section>
  )
}

function PlanList({ plans, onChoose }: { plans: Shelf['plans']; onChoose: ChoosePlanProps['acts']['followPlan'] }) {
  const { t } = useTranslation()
  const id = useId()
  const all = useAllPlans(plans)
  return (
    <>
      <label htmlFor={id}>{t('desk:lesson.choose')}</label>
      <select
        id={id}
        value=""
        onChange={(event) => {
          const plan = all[Number(event.currentTarget.value)]
          if (plan !== undefined) onChoose(plan)
        }}
      >
        <option value="">{t('desk:lesson.none')}</option>
        {all.map((plan, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: plans in this list have no identity but their place.
          <option key={index} value={index}>
            {planTitle(t, plan)}
          </option>
        ))}
      </select>
    </>
  )
}

function TakeHome({ view, nowMs, acts }: Omit<ChoosePlanProps, 'plans'>) {
  const { t } = useTranslation()
  const plan = view.plan?.plan ?? null
  const rounds = roundsToTakeHome(plan, view.settings)
  const sentence = t(plan === null ? 'desk:takeHome.sentenceOne' : 'desk:takeHome.sentence')
  if (view.nRounds === 0) {
    return (
      <TakeHomeForm
        nRounds={rounds.length}
        nowMs={nowMs}
        open={t('desk:takeHome.open')}
        onOpen={(deadlineMs) => acts.takeHome(rounds, deadlineMs)}
      >
        <p>{sentence}</p>
      </TakeHomeForm>
    )
  }
  return (
    <NewTakeHome plan={plan} rounds={rounds} entry={view.room.entry} nowMs={nowMs} onOpen={acts.newTakeHome}>
      <p>
        {sentence} {t('desk:takeHome.another')}
      </p>
    </NewTakeHome>
  )
}
