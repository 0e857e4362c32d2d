/** One student, opened: what there is to know, another name, or out of the room. */

import { type FormEvent, useId, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../../engine/contest/ids.ts'
import { nameKey, readStudentName } from '../../../engine/contest/student-name.ts'
import type { Refusal } from '../../../engine/wire/refusal.ts'
import { refusalWords } from '../../parts/refusal-words.ts'
import { AskFirst } from '../../ui/ask-first.tsx'
import { Button } from '../../ui/button.tsx'
import { formatClock } from '../../ui/clock-face.tsx'
import { Sheet } from '../../ui/sheet.tsx'
import { Sign } from '../../ui/signs.tsx'
import styles from './student-sheet.module.css'
import type { StudentState } from './wall-students.ts'

type StudentSheetProps = {
  student: StudentState
  /** Names of the others in the room. */
  otherNames: readonly string[]
  onRename: (id: SeatId, name: string) => void
  onRemove: (id: SeatId) => void
  onClose: () => void
}

export function StudentSheet({ student, otherNames, onRename, onRemove, onClose }: StudentSheetProps) {
  const { t } = useTranslation()
  const [asksToRemove, setAsksToRemove] = useState(false)
  const { seat, turns, tryNumber, best, signs } = student
  if (asksToRemove) {
    return (
      <AskFirst
        title={t('desk:student.removeAsk', { name: seat.name })}
        sentence={t('desk:student.removeHelp')}
        yes={t('desk:student.remove')}
        onYes={() => onRemove(seat.seatId)}
        onClose={onClose}
      />
    )
  }
  return (
    <Sheet title={seat.name} onClose={onClose}>
      {signs.length > 0 && (
        <ul className={styles.signs}>
          {signs.map((sign) => (
            <li key={sign}>
              <Sign of={sign} />
              {t(`common:sign.${sign}`)}
            </li>
          ))}
        </ul>
      )}
      <dl className={styles.figures}>
        <div>
          <dt>{t('desk:student.turnsNow')}</dt>
          <dd>{turns}</dd>
        </div>
        <div>
          <dt>{t('desk:student.tries')}</dt>
          <dd>{tryNumber}</dd>
        </div>
        <div>
          <dt>{t('desk:student.bestTry')}</dt>
          <dd>{best === null ? '–' : best.turns}</dd>
          {best !== null && <dd className={styles.moment}>{formatClock(best.momentMs, 'up')}</dd>}
        </div>
      </dl>
      <RenameStudent
        name={seat.name}
        otherNames={otherNames}
        onRename={(name) => onRename(seat.seatId, name)}
        onDone={onClose}
      />
      <div>
        <Button look="quiet" icon="cross" onClick={() => setAsksToRemove(true)}>
          {t('desk:student.remove')}
        </Button>
      </div>
    </Sheet>
  )
}

function RenameStudent({
  name,
  otherNames,
  onRename,
  onDone,
}: {
  name: string
  otherNames: readonly string[]
  onRename: (name: string) => void
  onDone: () => void
}) {
  const { t } = useTranslation()
  const ids = { field: useId(), words: useId() }
  const [typed, setTyped] = useState(name)
  const [refusal, setRefusal] = useState<string | null>(null)
  const field = useRef<HTMLInputElement>(null)
  const refuse = (why: Refusal) => {
    setRefusal(refusalWords(t, why))
    field.current?.focus()
  }
  const rename = (event: FormEvent) => {
    event.preventDefault()
    const read = readStudentName(typed)
    if (!read.ok) return refuse(read.error)
    // Said here, beside the field; the server would say it when the dialog is gone.
    if (otherNames.some((other) => nameKey(other) === nameKey(read.value))) return refuse({ code: 'name/taken' })
    if (read.value !== name) onRename(read.value)
    onDone()
  }
  return (
    <form className={styles.rename} onSubmit={rename}>
      <label htmlFor={ids.field}>{t('desk:student.name')}</label>
      <div className={styles.row}>
        <input
          ref={field}
          id={ids.field}
          value={typed}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={refusal !== null}
          aria-describedby={ids.words}
          onChange={(event) => {
            setTyped(event.currentTarget.value)
            setRefusal(null)
          }}
        />
        <Button type="submit">{t('desk:student.rename')}</Button>
      </div>
      <p id={ids.words} className={styles.refusal} aria-live="assertive">
        {refusal}
      </p>
    </form>
  )
}
