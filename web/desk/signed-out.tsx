/** The desk without a key: one sentence says how to get in. */

import { useTranslation } from 'react-i18next'
import styles from './signed-out.module.css'

/** @param reason why a link did not open the desk, when one was tried */
export function SignedOut({ reason }: { reason: string | null }) {
  const { t } = useTranslation()
  return (
    <main className={styles.page}>
      <h1>{t(reason === null ? 'desk:signedOut.title' : 'desk:linkRefused')}</h1>
      {reason !== null && <p className={styles.reason}>{reason}</p>}
      <p className={styles.sentence}>{t('desk:signedOut.sentence')}</p>
      <p className={styles.more}>{t('desk:signedOut.more')}</p>
    </main>
  )
}
