/** The ranked list as a table. Equal places share their figure, the next one is skipped; the own row is marked in words, too. */

import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../engine/contest/ids.ts'
import type { RankedLane } from '../../engine/contest/rank-board.ts'
import { classNames } from '../ui/class-names.ts'
import { formatClock } from '../ui/clock-face.tsx'
import { Sign } from '../ui/signs.tsx'
import styles from './ranked-list.module.css'

type RankedListProps = { readonly ranked: readonly RankedLane[]; readonly mySeatId: SeatId; readonly nParts: number }

export function RankedList({ ranked, mySeatId, nParts }: RankedListProps) {
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
            <th scope="col" className={styles.figure}>
              {t('bench:ended.timeColumn')}
            </th>
          </tr>
        </thead>
        <tbody>
          {ranked.map((lane) => (
            <tr key={lane.seatId} className={classNames(lane.seatId === mySeatId && styles.mine)}>
              <td className={styles.place}>
                {lane.place ?? <span className="visually-hidden">{t('bench:ended.noPlace')}</span>}
              </td>
              <th scope="row">{lane.seatId === mySeatId ? t('bench:ended.you', { name: lane.name }) : lane.name}</th>
              {lane.best === null ? (
                <td colSpan={2} className={styles.figure}>
                  {t('bench:ended.parts', { count: lane.progress, of: nParts })}
                </td>
              ) : (
                <>
                  <td className={styles.turns}>
                    <Sign of="reached" className={styles.flag} />
                    <b>{lane.best.turns}</b>
                  </td>
                  <td className={styles.figure}>{formatClock(lane.best.momentMs, 'up')}</td>
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
