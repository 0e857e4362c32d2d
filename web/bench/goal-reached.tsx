/** The goal is reached: said calmly, in the place of the triggers, with the one next thing to press. */

import { useEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import { Button } from '../ui/button.tsx'
import { Sign } from '../ui/signs.tsx'
import styles from './goal-reached.module.css'

type GoalReachedProps = {
  readonly turns: number
  readonly isBest: boolean
  /** Null when the round gives one try only, or is paused. */
  readonly onStartAgain: (() => void) | null
  /** Nobody else is playing. */
  readonly isAlone?: boolean
}

export function GoalReached({ turns, isBest, onStartAgain, isAlone = false }: GoalReachedProps) {
  const { t } = useTranslation()
  const button = useRef<HTMLDivElement>(null)
  // Who turned by key stood on a key that no longer turns: the next thing to press comes to the hand.
  useEffect(() => {
    if (document.querySelector('dialog[open]') === null)
      button.current?.querySelector('button')?.focus({ preventScroll: true })
  }, [])
  const done = isAlone ? 'bench:reached.alone' : 'bench:reached.done'
  const second = onStartAgain === null ? done : isBest ? 'bench:reached.best' : 'bench:reached.again'
  return (
    <>
      <div className={styles.words} role="status">
        <Sign of="reached" className={styles.flag} />
        <p>
          <b>{t('bench:reached.title', { count: turns })}</b>
          <span>{t(second)}</span>
        </p>
      </div>
      {onStartAgain !== null && (
        <div className={styles.button} ref={button}>
          <Button look="accent" size="large" wide onClick={onStartAgain}>
            {t('bench:tools.startAgain')}
          </Button>
        </div>
      )}
    </>
  )
}
