/** One class, open: its title, those who are in it, and a field for more names. Kept only when the teacher says so. */

import { nanoid } from 'nanoid'
import { useMemo, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ClassRoster, Pupil } from '../../../engine/contest/rosters/class-roster.ts'
import { formatRosterCsv } from '../../../engine/contest/rosters/format-roster.ts'
import { ROSTER_TITLE_LENGTH_MAX } from '../../../engine/contest/rosters/limits.ts'
import { readRoster } from '../../../engine/contest/rosters/read-roster.ts'
import type { ColumnChoice } from '../../../engine/contest/rosters/roster-columns.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { cleanTitle } from '../plans/change-plan.ts'
import { EditFrame } from '../shelf/edit-frame.tsx'
import { saveTextFile } from '../shelf/save-text-file.ts'
import { AddNames } from './add-names.tsx'
import styles from './edit-class.module.css'
import { PupilList } from './pupil-list.tsx'

type EditClassProps = {
  roster: ClassRoster
  onKeep: (roster: ClassRoster) => Promise<void>
  /** Null for a class that is not kept yet. */
  onRemove: (() => void) | null
  onLeave: () => void
}

const PUPIL_ID_LENGTH = 12

export function EditClass({ roster: shelved, onKeep, onRemove, onLeave }: EditClassProps) {
  const { t } = useTranslation()
  // As it was opened: the shelf may bring it anew at any time.
  const [roster] = useState(shelved)
  const isBeingKept = useRef(false)
  const [title, setTitle] = useState(roster.title)
  const [pupils, setPupils] = useState(roster.pupils)
  const [text, setText] = useState('')
  const [column, setColumn] = useState<ColumnChoice | null>(null)
  const [asks, setAsks] = useState<'without' | 'remove' | null>(null)
  const inClass = useMemo(() => pupils.map(({ name }) => name), [pupils])
  const reading = useMemo(() => readRoster(text, column, inClass), [text, column, inClass])

  const hasChanged = title !== roster.title || pupils !== roster.pupils || text.trim() !== ''
  const titleOrNone = title.trim() === '' ? t('classes:untitled') : title.trim()
  const canKeep = hasChanged && pupils.length + reading.names.length > 0
  const keep = async () => {
    if (isBeingKept.current) return
    isBeingKept.current = true
    const added = reading.names.map(({ name }): Pupil => ({ pupilId: nanoid(PUPIL_ID_LENGTH), name }))
    await onKeep({ title: titleOrNone, pupils: [...pupils, ...added] })
    isBeingKept.current = false
  }
  return (
    <EditFrame
      name={titleOrNone}
      back={t('classes:edit.back')}
      title={{
        label: t('classes:edit.title'),
        value: title,
        placeholder: t('classes:edit.titleHelp'),
        lengthMax: ROSTER_TITLE_LENGTH_MAX,
        onChange: (typed) => setTitle(cleanTitle(typed)),
      }}
      acts={
        <>
          <Button
            look="accent"
            aria-disabled={!canKeep}
            onClick={() => {
              if (!canKeep) return
              if (reading.faults.length > 0) setAsks('without')
              else void keep()
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
        </>
      }
      hasChanged={hasChanged}
      leaveAsk={{
        title: t('classes:edit.leaveAsk.title'),
        sentence: t('classes:edit.leaveAsk.sentence'),
        yes: t('classes:edit.leaveAsk.yes'),
      }}
      onLeave={onLeave}
      className={styles.class}
    >
      {pupils.length > 0 && <PupilList pupils={pupils} onChange={setPupils} />}
      <AddNames
        text={text}
        reading={reading}
        isMore={pupils.length > 0}
        inClass={inClass}
        onText={setText}
        onColumn={setColumn}
      />
      {asks === 'without' && (
        <AskFirst
          title={t('classes:edit.withoutAsk.title', { count: reading.faults.length })}
          sentence={t('classes:edit.withoutAsk.sentence', { count: reading.faults.length })}
          yes={t('classes:edit.withoutAsk.yes', { count: reading.faults.length })}
          onYes={() => void keep()}
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
    </EditFrame>
  )
}
