/** Brings the eye back to the front after looking around. There only while the eye is elsewhere. */

import { useTranslation } from 'react-i18next'
import styles from './look-back.module.css'

export function LookBack({ onLookBack }: { onLookBack: () => void }) {
  const { t } = useTranslation()
  return (
    <button type="button" className={styles.button} onClick={onLookBack}>
      <svg className={styles.icon} viewBox="0 0 24 24" aria-hidden="true">
        <path d="M4 4v16h16V4zM9.500 4v16M14.500 4v16M4 9.500h16M4 14.500h16" />
      </svg>
      <span>{t('bench:pad.lookBack')}</span>
    </button>
  )
}
