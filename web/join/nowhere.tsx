/** An address that leads nowhere, and the way back in. */

import { useTranslation } from 'react-i18next'
import { Link } from 'wouter'
import styles from './nowhere.module.css'

export default function Nowhere() {
  const { t } = useTranslation()
  return (
    <main className={styles.page}>
      <h1>{t('common:noSuchPage.title')}</h1>
      <p>{t('common:noSuchPage.sentence')}</p>
      <Link href="/">{t('common:noSuchPage.comeIn')}</Link>
    </main>
  )
}
