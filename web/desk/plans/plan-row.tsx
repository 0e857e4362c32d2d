/** A plan in a list: what it is called, how long it takes, and what can be done with it. */

import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { Button } from '../../ui/button.tsx'
import { Icon } from '../../ui/icons.tsx'
import { planLengthInShort } from './part-words.ts'
import styles from './plan-row.module.css'

type PlanRowProps = {
  title: string
  plan: LessonPlan
  onOpen: () => void
  onUse: () => void
  /** Of the teacher's own plans. */
  more?: { readonly onDuplicate: () => void; readonly onSave: () => void; readonly onRemove: () => void }
}

export function PlanRow({ title, plan, onOpen, onUse, more }: PlanRowProps) {
  const { t } = useTranslation()
  const facts = [t('plans:parts', { count: plan.parts.length }), planLengthInShort(t, plan)].filter(Boolean).join(' · ')
  return (
    <li className={styles.row}>
      <button
        type="button"
        className={styles.open}
        aria-label={`${t('plans:open', { title })}. ${facts}`}
        onClick={onOpen}
      >
        <b>{title}</b>
        <span>{facts}</span>
        <Icon of="onward" />
      </button>
      <div className={styles.acts}>
        <Button aria-label={t('plans:useThis', { title })} onClick={onUse}>
          {t('plans:use')}
        </Button>
        {more !== undefined && (
          <>
            <Button look="quiet" aria-label={t('plans:duplicateThis', { title })} onClick={more.onDuplicate}>
              {t('plans:duplicate')}
            </Button>
            <Button look="quiet" aria-label={t('plans:saveThis', { title })} onClick={more.onSave}>
              {t('plans:saveShort')}
            </Button>
            <Button look="quiet" aria-label={t('plans:removeThis', { title })} onClick={more.onRemove}>
              {t('plans:remove')}
            </Button>
          </>
        )}
      </div>
    </li>
  )
}
