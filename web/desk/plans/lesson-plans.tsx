/** A teacher's lesson plans: their own and the ready-made ones, and the one that is open. */

import { useEffect, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { type LessonPlan, lessonPlanSchema } from '../../../engine/contest/plans/lesson-plan.ts'
import { PLAN_FILE_LENGTH_MAX, PLAN_TITLE_LENGTH_MAX } from '../../../engine/contest/plans/limits.ts'
import { formatPlanFile, type PlanFileFault, parsePlanFile } from '../../../engine/contest/plans/plan-file.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import type { PlanPlace } from '../place/desk-place.ts'
import { ListFrame } from '../shelf/list-frame.tsx'
import rowStyles from '../shelf/rows.module.css'
import { saveTextFile } from '../shelf/save-text-file.ts'
import { EditPlan } from './edit-plan.tsx'
import styles from './lesson-plans.module.css'
import { OpenFile } from './open-file.tsx'
import { PlanRow } from './plan-row.tsx'
import { ReadyPlanRows } from './ready-plan-rows.tsx'

type OwnPlan = { readonly planId: string; readonly plan: LessonPlan }

type LessonPlansProps = {
  plans: readonly OwnPlan[]
  /** The plan that is open; null for the list. */
  open: PlanPlace | null
  /** Another value is another plan, or the same opened again. */
  openKey: number
  onOpen: (open: PlanPlace) => void
  /** What is open is known otherwise now. */
  onChangeOpen: (open: PlanPlace) => void
  onLeave: () => void
  /** What is open is on the server, and is left unless it was left before. */
  onKept: (open: PlanPlace) => void
  /** @param planId null for a new one @returns under what it is kept; null when it is not */
  onKeep: (plan: LessonPlan, planId: string | null) => Promise<string | null>
  onRemove: (planId: string) => void
  /** The class is about to follow this plan. */
  onUse: (plan: LessonPlan) => void
}

const NO_PARTS: LessonPlan = { title: '', parts: [] }

export function LessonPlans(props: LessonPlansProps) {
  const { plans, open, openKey, onOpen, onChangeOpen, onLeave, onKept, onKeep, onRemove, onUse } = props
  const { t } = useTranslation()
  const [comesBack, setComesBack] = useState(false)
  const [asksAbout, setAsksAbout] = useState<OwnPlan | null>(null)
  const [fault, setFault] = useState<PlanFileFault | null>(null)
  useEffect(() => {
    if (open === null) return
    setComesBack(true)
    setFault(null)
  }, [open])
  const titleOf = (plan: LessonPlan) => (plan.title === '' ? t('plans:untitled') : plan.title)
  const save = (plan: LessonPlan) => saveTextFile(titleOf(plan), 'json', 'application/json', formatPlanFile(plan))
  const openNew = (plan: LessonPlan, isReadyMade = false) =>
    onOpen({ kind: 'plan', planId: null, plan, isReadyMade, draft: null })
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
    // Removed meanwhile, at another desk perhaps: it can be kept anew.
    const kept = plans.find(({ planId }) => planId === open.planId)
    return (
      <EditPlan
        key={openKey}
        plan={kept?.plan ?? open.plan}
        draft={open.draft}
        isKept={kept !== undefined}
        isReadyMade={open.isReadyMade}
        onKeep={async (plan) => {
          const planId = await onKeep(plan, kept?.planId ?? null)
          if (planId === null) return
          onKept({ kind: 'plan', planId, plan, isReadyMade: false, draft: null })
        }}
        onUse={(plan) => {
          // Whoever comes back from the room finds it as it was left.
          onChangeOpen({ ...open, draft: lessonPlanSchema.safeParse(plan).success ? plan : null })
          onUse(plan)
        }}
        onSave={save}
        onLeave={onLeave}
      />
    )
  }
  return (
    <ListFrame
      title={t('plans:title')}
      comesBack={comesBack}
      className={styles.plans}
      acts={
        <>
          <Button icon="plus" onClick={() => openNew(NO_PARTS)}>
            {t('plans:newPlan')}
          </Button>
          <OpenFile accept=".json,application/json" onOpen={(file) => void readFile(file)}>
            {t('plans:openFile')}
          </OpenFile>
        </>
      }
    >
      <Notice>{fault !== null && t(`plans:fault.${fault.code}`, { ...fault })}</Notice>
      <section aria-labelledby="own-plans">
        <h3 id="own-plans">{t('plans:own')}</h3>
        {plans.length === 0 ? (
          <p className={rowStyles.none}>{t('plans:noOwn')}</p>
        ) : (
          <ul className={rowStyles.rows}>
            {plans.map((own) => (
              <PlanRow
                key={own.planId}
                title={titleOf(own.plan)}
                plan={own.plan}
                onOpen={() => onOpen({ kind: 'plan', ...own, isReadyMade: false, draft: null })}
                onUse={() => onUse(own.plan)}
                more={{
                  onDuplicate: () =>
                    void onKeep(copyOf(own.plan, t('plans:copyOf', { title: titleOf(own.plan) })), null),
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
    </ListFrame>
  )
}

function copyOf(plan: LessonPlan, title: string): LessonPlan {
  return { ...plan, title: title.slice(0, PLAN_TITLE_LENGTH_MAX) }
}
