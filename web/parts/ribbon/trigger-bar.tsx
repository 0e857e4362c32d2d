/** Four squares joined, a corner cut away: the sign of a trigger. It shows that it costs four; its name stands beside it. */

import { classNames } from '../../ui/class-names.ts'
import styles from './trigger-bar.module.css'

/** The side of a square is the `--square` of what it stands in. */
export function TriggerBar({ side }: { side: 'left' | 'right' }) {
  return (
    <span className={classNames(styles.bar, styles[side])} dir="ltr" aria-hidden="true">
      <i />
      <i />
      <i />
      <i />
    </span>
  )
}
