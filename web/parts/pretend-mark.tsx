/** Marks a room of simulated students wherever it is shown. */

import { useTranslation } from 'react-i18next'
import styles from './pretend-mark.module.css'

export function PretendMark() {
  const { t } = useTranslation()
  return <span className={styles.mark}>{t('board:pretend')}</span>
}
