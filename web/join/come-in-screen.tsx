/**
 * The student's way in: a room code, then what the door of that room asks for (a name of one's own, one from the teacher's
 * list, or none), and one button. With the code filled in by a QR code it is two actions. A refusal stands beside the field
 * that it is about, and the field takes the focus.
 */

import { type FormEvent, useEffect, useId, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Link } from 'wouter'
import { ROOM_CODE_LENGTH, readRoomCode } from '../../engine/contest/room-code.ts'
import { readStudentName } from '../../engine/contest/student-name.ts'
import type { Answer } from '../../engine/wire/from-browser.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Door } from '../../engine/wire/views.ts'
import type { JoinWish } from '../live/bench-live.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Button } from '../ui/button.tsx'
import { classNames } from '../ui/class-names.ts'
import { ThemeChoice } from '../ui/theme-choice.tsx'
import { AskToMove } from './ask-to-move.tsx'
import { CodeField } from './code-field.tsx'
import styles from './come-in-screen.module.css'
import { FieldWords, type Refused } from './field-words.tsx'
import { nameOnButton } from './name-on-button.ts'
import { makeNickname, pickInBrowser } from './nickname.ts'
import { PickName } from './pick-name.tsx'
import { type RefusedField, refusedField } from './refused-field.ts'
import { TypeName } from './type-name.tsx'
import { codeInPastedText } from './typed-code.ts'
import { useDoor } from './use-door.ts'

type ComeInScreenProps = {
  /** The code of the address, when the page was opened by a QR code or a link. */
  readonly codeInAddress: string | null
  readonly askDoor: (code: string) => Promise<Answer<Door>>
  /** Answers null when the student is seated, or waits at the door. */
  readonly join: (wish: JoinWish) => Promise<Refusal | null>
  /** The teacher has not opened the door. */
  readonly turnedAway: boolean
}

/** What is known of the name: typed, or picked from the list. */
type Named = { readonly name?: string; readonly pupilId?: string }

export function ComeInScreen({ codeInAddress, askDoor, join, turnedAway }: ComeInScreenProps) {
  const { t } = useTranslation()
  const ids = { code: useId(), codeHelp: useId() }
  const codeField = useRef<HTMLInputElement>(null)
  const nameField = useRef<HTMLInputElement>(null)
  const [letters, setLetters] = useState(() => codeInPastedText(codeInAddress ?? ''))
  const [name, setName] = useState(() => makeNickname(t, pickInBrowser))
  const [pupilId, setPupilId] = useState<string | null>(null)
  const [refused, setRefused] = useState<Refused | null>(null)
  const [taken, setTaken] = useState<(Named & { readonly shown: string }) | null>(null)
  const [busy, setBusy] = useState(false)
  const code = letters.length < ROOM_CODE_LENGTH ? null : readRoomCode(letters)
  const { door, lookAgain } = useDoor(code, askDoor)
  const way = door?.names ?? 'typed'
  const picked = door?.pupils.find((pupil) => pupil.pupilId === pupilId) ?? null

  useEffect(() => {
    // A keyboard that pops up by itself hides half a phone, so only a page with a real one starts in the field.
    if (codeInAddress === null && window.matchMedia('(pointer: fine)').matches) codeField.current?.focus()
  }, [codeInAddress])

  const refuse = (field: RefusedField, words: string) => {
    setRefused({ field, words })
    if (field === 'code') codeField.current?.focus()
    if (field === 'name') nameField.current?.focus()
  }
  const forgive = (field: RefusedField) => {
    if (refused?.field === field) setRefused(null)
  }

  const knock = async (wish: Named & { readonly moves?: boolean }, shown: string) => {
    setRefused(null)
    setTaken(null)
    setBusy(true)
    const refusal = await join({ code: letters, ...wish })
    setBusy(false)
    if (refusal === null) return
    lookAgain()
    const isTaken = refusal.code === 'name/taken'
    if (isTaken) setTaken({ ...wish, shown })
    // A picked name is nobody's to change.
    const words = isTaken && way === 'roster' ? t('join:pickedIsHere', { name: shown }) : refusalWords(t, refusal)
    refuse(refusedField(refusal.code), words)
  }

  const goIn = (event: FormEvent) => {
    event.preventDefault()
    if (busy) return
    if (letters.length < ROOM_CODE_LENGTH) return refuse('code', t('join:codeIncomplete'))
    if (code === null) return refuse('code', t('join:codeImpossible'))
    if (way === 'given') return void knock({}, '')
    if (way === 'roster') {
      if (picked === null) return refuse('name', t('join:pickFirst'))
      return void knock({ pupilId: picked.pupilId }, picked.name)
    }
    const read = readStudentName(name)
    if (!read.ok) return refuse('name', refusalWords(t, read.error))
    void knock({ name: read.value }, read.value)
  }

  const shownName = nameOnButton({
    way,
    typed: name,
    picked: picked?.name ?? null,
    refusedField: refused?.field ?? null,
  })
  const askToMove = taken !== null && (
    <AskToMove
      name={taken.shown}
      onAsk={() => {
        const { shown, ...wish } = taken
        void knock({ ...wish, moves: true }, shown)
      }}
    />
  )
  return (
    <main className={styles.page}>
      <form className={styles.form} onSubmit={goIn} noValidate>
        <header className={styles.head}>
          <h1>{t('join:title')}</h1>
          <ThemeChoice />
        </header>
        {turnedAway && <p className={styles.notice}>{t('join:turnedAway')}</p>}

        <div className={styles.part}>
          <label className={styles.label} htmlFor={ids.code}>
            {t('join:roomCode')}
          </label>
          <CodeField
            id={ids.code}
            field={codeField}
            letters={letters}
            refused={refused?.field === 'code'}
            describedBy={ids.codeHelp}
            onChange={(next) => {
              setLetters(next)
              setPupilId(null)
              forgive('code')
            }}
          />
          <FieldWords id={ids.codeHelp} field="code" refused={refused} help={t('join:roomCodeHelp')} />
        </div>

        {way === 'typed' && (
          <TypeName
            field={nameField}
            name={name}
            refused={refused}
            onChange={(next) => {
              setName(next)
              setTaken(null)
              forgive('name')
            }}
            onAnother={() => {
              setName(makeNickname(t, pickInBrowser))
              setTaken(null)
              forgive('name')
            }}
          />
        )}
        {way === 'roster' && door !== null && (
          <PickName
            pupils={door.pupils}
            picked={pupilId}
            refused={refused}
            onPick={(next) => {
              setPupilId(next)
              setTaken(null)
              forgive('name')
            }}
          />
        )}
        {way === 'given' && <p className={styles.given}>{t('join:nameIsGiven')}</p>}
        {way !== 'roster' && askToMove}

        <div className={classNames(styles.go, way === 'roster' && styles.stays)}>
          <FieldWords field="page" refused={refused} help="" />
          {way === 'roster' && (
            <>
              <FieldWords field="name" refused={refused} help="" />
              {askToMove}
            </>
          )}
          <Button type="submit" look="accent" size="large" wide aria-disabled={busy}>
            <span className={styles.goWords}>
              {busy ? t('join:goingIn') : shownName === null ? t('join:goIn') : t('join:goInAs', { name: shownName })}
            </span>
          </Button>
          <Link href="/practice" className={styles.alone}>
            {t('practice:link')}
          </Link>
        </div>
      </form>
    </main>
  )
}
