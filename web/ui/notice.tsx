/** A line that says what just happened or what is the matter, seen and heard. Empty, it keeps its place in the page quietly. */

import type { ReactNode } from 'react'
import styles from './notice.module.css'

export function Notice({ children }: { children: ReactNode }) {
  return (
    <div className={styles.notice} role="status" aria-live="polite">
      {children !== null && children !== undefined && children !== false && (
        <div className={styles.line}>{children}</div>
      )}
    </div>
  )
}
