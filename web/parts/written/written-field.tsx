/**
 * The field for the turns. Behind it stands the same text once more, with the token that is no turn marked: a field cannot
 * mark a part of itself. Why it is none is said below, and the field is described by it.
 */

import type { RefObject } from 'react'
import { useTranslation } from 'react-i18next'
import { withPrimes } from '../turn-words.ts'
import type { WrittenFault } from './read-written.ts'
import styles from './written-field.module.css'

type WrittenFieldProps = {
  readonly id: string
  readonly helpId: string
  readonly field: RefObject<HTMLTextAreaElement | null>
  readonly label: string
  readonly text: string
  readonly fault: WrittenFault | null
  readonly onWrite: (text: string) => void
}

export function WrittenField({ id, helpId, field, label, text, fault, onWrite }: WrittenFieldProps) {
  const { t } = useTranslation()
  const select = () => {
    if (fault === null || field.current === null) return
    field.current.focus()
    field.current.setSelectionRange(fault.from, fault.to)
  }
  return (
    <div className={styles.part}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <div className={styles.paper} dir="ltr">
        <div className={styles.behind} aria-hidden="true">
          {fault === null ? text : text.slice(0, fault.from)}
          {fault !== null && <mark className={styles.bad}>{text.slice(fault.from, fault.to)}</mark>}
          {fault !== null && text.slice(fault.to)}
          {/* A last line without a letter has no height of its own. */}
          {'\n'}
        </div>
        <textarea
          ref={field}
          id={id}
          className={styles.field}
          rows={2}
          value={text}
          autoComplete="off"
          autoCapitalize="off"
          autoCorrect="off"
          spellCheck={false}
          aria-invalid={fault !== null}
          aria-describedby={helpId}
          onChange={(event) => onWrite(event.currentTarget.value)}
        />
      </div>
      <p id={helpId} className={fault === null ? styles.help : styles.why} aria-live="polite">
        {fault === null
          ? t('written:help')
          : t(`written:fault.${fault.kind}`, {
              token: withPrimes(fault.token),
              correct: withPrimes(fault.correct ?? ''),
            })}
        {fault !== null && fault.kind !== 'too-many' && (
          <button type="button" className={styles.goThere} onClick={select}>
            {t('written:goThere')}
          </button>
        )}
      </p>
    </div>
  )
}
