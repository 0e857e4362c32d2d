/** The parts of a plan in order: added, changed in place, moved by buttons, taken out and brought back. */

import { useEffect, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPart } from '../../../engine/contest/plans/lesson-plan.ts'
import { PLAN_PARTS_MAX } from '../../../engine/contest/plans/limits.ts'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import { newPart, type PlanDraft, withoutPart, withPartAt, withPartChanged, withPartMoved } from './change-plan.ts'
import styles from './edit-parts.module.css'
import { PartRow } from './part-row.tsx'
import { partName } from './part-words.ts'

type EditPartsProps = { draft: PlanDraft; onChange: (draft: PlanDraft) => void }

const KINDS = ['example', 'round', 'review'] as const satisfies readonly LessonPart['kind'][]

export function EditParts({ draft, onChange }: EditPartsProps) {
  const { t } = useTranslation()
  const [openKey, setOpenKey] = useState<number | null>(null)
  const [removed, setRemoved] = useState<{ readonly part: LessonPart; readonly at: number } | null>(null)
  const [said, setSaid] = useState('')
  const list = useRef<HTMLOListElement>(null)
  const [focusAt, setFocusAt] = useState<number | null>(null)
  const isFull = draft.parts.length >= PLAN_PARTS_MAX

  // What had the focus is gone or new: the row that took its place has it next.
  useEffect(() => {
    if (focusAt === null) return
    const row = list.current?.children[Math.min(focusAt, draft.parts.length - 1)]
    row?.querySelector<HTMLButtonElement>('button')?.focus()
    setFocusAt(null)
  }, [focusAt, draft.parts.length])

  const add = (part: LessonPart, at: number) => {
    if (isFull) return
    onChange(withPartAt(draft, part, at))
    setOpenKey(draft.nextKey)
    setRemoved(null)
    setFocusAt(at)
  }
  return (
    <div className={styles.parts}>
      {draft.parts.length === 0 && <p className={styles.none}>{t('plans:edit.noParts')}</p>}
      <ol ref={list} className={styles.list}>
        {draft.parts.map(({ key, part }, index) => (
          <PartRow
            key={key}
            part={part}
            number={index + 1}
            isOpen={openKey === key}
            isFirst={index === 0}
            isLast={index === draft.parts.length - 1}
            onOpen={(isOpen) => setOpenKey(isOpen ? key : null)}
            onChange={(changed) => onChange(withPartChanged(draft, key, changed))}
            onMove={(by) => {
              onChange(withPartMoved(draft, key, by))
              setSaid(t('plans:edit.nowAt', { part: partName(t, part), number: index + by + 1 }))
            }}
            onRemove={() => {
              onChange(withoutPart(draft, key))
              setRemoved({ part, at: index })
              setFocusAt(index)
            }}
          />
        ))}
      </ol>
      <Notice>
        {removed !== null && (
          <>
            {t('plans:edit.removed', { part: partName(t, removed.part) })}
            <Button look="quiet" onClick={() => add(removed.part, removed.at)}>
              {t('plans:edit.bringBack')}
            </Button>
          </>
        )}
      </Notice>
      <p className="visually-hidden" role="status">
        {said}
      </p>
      {isFull ? (
        <p className={styles.none}>{t('plans:edit.full', { max: PLAN_PARTS_MAX })}</p>
      ) : (
        <div className={styles.add}>
          {KINDS.map((kind) => (
            <Button key={kind} icon="plus" onClick={() => add(newPart(kind, draft), draft.parts.length)}>
              {t(`plans:kind.${kind}`)}
            </Button>
          ))}
        </div>
      )}
    </div>
  )
}
