/**
 * The class on one squared sheet. What needs a teacher stands in the upper right corner of each square, so that the eye
 * sweeps one corner only; the line above counts the signs and shows only those students when pressed.
 */

import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { DeskView } from '../../../engine/wire/views.ts'
import { Sign } from '../../ui/signs.tsx'
import styles from './class-sheet.module.css'
import { countSign, DESK_SIGNS, type DeskSign, studentStates } from './class-state.ts'
import { StudentCell } from './student-cell.tsx'

type ClassSheetProps = { view: DeskView; onOpen: (id: SeatId) => void }

export function ClassSheet({ view, onOpen }: ClassSheetProps) {
  const { t } = useTranslation()
  const [only, setOnly] = useState<DeskSign | null>(null)
  const students = studentStates(view)
  const shown = only === null ? students : students.filter((student) => student.signs.includes(only))
  return (
    <section className={styles.class} aria-label={t('desk:classSheet.title')}>
      <div className={styles.counts}>
        {DESK_SIGNS.map((sign) => (
          <button
            key={sign}
            type="button"
            className={styles.count}
            aria-pressed={only === sign}
            onClick={() => setOnly(only === sign ? null : sign)}
          >
            <Sign of={sign} />
            <b>{countSign(students, sign)}</b>
            {t(`common:sign.${sign}`)}
          </button>
        ))}
        <p className={styles.all}>
          <b>{students.filter((student) => student.seat.here).length}</b> {t('desk:classSheet.here')}
        </p>
      </div>
      {shown.length === 0 ? (
        <p className={styles.none}>
          {t(students.length === 0 ? 'desk:classSheet.empty' : 'desk:classSheet.noneOfThese')}
        </p>
      ) : (
        <ul className={styles.sheet}>
          {shown.map((student) => (
            <StudentCell key={student.seat.seatId} student={student} onOpen={() => onOpen(student.seat.seatId)} />
          ))}
        </ul>
      )}
    </section>
  )
}
