/** One plan, open: its title, its parts in order, and how long they take together. Kept only when the teacher says so. */

import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { type LessonPlan, lessonPlanSchema } from '../../../engine/contest/plans/lesson-plan.ts'
import { PLAN_TITLE_LENGTH_MAX } from '../../../engine/contest/plans/limits.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import { cleanTitle, draftOf, planOf } from './change-plan.ts'
import { EditParts } from './edit-parts.tsx'
import styles from './edit-plan.module.css'
import { planLength } from './part-words.ts'
import { useArrivalFocus } from './use-arrival-focus.ts'

type EditPlanProps = {
  plan: LessonPlan
  /** It is on the server as it was opened. */
  isKept: boolean
  isReadyMade: boolean
  onKeep: (plan: LessonPlan) => void
  onUse: (plan: LessonPlan) => void
  onSave: (plan: LessonPlan) => void
  onLeave: () => void
}

export function EditPlan({ plan: opened, isKept, isReadyMade, onKeep, onUse, onSave, onLeave }: EditPlanProps) {
  const { t } = useTranslation()
  const titleId = useId()
  const section = useArrivalFocus<HTMLElement>()
  const [draft, setDraft] = useState(() => draftOf(opened))
  const [asksToLeave, setAsksToLeave] = useState(false)
  const plan = planOf(draft)
  const hasChanged = JSON.stringify(plan) !== JSON.stringify(opened)
  const canKeep = (hasChanged || !isKept) && draft.parts.length > 0
  const fits = lessonPlanSchema.safeParse(plan).success
  const keep = () => {
    if (canKeep && fits) onKeep(plan.title === '' ? { ...plan, title: t('plans:untitled') } : plan)
  }
  return (
    <section
      ref={section}
      tabIndex={-1}
      className={styles.plan}
      aria-label={plan.title === '' ? t('plans:untitled') : plan.title}
    >
      <div>
        <Button look="quiet" icon="back" onClick={() => (hasChanged ? setAsksToLeave(true) : onLeave())}>
          {t('plans:edit.back')}
        </Button>
      </div>
      <header className={styles.head}>
        <div className={styles.title}>
          <label htmlFor={titleId}>{t('plans:edit.title')}</label>
          <input
            id={titleId}
            value={draft.title}
            maxLength={PLAN_TITLE_LENGTH_MAX}
            placeholder={t('plans:untitled')}
            autoComplete="off"
            onChange={(event) => setDraft({ ...draft, title: cleanTitle(event.currentTarget.value) })}
          />
        </div>
        <div className={styles.acts}>
          <Button look={canKeep ? 'accent' : 'plain'} aria-disabled={!canKeep || !fits} onClick={keep}>
            {t('plans:edit.keep')}
          </Button>
          <Button
            look={canKeep ? 'plain' : 'accent'}
            aria-disabled={draft.parts.length === 0}
            onClick={() => draft.parts.length > 0 && onUse(plan)}
          >
            {t('plans:useOpen')}
          </Button>
          <Button look="quiet" onClick={() => onSave(plan)}>
            {t('plans:save')}
          </Button>
        </div>
      </header>
      {isReadyMade && <p className={styles.help}>{t('plans:edit.readyMade')}</p>}
      <Notice>{!fits && t('plans:edit.tooMuchText')}</Notice>
      <p className={styles.length}>
        <b>{planLength(t, plan)}</b>
      </p>
      <EditParts draft={draft} onChange={setDraft} />
      {asksToLeave && (
        <AskFirst
          title={t('plans:edit.leaveAsk.title')}
          sentence={t('plans:edit.leaveAsk.sentence')}
          yes={t('plans:edit.leaveAsk.yes')}
          onYes={onLeave}
          onClose={() => setAsksToLeave(false)}
        />
      )}
    </section>
  )
}
