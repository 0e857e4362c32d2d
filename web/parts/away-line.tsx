/** Says at the lower edge that the connection is away or the page is too old. Nothing else on the page moves for it. */

import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import styles from './away-line.module.css'

export function AwayLine({ away, outOfDate }: { away: boolean; outOfDate: boolean }) {
  const { t } = useTranslation()
  return (
    <div className={styles.place} role="status">
      {outOfDate ? (
        <p className={styles.line}>
          {t('common:outOfDate')}
          <Button onClick={() => window.location.reload()}>{t('common:reload')}</Button>
        </p>
      ) : (
        away && <p className={styles.line}>{t('common:away')}</p>
      )}
    </div>
  )
}
