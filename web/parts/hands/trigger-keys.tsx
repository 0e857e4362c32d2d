/**
 * The two triggers under the two hands, mirror images. Each carries the bar of four squares with its cut corner, so that
 * it is seen beforehand that it costs four.
 */

import { memo } from 'react'
import { useTranslation } from 'react-i18next'
import type { Turn } from '../../../engine/cube/turns.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'
import { classNames } from '../../ui/class-names.ts'
import { TriggerBar } from '../ribbon/trigger-bar.tsx'
import { writtenTurn } from '../turn-words.ts'
import styles from './trigger-keys.module.css'

export const TRIGGERS = { left: LEFT_TRIGGER, right: RIGHT_TRIGGER } as const
const SIDES = ['left', 'right'] as const

type TriggerKeysProps = {
  readonly off: boolean
  /** On a phone the triggers make room for the re-hold pad. */
  readonly aside: boolean
  readonly onTrigger: (turns: readonly Turn[]) => void
}

export const TriggerKeys = memo(function TriggerKeys({ off, aside, onTrigger }: TriggerKeysProps) {
  const { t } = useTranslation()
  return SIDES.map((side) => (
    <button
      key={side}
      type="button"
      className={classNames(styles.trigger, styles[side], aside && styles.aside)}
      aria-disabled={off}
      onClick={() => !off && onTrigger(TRIGGERS[side])}
    >
      <span className={styles.name}>{t(`bench:triggers.${side}`)}</span>
      <TriggerBar side={side} />
      <span className={styles.turns} dir="ltr">
        {TRIGGERS[side].map(writtenTurn).join(' ')}
      </span>
    </button>
  ))
})
