/** The flag at the end of a solution: its pole stands on the last line of the lane. */

import { useState } from 'react'
import { classNames } from '../../ui/class-names.ts'
import styles from './lane-flag.module.css'

export function LaneFlag({ justReached }: { justReached: boolean }) {
  const [rises] = useState(justReached)
  return (
    <svg className={classNames(styles.flag, rises && styles.rising)} viewBox="0 0 31 32" aria-hidden="true">
      <path className={styles.pole} d="M1.700 32V0" />
      <path className={styles.pennant} d="M3 .5h28l-7 9 7 9H3z" />
    </svg>
  )
}
