/** The goal is reached: what next stands under the two hands, in the place of the triggers. */

import { useEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import styles from './practice-next.module.css'

export function PracticeNext({ onAgain, onAnother }: { onAgain: () => void; onAnother: () => void }) {
  const { t } = useTranslation()
  const another = useRef<HTMLDivElement>(null)
  // Who turned by key stood on a key that no longer turns: the next thing to press comes to the hand.
  useEffect(() => {
    if (document.querySelector('dialog[open]') === null)
      another.current?.querySelector('button')?.focus({ preventScroll: true })
  }, [])
  return (
    <>
      <div className={styles.left}>
        <Button size="large" wide onClick={onAgain}>
          {t('practice:sameAgain')}
        </Button>
      </div>
      <div className={styles.right} ref={another}>
        <Button look="accent" size="large" wide onClick={onAnother}>
          {t('practice:another')}
        </Button>
      </div>
    </>
  )
}
