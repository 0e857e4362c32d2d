/** Waits until the teacher has opened the door. */

import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import styles from './at-the-door.module.css'

export function AtTheDoor({ onGiveUp }: { readonly onGiveUp: () => void }) {
  const { t } = useTranslation()
  return (
    <main className={styles.middle}>
      <div className={styles.page}>
        <h1>{t('join:door.title')}</h1>
        <p role="status">{t('join:door.sentence')}</p>
        <Button icon="back" onClick={onGiveUp}>
          {t('join:door.giveUp')}
        </Button>
      </div>
    </main>
  )
}
