/** A room to take home from the desk's first page: which plan, until when. Folded until it is wanted. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import type { Shelf } from '../../../engine/wire/views.ts'
import type { OpenedTakeHome, TakeHomeWish } from '../../live/open-take-home.ts'
import { Button } from '../../ui/button.tsx'
import { planTitle, useAllPlans } from '../plans/use-all-plans.ts'
import styles from './begin-take-home.module.css'
import { NewTakeHome } from './new-take-home.tsx'
import { roundsToTakeHome } from './rounds-to-take-home.ts'

type BeginTakeHomeProps = {
  readonly plans: Shelf['plans']
  readonly nowMs: number
  readonly onOpen: (wish: TakeHomeWish) => Promise<OpenedTakeHome>
}

export function BeginTakeHome({ plans, nowMs, onOpen }: BeginTakeHomeProps) {
  const { t } = useTranslation()
  const [isOpen, setIsOpen] = useState(false)
  return (
    <div className={styles.begin}>
      <Button look="quiet" icon="down" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        {t('desk:takeHome.begin')}
      </Button>
      {isOpen && <WhichPlan plans={plans} nowMs={nowMs} onOpen={onOpen} />}
    </div>
  )
}

function WhichPlan({ plans, nowMs, onOpen }: BeginTakeHomeProps) {
  const { t } = useTranslation()
  const id = useId()
  const all = useAllPlans(plans).filter(({ parts }) => parts.some(({ kind }) => kind === 'round'))
  const [wished, setWished] = useState<number | null>(null)
  // The last of the ready-made ones is the week to take home.
  const chosen = wished ?? all.length - 1
  const plan = all[chosen] ?? null
  return (
    <NewTakeHome
      plan={plan}
      rounds={plan === null ? [] : roundsToTakeHome(plan, DEFAULT_ROUND_SETTINGS)}
      entry={null}
      nowMs={nowMs}
      onOpen={onOpen}
    >
      <p>{t('desk:takeHome.sentence')}</p>
      <label htmlFor={id}>{t('desk:lesson.choose')}</label>
      <select id={id} value={chosen} onChange={(event) => setWished(Number(event.currentTarget.value))}>
        {all.map((each, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: plans in this list have no identity but their place.
          <option key={index} value={index}>
            {planTitle(t, each)}
          </option>
        ))}
      </select>
    </NewTakeHome>
  )
}
