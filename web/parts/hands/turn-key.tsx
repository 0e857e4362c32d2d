/** One key of the pad. Pressing counts at once; while it is pressed or chosen by Tab its layer is outlined on the cube. */

import type { ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import { type Turn, type TurnName, turnOf } from '../../../engine/cube/turns.ts'
import { classNames } from '../../ui/class-names.ts'
import { turnWords, writtenTurn } from '../turn-words.ts'
import styles from './turn-key.module.css'

export type TurnKeyProps = {
  readonly turn: TurnName
  readonly picture: ReactNode
  /** Half turns are quieter: they are also the label of their strip. */
  readonly quiet?: boolean
  /** `2` was pressed: a half turn is armed. */
  readonly armed?: boolean
  readonly off: boolean
  readonly onTurn: (turn: Turn) => void
  readonly onPoint?: ((turn: Turn | null) => void) | undefined
}

export function TurnKey({ turn: name, picture, quiet = false, armed = false, off, onTurn, onPoint }: TurnKeyProps) {
  const { t } = useTranslation()
  const turn = turnOf(name)
  const leave = () => onPoint?.(null)
  return (
    <button
      type="button"
      className={classNames(styles.key, quiet && styles.quiet, armed && styles.armed)}
      aria-disabled={off}
      aria-label={t('bench:pad.key', { letters: writtenTurn(turn), words: turnWords(t, turn) })}
      onClick={() => !off && onTurn(turn)}
      onPointerDown={() => !off && onPoint?.(turn)}
      onPointerUp={leave}
      onPointerLeave={leave}
      onPointerCancel={leave}
      onFocus={(event) => !off && event.currentTarget.matches(':focus-visible') && onPoint?.(turn)}
      onBlur={leave}
    >
      {picture}
      <b className={styles.letters}>{writtenTurn(turn)}</b>
    </button>
  )
}
