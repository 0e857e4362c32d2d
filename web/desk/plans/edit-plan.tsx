/** One plan, open: its title, its parts in order, and how long they take together. Kept only when the teacher says so. */

import { useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { type LessonPlan, lessonPlanSchema } from '../../../engine/contest/plans/lesson-plan.ts'
import { PLAN_TITLE_LENGTH_MAX } from '../../../engine/contest/plans/limits.ts'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import { EditFrame } from '../shelf/edit-frame.tsx'
import { cleanTitle, draftOf, planOf } from './change-plan.ts'
import { EditParts } from './edit-parts.tsx'
import styles from './edit-plan.module.css'
import { planLength } from './part-words.ts'

type EditPlanProps = {
  plan: LessonPlan
  /** What has become of it; null when it is as it was opened. */
  draft: LessonPlan | null
  /** It is on the server as it was opened. */
  isKept: boolean
  isReadyMade: boolean
  onKeep: (plan: LessonPlan) => Promise<void>
  onUse: (plan: LessonPlan) => void
  onSave: (plan: LessonPlan) => void
  onLeave: () => void
}

export function EditPlan(props: EditPlanProps) {
  const { plan: opened, draft: begun, isKept, isReadyMade, onKeep, onUse, onSave, onLeave } = props
  const { t } = useTranslation()
  const [draft, setDraft] = useState(() => draftOf(begun ?? opened))
  const isBeingKept = useRef(false)
  const plan = planOf(draft)
  const hasChanged = JSON.stringify(plan) !== JSON.stringify(opened)
  const canKeep = (hasChanged || !isKept) && draft.parts.length > 0
  // What is ready-made is used as it is more often than it is kept.
  const keepsNext = canKeep && (hasChanged || !isReadyMade)
  const fits = lessonPlanSchema.safeParse(plan).success
  const keep = async () => {
    if (!canKeep || !fits || isBeingKept.current) return
    isBeingKept.current = true
    await onKeep(plan.title === '' ? { ...plan, title: t('plans:untitled') } : plan)
    isBeingKept.current = false
  }
  return (
    <EditFrame
      name={plan.title === '' ? t('plans:untitled') : plan.title}
      back={t('plans:edit.back')}
      title={{
        label: t('plans:edit.title'),
        value: draft.title,
        placeholder: t('plans:untitled'),
        lengthMax: PLAN_TITLE_LENGTH_MAX,
        onChange: (title) => setDraft({ ...draft, title: cleanTitle(title) }),
      }}
      acts={
        <>
          <Button look={keepsNext ? 'accent' : 'plain'} aria-disabled={!canKeep || !fits} onClick={() => void keep()}>
            {t('plans:edit.keep')}
          </Button>
          <Button
            look={keepsNext ? 'plain' : 'accent'}
            aria-disabled={draft.parts.length === 0}
            onClick={() => draft.parts.length > 0 && onUse(plan)}
          >
            {t('plans:useOpen')}
          </Button>
          <Button look="quiet" onClick={() => onSave(plan)}>
            {t('plans:save')}
          </Button>
        </>
      }
      hasChanged={hasChanged}
      leaveAsk={{
        title: t('plans:edit.leaveAsk.title'),
        sentence: t('plans:edit.leaveAsk.sentence'),
        yes: t('plans:edit.leaveAsk.yes'),
      }}
      onLeave={onLeave}
    >
      {isReadyMade && <p className={styles.help}>{t('plans:edit.readyMade')}</p>}
      <Notice>{!fits && t('plans:edit.tooMuchText')}</Notice>
      <p className={styles.length}>
        <b>{planLength(t, plan)}</b>
      </p>
      <EditParts draft={draft} onChange={setDraft} />
    </EditFrame>
  )
}
