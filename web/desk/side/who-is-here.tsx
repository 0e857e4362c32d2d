/** Who has come in. Each name opens the student. */

import { useTranslation } from 'react-i18next'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { SeatView } from '../../../engine/wire/views.ts'
import { classNames } from '../../ui/class-names.ts'
import { Sign } from '../../ui/signs.tsx'
import styles from './who-is-here.module.css'

type WhoIsHereProps = { seats: readonly SeatView[]; onOpen: (id: SeatId) => void }

export function WhoIsHere({ seats, onOpen }: WhoIsHereProps) {
  const { t } = useTranslation()
  const nHere = seats.filter((seat) => seat.here).length
  return (
    <section className={styles.here} aria-live="polite" aria-relevant="additions">
      <h2>
        <b>{nHere}</b> {t('desk:side.here')}
      </h2>
      {seats.length === 0 ? (
        <p className={styles.nobody}>{t('desk:side.nobody')}</p>
      ) : (
        <ul className={styles.names}>
          {seats.map((seat) => (
            <li key={seat.seatId}>
              <button
                type="button"
                className={classNames(styles.name, !seat.here && styles.away, seat.pretend && styles.pretend)}
                onClick={() => onOpen(seat.seatId)}
              >
                {seat.name}
                {!seat.here && <Sign of="away" label={t('common:sign.away')} />}
                {seat.pretend && <span className="visually-hidden">{t('common:sign.pretend')}</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
