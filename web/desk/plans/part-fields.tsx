/** What can be changed of a part: the fields of its kind, and the note that every part has. */

import { type ReactNode, useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { LessonPart } from '../../../engine/contest/plans/lesson-plan.ts'
import { PART_MINUTES_MAX, PLAN_NOTE_LENGTH_MAX, PLAN_TITLE_LENGTH_MAX } from '../../../engine/contest/plans/limits.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import { isCaseOf } from '../../../engine/method/cases.ts'
import { STAGES } from '../../../engine/method/stages.ts'
import { stageWords } from '../../parts/stage-words.ts'
import { offeredCases } from '../change-settings.ts'
import { PlanRound } from '../plan/plan-round.tsx'
import { cleanNote, cleanTitle } from './change-plan.ts'
import styles from './part-fields.module.css'

type PartFieldsProps<Part extends LessonPart> = { part: Part; onChange: (part: LessonPart) => void }

export function PartFields({ part, onChange }: PartFieldsProps<LessonPart>) {
  switch (part.kind) {
    case 'example':
      return <ExampleFields part={part} onChange={onChange} />
    case 'round':
      return <RoundFields part={part} onChange={onChange} />
    case 'review':
      return (
        <div className={styles.fields}>
          <Minutes minutes={part.minutes} onRead={(minutes) => onChange({ ...part, minutes })} />
          <Note part={part} onChange={onChange} />
        </div>
      )
  }
}

function ExampleFields({ part, onChange }: PartFieldsProps<Extract<LessonPart, { kind: 'example' }>>) {
  const { t } = useTranslation()
  const cases = offeredCases({ from: part.stage, to: part.stage })
  return (
    <div className={styles.fields}>
      <Labelled label={t('plans:part.stage')}>
        {(id) => (
          <select
            id={id}
            value={part.stage}
            onChange={(event) => {
              const stage = STAGES.find((each) => String(each) === event.currentTarget.value) ?? part.stage
              onChange({ ...part, stage, caseId: null })
            }}
          >
            {STAGES.map((stage) => (
              <option key={stage} value={stage}>
                {stage} · {stageWords(t, stage, DEFAULT_ROUND_SETTINGS.baseColour).title}
              </option>
            ))}
          </select>
        )}
      </Labelled>
      {cases.length > 0 && (
        <Labelled label={t('plans:part.case')}>
          {(id) => (
            <select
              id={id}
              value={part.caseId ?? ''}
              onChange={({ currentTarget: { value } }) =>
                onChange({ ...part, caseId: isCaseOf(value, part.stage) ? value : null })
              }
            >
              <option value="">{t('plans:part.wholeStage')}</option>
              {cases.map((caseId) => (
                <option key={caseId} value={caseId}>
                  {t(`desk:case.${caseId}`)}
                </option>
              ))}
            </select>
          )}
        </Labelled>
      )}
      <Minutes minutes={part.minutes} onRead={(minutes) => onChange({ ...part, minutes })} />
      <Note part={part} onChange={onChange} />
    </div>
  )
}

function RoundFields({ part, onChange }: PartFieldsProps<Extract<LessonPart, { kind: 'round' }>>) {
  const { t } = useTranslation()
  return (
    <>
      <div className={styles.fields}>
        <Labelled label={t('plans:part.roundTitle')} wide>
          {(id) => (
            <input
              id={id}
              value={part.title}
              maxLength={PLAN_TITLE_LENGTH_MAX}
              autoComplete="off"
              onChange={(event) => onChange({ ...part, title: cleanTitle(event.currentTarget.value) })}
            />
          )}
        </Labelled>
        <Note part={part} onChange={onChange} />
      </div>
      <PlanRound settings={part.settings} onChange={(settings) => onChange({ ...part, settings })} />
    </>
  )
}

function Note({ part, onChange }: PartFieldsProps<LessonPart>) {
  const { t } = useTranslation()
  return (
    <Labelled label={t('plans:part.note')} wide>
      {(id) => (
        <textarea
          id={id}
          rows={3}
          value={part.note}
          maxLength={PLAN_NOTE_LENGTH_MAX}
          onChange={(event) => onChange({ ...part, note: cleanNote(event.currentTarget.value) })}
        />
      )}
    </Labelled>
  )
}

/** Whole minutes count at once; half a number is no wish yet, and is gone when the field is left. */
function Minutes({ minutes, onRead }: { minutes: number; onRead: (minutes: number) => void }) {
  const { t } = useTranslation()
  const [typed, setTyped] = useState<string | null>(null)
  return (
    <Labelled label={t('plans:part.minutes')}>
      {(id) => (
        <input
          id={id}
          className={styles.minutes}
          inputMode="numeric"
          value={typed ?? minutes}
          onChange={(event) => {
            const text = event.currentTarget.value
            const read = Number(text)
            setTyped(text)
            if (/^\s*\d+\s*$/.test(text) && 1 <= read && read <= PART_MINUTES_MAX) onRead(read)
          }}
          onBlur={() => setTyped(null)}
        />
      )}
    </Labelled>
  )
}

type LabelledProps = { label: string; wide?: boolean; children: (id: string) => ReactNode }

function Labelled({ label, wide = false, children }: LabelledProps) {
  const id = useId()
  return (
    <div className={wide ? styles.wide : undefined}>
      <label htmlFor={id}>{label}</label>
      {children(id)}
    </div>
  )
}
