/** Those who are in the class. A name is changed in its place; one taken out can be brought back. */

import { useEffect, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Pupil } from '../../../engine/contest/rosters/class-roster.ts'
import { nameKey, readStudentName } from '../../../engine/contest/student-name.ts'
import { refusalWords } from '../../parts/refusal-words.ts'
import { Button } from '../../ui/button.tsx'
import { Notice } from '../../ui/notice.tsx'
import styles from './pupil-list.module.css'

type PupilListProps = { pupils: readonly Pupil[]; onChange: (pupils: readonly Pupil[]) => void }

export function PupilList({ pupils, onChange }: PupilListProps) {
  const { t } = useTranslation()
  const [renames, setRenames] = useState<string | null>(null)
  const [removed, setRemoved] = useState<{ readonly pupil: Pupil; readonly at: number } | null>(null)
  const [focusAt, setFocusAt] = useState<number | null>(null)
  const list = useRef<HTMLUListElement>(null)

  // What had the focus is gone: the row that took its place has it next.
  useEffect(() => {
    if (focusAt === null) return
    const row = list.current?.children[Math.min(focusAt, pupils.length - 1)]
    row?.querySelector<HTMLButtonElement>('button')?.focus()
    setFocusAt(null)
  }, [focusAt, pupils.length])

  return (
    <section className={styles.pupils}>
      <h3>
        {t('classes:pupil.inClass')} <span>{t('classes:pupils', { count: pupils.length })}</span>
      </h3>
      <ul ref={list} className={styles.list}>
        {pupils.map((pupil, index) => (
          <li key={pupil.pupilId} className={styles.pupil}>
            {renames === pupil.pupilId ? (
              <RenamePupil
                pupil={pupil}
                others={pupils.filter((other) => other !== pupil)}
                onDone={(name) => {
                  if (name !== pupil.name) {
                    onChange(pupils.map((each) => (each === pupil ? { ...pupil, name } : each)))
                  }
                  setRenames(null)
                  setFocusAt(index)
                }}
              />
            ) : (
              <>
                <span className={styles.name}>{pupil.name}</span>
                <Button
                  look="quiet"
                  aria-label={t('classes:pupil.renameThis', { name: pupil.name })}
                  onClick={() => setRenames(pupil.pupilId)}
                >
                  {t('classes:pupil.rename')}
                </Button>
                <Button
                  look="quiet"
                  aria-label={t('classes:pupil.removeThis', { name: pupil.name })}
                  onClick={() => {
                    onChange(pupils.filter((other) => other !== pupil))
                    setRemoved({ pupil, at: index })
                    setFocusAt(index)
                  }}
                >
                  {t('classes:pupil.remove')}
                </Button>
              </>
            )}
          </li>
        ))}
      </ul>
      <Notice>
        {removed !== null && (
          <>
            {t('classes:pupil.removed', { name: removed.pupil.name })}
            <Button
              look="quiet"
              onClick={() => {
                onChange([...pupils.slice(0, removed.at), removed.pupil, ...pupils.slice(removed.at)])
                setRemoved(null)
                setFocusAt(removed.at)
              }}
            >
              {t('classes:pupil.bringBack')}
            </Button>
          </>
        )}
      </Notice>
    </section>
  )
}

type RenamePupilProps = { pupil: Pupil; others: readonly Pupil[]; onDone: (name: string) => void }

function RenamePupil({ pupil, others, onDone }: RenamePupilProps) {
  const { t } = useTranslation()
  const [typed, setTyped] = useState(pupil.name)
  const [refusal, setRefusal] = useState<string | null>(null)
  const field = useRef<HTMLInputElement>(null)
  useEffect(() => field.current?.select(), [])
  const done = () => {
    const read = readStudentName(typed)
    const isTaken = read.ok && others.some(({ name }) => nameKey(name) === nameKey(read.value))
    if (read.ok && !isTaken) return onDone(read.value)
    setRefusal(isTaken ? t('classes:inClassAlready') : refusalWords(t, read.ok ? { code: 'name/taken' } : read.error))
    field.current?.focus()
  }
  return (
    <form
      className={styles.rename}
      onSubmit={(event) => {
        event.preventDefault()
        done()
      }}
      onKeyDown={(event) => event.key === 'Escape' && onDone(pupil.name)}
    >
      <input
        ref={field}
        // biome-ignore lint/a11y/noAutofocus: the button that was pressed has become this field.
        autoFocus
        aria-label={t('classes:pupil.name')}
        aria-invalid={refusal !== null}
        aria-describedby={`refusal-${pupil.pupilId}`}
        value={typed}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => {
          setTyped(event.currentTarget.value)
          setRefusal(null)
        }}
      />
      <Button type="submit">{t('classes:pupil.done')}</Button>
      <p id={`refusal-${pupil.pupilId}`} aria-live="assertive">
        {refusal}
      </p>
    </form>
  )
}
