/** Yes or no, with its words beside it. */

import type { ReactNode } from 'react'
import styles from './tick-box.module.css'

type TickBoxProps = {
  checked: boolean
  onChange: (checked: boolean) => void
  disabled?: boolean
  describedBy?: string | undefined
  children: ReactNode
}

export function TickBox({ checked, onChange, disabled = false, describedBy, children }: TickBoxProps) {
  return (
    <label className={styles.label}>
      <input
        type="checkbox"
        className={styles.box}
        checked={checked}
        disabled={disabled}
        aria-describedby={describedBy}
        onChange={(event) => onChange(event.currentTarget.checked)}
      />
      <span>{children}</span>
    </label>
  )
}
