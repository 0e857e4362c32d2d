/** What the ranking's lanes cannot say: who had hints or nudges, whose turns came in later, who played on a real cube. */

import { useTranslation } from 'react-i18next'
import type { Lane } from '../../../engine/contest/rank-board.ts'
import styles from './foot-notes.module.css'

export function FootNotes({ lanes }: { readonly lanes: readonly Lane[] }) {
  const { t } = useTranslation()
  const noted = lanes.filter(({ notes }) => notes !== null)
  if (noted.length === 0) return null
  return (
    <ul className={styles.notes} aria-label={t('board:notes.title')}>
      {noted.map((lane) => (
        <li key={lane.seatId}>
          <b>{lane.name}</b> {laneNoteWords(t, lane)}
        </li>
      ))}
    </ul>
  )
}

/** @returns the notes of one lane in words, with commas between; empty when there are none */
export function laneNoteWords(t: ReturnType<typeof useTranslation>['t'], { notes }: Pick<Lane, 'notes'>): string {
  if (notes === null) return ''
  const { nHints, hintLevel, nHintsBefore, nTriesHelped, nNudges, kept, written, turnsAfterEnd } = notes
  const words = [
    ...(nHints > 0 ? [t('board:notes.hints', { count: nHints, level: hintLevel })] : []),
    ...(nHintsBefore > 0
      ? [t(nTriesHelped === 1 ? 'board:notes.hintsInATry' : 'board:notes.hintsInTries', { count: nHintsBefore })]
      : []),
    ...(nNudges > 0 ? [t('board:notes.nudges', { count: nNudges })] : []),
    ...(written ? [t('board:notes.written')] : []),
    ...(kept ? [t('board:notes.kept')] : []),
    ...(turnsAfterEnd !== null ? [t('board:notes.afterEnd', { count: turnsAfterEnd })] : []),
  ]
  return words.join(', ')
}
