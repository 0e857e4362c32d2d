/** The ranked list as a table. Equal places share their figure, the next one is skipped; the own row is marked in words, too. */

import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../engine/contest/ids.ts'
import type { RankedLane } from '../../engine/contest/rank-board.ts'
import { laneNoteWords } from '../parts/lanes/foot-notes.tsx'
import { classNames } from '../ui/class-names.ts'
import { formatClock } from '../ui/clock-face.tsx'
import { Sign } from '../ui/signs.tsx'
import styles from './ranked-list.module.css'

type RankedListProps = {
  readonly ranked: readonly RankedLane[]
  readonly mySeatId: SeatId
  readonly nParts: number
  /** Whether moments count; not where each played alone. */
  readonly hasMoments: boolean
}

export function RankedList({ ranked, mySeatId, nParts, hasMoments }: RankedListProps) {
  const { t } = useTranslation()
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls has to be in the order of Tab.
    <section className={styles.box} tabIndex={0} aria-label={t('bench:ended.list')}>
      <table className={styles.list}>
        <thead>
          <tr>
            <th scope="col">{t('bench:ended.placeColumn')}</th>
            <th scope="col">{t('bench:ended.nameColumn')}</th>
            <th scope="col" className={styles.figure}>
              {t('bench:ended.turnsColumn')}
            </th>
            {hasMoments && (
              <th scope="col" className={styles.figure}>
                {t('bench:ended.timeColumn')}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {ranked.map((lane) => (
            <tr key={lane.seatId} className={classNames(lane.seatId === mySeatId && styles.mine)}>
              <td className={styles.place}>
                {lane.place ?? <span className="visually-hidden">{t('bench:ended.noPlace')}</span>}
              </td>
              <th scope="row">
                {lane.seatId === mySeatId ? t('bench:ended.you', { name: lane.name }) : lane.name}
                {lane.notes !== null && <small className={styles.notes}>{laneNoteWords(t, lane)}</small>}
              </th>
              {lane.best === null ? (
                <td colSpan={hasMoments ? 2 : 1} className={styles.figure}>
                  {t('bench:ended.parts', { count: lane.progress, of: nParts })}
                </td>
              ) : (
                <>
                  <td className={styles.turns}>
                    <Sign of="reached" className={styles.flag} />
                    <b>{lane.best.turns}</b>
                  </td>
                  {hasMoments && <td className={styles.figure}>{formatClock(lane.best.momentMs, 'up')}</td>}
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
