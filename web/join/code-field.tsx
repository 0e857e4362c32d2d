/**
 * Six squares for the room code, drawn behind ONE real input that is only invisible: paste, autofill, undo and screen
 * readers work as in any field.
 */

import { type RefObject, useState } from 'react'
import { ROOM_CODE_LENGTH } from '../../engine/contest/room-code.ts'
import { classNames } from '../ui/class-names.ts'
import styles from './code-field.module.css'
import { codeInPastedText, keepCodeLetters } from './typed-code.ts'

type CodeFieldProps = {
  id: string
  field: RefObject<HTMLInputElement | null>
  letters: string
  onChange: (letters: string) => void
  refused: boolean
  describedBy: string
}

/** The places of the letters, as the code is read aloud: two times three. */
const SYLLABLES = [
  [0, 1, 2],
  [3, 4, 5],
] as const

export function CodeField({ id, field, letters, onChange, refused, describedBy }: CodeFieldProps) {
  const [caret, setCaret] = useState(letters.length)
  const current = Math.min(caret, ROOM_CODE_LENGTH - 1)
  return (
    <div className={classNames(styles.field, refused && styles.refused)}>
      <div className={styles.squares} aria-hidden="true">
        {SYLLABLES.map((places) => (
          <span key={places[0]} className={styles.syllable}>
            {places.map((place) => (
              <span key={place} className={classNames(styles.square, place === current && styles.current)}>
                {letters[place] ?? ''}
              </span>
            ))}
          </span>
        ))}
      </div>
      <input
        ref={field}
        id={id}
        className={styles.input}
        value={letters}
        type="text"
        inputMode="text"
        autoCapitalize="characters"
        autoComplete="off"
        autoCorrect="off"
        spellCheck={false}
        enterKeyHint="go"
        aria-invalid={refused}
        aria-describedby={describedBy}
        onChange={(event) => onChange(keepCodeLetters(event.currentTarget.value))}
        onPaste={(event) => {
          event.preventDefault()
          onChange(codeInPastedText(event.clipboardData.getData('text')))
        }}
        onSelect={(event) => setCaret(event.currentTarget.selectionStart ?? letters.length)}
      />
    </div>
  )
}
