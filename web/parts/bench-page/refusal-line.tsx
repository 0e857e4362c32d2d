/** The server said no to something: why, in one sentence, in the place of the triggers until it is read. */

import { useTranslation } from 'react-i18next'
import { Button } from '../../ui/button.tsx'
import styles from './refusal-line.module.css'

export function RefusalLine({ words, onDismiss }: { words: string; onDismiss: () => void }) {
  const { t } = useTranslation()
  return (
    <div className={styles.line} role="alert">
      <p>{words}</p>
      <Button onClick={onDismiss}>{t('bench:notice.ok')}</Button>
    </div>
  )
}
