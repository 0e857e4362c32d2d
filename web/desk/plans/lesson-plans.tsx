/** A teacher's lesson plans: their own and the ready-made ones, and the one that is open. */

import { type ReactNode, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPlan } from '../../../engine/contest/plans/lesson-plan.ts'
import { PLAN_FILE_LENGTH_MAX, PLAN_TITLE_LENGTH_MAX } from '../../../engine/contest/plans/limits.ts'
import { formatPlanFile, type PlanFileFault, parsePlanFile } from '../../../engine/contest/plans/plan-file.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import { EditPlan } from './edit-plan.tsx'
import styles from './lesson-plans.module.css'
import { OpenFile } from './open-file.tsx'
import { PlanRow } from './plan-row.tsx'
import { ReadyPlanRows } from './ready-plan-rows.tsx'
import { saveTextFile } from './save-text-file.ts'
import { useArrivalFocus } from './use-arrival-focus.ts'

type OwnPlan = { readonly planId: string; readonly plan: LessonPlan }

type LessonPlansProps = {
  plans: readonly OwnPlan[]
  /** @param planId null for a new one */
  onKeep: (plan: LessonPlan, planId: string | null) => void
  onRemove: (planId: string) => void
  /** The class is about to follow this plan. */
  onUse: (plan: LessonPlan) => void
}

/** What is open: one of the teacher's own by its id, or one that is not kept yet. */
type Open = { readonly planId: string | null; readonly plan: LessonPlan; readonly isReadyMade: boolean }

const NO_PARTS: LessonPlan = { title: '', parts: [] }

export function LessonPlans({ plans, onKeep, onRemove, onUse }: LessonPlansProps) {
  const { t } = useTranslation()
  const [open, setOpen] = useState<Open | null>(null)
  const [comesBack, setComesBack] = useState(false)
  const [asksAbout, setAsksAbout] = useState<OwnPlan | null>(null)
  const [fault, setFault] = useState<PlanFileFault | null>(null)
  const titleOf = (plan: LessonPlan) => (plan.title === '' ? t('plans:untitled') : plan.title)
  const save = (plan: LessonPlan) => saveTextFile(titleOf(plan), 'json', 'application/json', formatPlanFile(plan))
  const leave = () => {
    setOpen(null)
    setComesBack(true)
  }
  const openNew = (plan: LessonPlan, isReadyMade = false) => {
    setFault(null)
    setOpen({ planId: null, plan, isReadyMade })
  }
  const readFile = async (file: File) => {
    // A film is not read to find out that it is no plan; no character has more than four bytes.
    if (file.size > 4 * PLAN_FILE_LENGTH_MAX) {
      return setFault({ code: 'plan/file-too-large', max: PLAN_FILE_LENGTH_MAX })
    }
    const read = parsePlanFile(await file.text())
    if (read.ok) openNew(read.value)
    else setFault(read.error)
  }

  if (open !== null) {
    return (
      <EditPlan
        plan={open.plan}
        isKept={open.planId !== null}
        isReadyMade={open.isReadyMade}
        onKeep={(plan) => {
          onKeep(plan, open.planId)
          leave()
        }}
        onUse={onUse}
        onSave={save}
        onLeave={leave}
      />
    )
  }
  return (
    <ArrivalSection comesBack={comesBack}>
      <header className={styles.head}>
        <h2 id="lesson-plans">{t('plans:title')}</h2>
        <div className={styles.acts}>
          <Button icon="plus" onClick={() => openNew(NO_PARTS)}>
            {t('plans:newPlan')}
          </Button>
          <OpenFile accept=".json,application/json" onOpen={(file) => void readFile(file)}>
            {t('plans:openFile')}
          </OpenFile>
        </div>
      </header>
      <Notice>{fault !== null && t(`plans:fault.${fault.code}`, { ...fault })}</Notice>
      <section aria-labelledby="own-plans">
        <h3 id="own-plans">{t('plans:own')}</h3>
        {plans.length === 0 ? (
          <p className={styles.none}>{t('plans:noOwn')}</p>
        ) : (
          <ul className={styles.rows}>
            {plans.map((own) => (
              <PlanRow
                key={own.planId}
                title={titleOf(own.plan)}
                plan={own.plan}
                onOpen={() => setOpen({ ...own, isReadyMade: false })}
                onUse={() => onUse(own.plan)}
                more={{
                  onDuplicate: () => onKeep(copyOf(own.plan, t('plans:copyOf', { title: titleOf(own.plan) })), null),
                  onSave: () => save(own.plan),
                  onRemove: () => setAsksAbout(own),
                }}
              />
            ))}
          </ul>
        )}
      </section>
      <section aria-labelledby="ready-plans">
        <h3 id="ready-plans">{t('plans:ready')}</h3>
        <ReadyPlanRows onOpen={(plan) => openNew(plan, true)} onUse={onUse} />
      </section>
      {asksAbout !== null && (
        <AskFirst
          title={t('plans:removeAsk.title', { title: titleOf(asksAbout.plan) })}
          sentence={t('plans:removeAsk.sentence')}
          yes={t('plans:removeAsk.yes')}
          onYes={() => onRemove(asksAbout.planId)}
          onClose={() => setAsksAbout(null)}
        />
      )}
    </ArrivalSection>
  )
}

function ArrivalSection({ comesBack, children }: { comesBack: boolean; children: ReactNode }) {
  const section = useArrivalFocus<HTMLElement>(comesBack)
  return (
    <section ref={section} tabIndex={-1} className={styles.plans} aria-labelledby="lesson-plans">
      {children}
    </section>
  )
}

function copyOf(plan: LessonPlan, title: string): LessonPlan {
  return { ...plan, title: title.slice(0, PLAN_TITLE_LENGTH_MAX) }
}
