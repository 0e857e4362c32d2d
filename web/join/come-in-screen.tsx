/**
 * The student's way in: a room code, a name, one button. With the code filled in by a QR code it is two actions.
 * A refusal stands beside the field that it is about, and the field takes the focus.
 */

import { type FormEvent, useEffect, useId, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { ROOM_CODE_LENGTH, readRoomCode } from '../../engine/contest/room-code.ts'
import { readStudentName } from '../../engine/contest/student-name.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { refusalWords } from '../parts/refusal-words.ts'
import { Button } from '../ui/button.tsx'
import { ThemeChoice } from '../ui/theme-choice.tsx'
import { CodeField } from './code-field.tsx'
import styles from './come-in-screen.module.css'
import { makeNickname, pickInBrowser } from './nickname.ts'
import { type RefusedField, refusedField } from './refused-field.ts'
import { codeInPastedText } from './typed-code.ts'

type ComeInScreenProps = {
  /** The code of the address, when the page was opened by a QR code or a link. */
  codeInAddress: string | null
  /** Answers null when the student is seated. */
  join: (code: string, name: string) => Promise<Refusal | null>
}

type Refused = { readonly field: RefusedField; readonly words: string }

export function ComeInScreen({ codeInAddress, join }: ComeInScreenProps) {
  const { t } = useTranslation()
  const ids = { code: useId(), codeHelp: useId(), name: useId(), nameHelp: useId() }
  const codeField = useRef<HTMLInputElement>(null)
  const nameField = useRef<HTMLInputElement>(null)
  const [letters, setLetters] = useState(() => codeInPastedText(codeInAddress ?? ''))
  const [name, setName] = useState(() => makeNickname(t, pickInBrowser))
  const [refused, setRefused] = useState<Refused | null>(null)
  const [busy, setBusy] = useState(false)

  useEffect(() => {
    // A keyboard that pops up by itself hides half a phone, so only a page with a real one starts in the field.
    if (codeInAddress === null && window.matchMedia('(pointer: fine)').matches) codeField.current?.focus()
  }, [codeInAddress])

  const refuse = (field: RefusedField, words: string) => {
    setRefused({ field, words })
    if (field === 'code') codeField.current?.focus()
    if (field === 'name') nameField.current?.focus()
  }

  const goIn = async (event: FormEvent) => {
    event.preventDefault()
    if (busy) return
    if (letters.length < ROOM_CODE_LENGTH) return refuse('code', t('join:codeIncomplete'))
    const code = readRoomCode(letters)
    if (code === null) return refuse('code', t('join:codeImpossible'))
    const read = readStudentName(name)
    if (!read.ok) return refuse('name', refusalWords(t, read.error))
    setRefused(null)
    setBusy(true)
    const refusal = await join(code, read.value)
    setBusy(false)
    if (refusal !== null) refuse(refusedField(refusal.code), refusalWords(t, refusal))
  }

  return (
    <main className={styles.page}>
      <form className={styles.form} onSubmit={(event) => void goIn(event)} noValidate>
        <header className={styles.head}>
          <h1>{t('join:title')}</h1>
          <ThemeChoice />
        </header>

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
              if (refused?.field === 'code') setRefused(null)
            }}
          />
          <FieldWords id={ids.codeHelp} field="code" refused={refused} help={t('join:roomCodeHelp')} />
        </div>

        <div className={styles.part}>
          <label className={styles.label} htmlFor={ids.name}>
            {t('join:whoAreYou')}
          </label>
          <input
            ref={nameField}
            id={ids.name}
            className={styles.nameField}
            value={name}
            autoComplete="off"
            autoCapitalize="words"
            spellCheck={false}
            enterKeyHint="go"
            aria-invalid={refused?.field === 'name'}
            aria-describedby={ids.nameHelp}
            onFocus={(event) => event.currentTarget.select()}
            onChange={(event) => {
              setName(event.currentTarget.value)
              if (refused?.field === 'name') setRefused(null)
            }}
          />
          <div className={styles.underName}>
            <FieldWords id={ids.nameHelp} field="name" refused={refused} help={t('join:nameHelp')} />
            <Button
              look="quiet"
              icon="again"
              onClick={() => {
                setName(makeNickname(t, pickInBrowser))
                if (refused?.field === 'name') setRefused(null)
              }}
            >
              {t('join:anotherName')}
            </Button>
          </div>
        </div>

        <div className={styles.go}>
          <FieldWords field="page" refused={refused} help="" />
          <Button type="submit" look="accent" size="large" wide aria-disabled={busy}>
            <span className={styles.goWords}>{busy ? t('join:goingIn') : goWords(t, name)}</span>
          </Button>
        </div>
      </form>
    </main>
  )
}

function goWords(t: ReturnType<typeof useTranslation>['t'], name: string): string {
  const trimmed = name.trim()
  return trimmed === '' ? t('join:goIn') : t('join:goInAs', { name: trimmed })
}

/** The help of a field, or in its place why it was refused; always in the page, so that a change is heard. */
function FieldWords(props: { id?: string; field: RefusedField; refused: Refused | null; help: string }) {
  const { id, field, refused, help } = props
  const isRefused = refused?.field === field
  return (
    <p id={id} className={isRefused ? styles.refusal : styles.help} aria-live="assertive">
      {isRefused ? refused.words : help}
    </p>
  )
}
