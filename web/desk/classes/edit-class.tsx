/** One class, open: its title, those who are in it, and a field for more names. Kept only when the teacher says so. */

import { nanoid } from 'nanoid'
import { useId, useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ClassRoster, Pupil } from '../../../engine/contest/rosters/class-roster.ts'
import { formatRosterCsv } from '../../../engine/contest/rosters/format-roster.ts'
import { ROSTER_TITLE_LENGTH_MAX } from '../../../engine/contest/rosters/limits.ts'
import { readRoster } from '../../../engine/contest/rosters/read-roster.ts'
import type { ColumnChoice } from '../../../engine/contest/rosters/roster-columns.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { cleanTitle } from '../plans/change-plan.ts'
import { saveTextFile } from '../plans/save-text-file.ts'
import { useArrivalFocus } from '../plans/use-arrival-focus.ts'
import { AddNames } from './add-names.tsx'
import styles from './edit-class.module.css'
import { PupilList } from './pupil-list.tsx'

type EditClassProps = {
  roster: ClassRoster
  onKeep: (roster: ClassRoster) => void
  /** Null for a class that is not kept yet. */
  onRemove: (() => void) | null
  onLeave: () => void
}

const PUPIL_ID_LENGTH = 12

export function EditClass({ roster, onKeep, onRemove, onLeave }: EditClassProps) {
  const { t } = useTranslation()
  const titleId = useId()
  const section = useArrivalFocus<HTMLElement>()
  const [title, setTitle] = useState(roster.title)
  const [pupils, setPupils] = useState(roster.pupils)
  const [text, setText] = useState('')
  const [column, setColumn] = useState<ColumnChoice | null>(null)
  const [asks, setAsks] = useState<'leave' | 'without' | 'remove' | null>(null)
  const inClass = useMemo(() => pupils.map(({ name }) => name), [pupils])
  const reading = useMemo(() => readRoster(text, column, inClass), [text, column, inClass])

  const hasChanged = title !== roster.title || pupils !== roster.pupils || text.trim() !== ''
  const titleOrNone = title.trim() === '' ? t('classes:untitled') : title.trim()
  const canKeep = hasChanged && pupils.length + reading.names.length > 0
  const keep = () => {
    const added = reading.names.map(({ name }): Pupil => ({ pupilId: nanoid(PUPIL_ID_LENGTH), name }))
    onKeep({ title: titleOrNone, pupils: [...pupils, ...added] })
  }
  return (
    <section ref={section} tabIndex={-1} className={styles.class} aria-label={titleOrNone}>
      <div>
        <Button look="quiet" icon="back" onClick={() => (hasChanged ? setAsks('leave') : onLeave())}>
          {t('classes:edit.back')}
        </Button>
      </div>
      <header className={styles.head}>
        <div className={styles.title}>
          <label htmlFor={titleId}>{t('classes:edit.title')}</label>
          <input
            id={titleId}
            value={title}
            maxLength={ROSTER_TITLE_LENGTH_MAX}
            placeholder={t('classes:edit.titleHelp')}
            autoComplete="off"
            onChange={(event) => setTitle(cleanTitle(event.currentTarget.value))}
          />
        </div>
        <div className={styles.acts}>
          <Button
            look="accent"
            aria-disabled={!canKeep}
            onClick={() => {
              if (!canKeep) return
              if (reading.faults.length > 0) setAsks('without')
              else keep()
            }}
          >
            {t('classes:edit.keep')}
          </Button>
          {pupils.length > 0 && (
            <Button
              look="quiet"
              onClick={() => saveTextFile(titleOrNone, 'csv', 'text/csv;charset=utf-8', formatRosterCsv({ pupils }))}
            >
              {t('classes:edit.export')}
            </Button>
          )}
          {onRemove !== null && (
            <Button look="quiet" onClick={() => setAsks('remove')}>
              {t('classes:edit.remove')}
            </Button>
          )}
        </div>
      </header>
      {pupils.length > 0 && <PupilList pupils={pupils} onChange={setPupils} />}
      <AddNames
        text={text}
        reading={reading}
        isMore={pupils.length > 0}
        inClass={inClass}
        onText={setText}
        onColumn={setColumn}
      />
      {asks === 'leave' && (
        <AskFirst
          title={t('classes:edit.leaveAsk.title')}
          sentence={t('classes:edit.leaveAsk.sentence')}
          yes={t('classes:edit.leaveAsk.yes')}
          onYes={onLeave}
          onClose={() => setAsks(null)}
        />
      )}
      {asks === 'without' && (
        <AskFirst
          title={t('classes:edit.withoutAsk.title')}
          sentence={t('classes:edit.withoutAsk.sentence', { count: reading.faults.length })}
          yes={t('classes:edit.withoutAsk.yes')}
          onYes={keep}
          onClose={() => setAsks(null)}
        />
      )}
      {asks === 'remove' && onRemove !== null && (
        <AskFirst
          title={t('classes:edit.removeAsk.title', { title: titleOrNone })}
          sentence={t('classes:edit.removeAsk.sentence', { count: roster.pupils.length })}
          yes={t('classes:edit.removeAsk.yes')}
          onYes={onRemove}
          onClose={() => setAsks(null)}
        />
      )}
    </section>
  )
}
