/** How many turns this try has, and the best try so far: beside the ribbon, on the same line. */

import { useTranslation } from 'react-i18next'
import styles from './count-turns.module.css'

export function CountTurns({ turns, best }: { turns: number; best: number | null }) {
  const { t } = useTranslation()
  return (
    <div className={styles.figures}>
      <p className={styles.figure}>
        <b>{turns}</b> {t('bench:line.turns', { count: turns })}
      </p>
      {best !== null && (
        <p className={styles.figure}>
          <b>{best}</b> {t('bench:line.best')}
        </p>
      )}
    </div>
  )
}
