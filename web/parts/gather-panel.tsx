/**
 * What a class looks up to while it comes in: two ways of equal rank, an address with a code or a camera, and who is here.
 * Sizes are parts of the screen's height, so that every projector shows the same picture.
 */

import { useTranslation } from 'react-i18next'
import type { RoomCode } from '../../engine/contest/ids.ts'
import { CodeSquares } from './code-squares.tsx'
import styles from './gather-panel.module.css'
import { PretendMark } from './pretend-mark.tsx'
import { QrPicture } from './qr-picture.tsx'
import { comeInAddress } from './room-addresses.ts'

type GatherPanelProps = {
  code: RoomCode
  /** Best first; empty when the server knows of none. */
  addresses: readonly string[]
  names: readonly string[]
  locked: boolean
  pretend: boolean
  nextRound: number
}

/** More names than this do not fit the two to four lines at the foot. */
const NAMES_MAX = 48

export function GatherPanel({ code, addresses, names, locked, pretend, nextRound }: GatherPanelProps) {
  const { t } = useTranslation()
  const address = addresses[0]
  const nMore = names.length - NAMES_MAX
  return (
    <section className={styles.panel}>
      <header className={styles.head}>
        <h1>{t('join:gather.title')}</h1>
        <div className={styles.when}>
          {pretend && <PretendMark />}
          <p>
            {locked
              ? t('join:gather.locked')
              : t(nextRound === 1 ? 'join:gather.firstRound' : 'join:gather.nextRound', { number: nextRound })}
          </p>
        </div>
      </header>

      <div className={styles.ways}>
        <div className={styles.typed}>
          <div>
            <p className={styles.label}>{t('join:gather.openAddress')}</p>
            <p className={styles.address}>{address ?? t('join:gather.noAddress')}</p>
          </div>
          <div className={styles.code}>
            <p className={styles.label}>{t('join:gather.typeCode')}</p>
            <CodeSquares code={code} />
          </div>
        </div>
        {address !== undefined && (
          <div className={styles.scanned}>
            <QrPicture
              address={comeInAddress(address, code, window.location.protocol)}
              label={t('join:gather.qrLabel', { address: comeInAddress(address, code, window.location.protocol) })}
            />
            <p className={styles.label}>{t('join:gather.orCamera')}</p>
          </div>
        )}
      </div>

      <footer className={styles.here}>
        <p className={styles.count}>
          <b>{names.length}</b> {t('join:gather.here')}
        </p>
        {names.length === 0 ? (
          <p className={styles.nobody}>{t('join:gather.nobodyYet')}</p>
        ) : (
          <ul className={styles.names}>
            {names.slice(0, NAMES_MAX).map((name) => (
              <li key={name}>{name}</li>
            ))}
            {nMore > 0 && <li className={styles.more}>{t('join:gather.andMore', { count: nMore })}</li>}
          </ul>
        )}
      </footer>
    </section>
  )
}
