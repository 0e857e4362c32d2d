/** One student on the squared sheet. The whole square opens the student. */

import { useTranslation } from 'react-i18next'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import type { StudentState } from './class-state.ts'
import styles from './student-cell.module.css'

/** Letters of a word that would be broken beside the signs. */
const LONG_WORD = 10

export function StudentCell({ student, onOpen }: { student: StudentState; onOpen: () => void }) {
  const { t } = useTranslation()
  const { seat, signs, best, turns } = student
  return (
    <li className={classNames(styles.cell, !seat.here && styles.away)}>
      <button type="button" className={styles.open} onClick={onOpen}>
        <span className={classNames(styles.name, longestWord(seat.name) >= LONG_WORD && styles.long)}>{seat.name}</span>
        <span className={styles.signs}>
          {signs.map((sign) => (
            <Sign key={sign} of={sign} label={t(`common:sign.${sign}`)} />
          ))}
        </span>
        <span className={styles.turns}>
          {t('common:turns', { count: turns })}
          {best !== null && <b>{t('desk:classSheet.best', { turns: best.turns })}</b>}
        </span>
        {(seat.late || seat.pretend) && (
          <span className={styles.marks}>
            {seat.late && <small>{t('common:sign.late')}</small>}
            {seat.pretend && <small className={styles.pretend}>{t('common:sign.pretend')}</small>}
          </span>
        )}
      </button>
    </li>
  )
}

function longestWord(name: string): number {
  return Math.max(...name.split(/[ -]/).map((word) => [...word].length))
}
