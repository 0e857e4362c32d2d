/** Leads back to what the teacher shows, after a child has put it away. */

import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import styles from './see-showing.module.css'

export function SeeShowing({ onSee }: { readonly onSee: () => void }) {
  const { t } = useTranslation()
  return (
    <div className={styles.place} data-takes-height>
      <Button icon="projector" wide onClick={onSee}>
        {t('showing:follow.see')}
      </Button>
    </div>
  )
}
