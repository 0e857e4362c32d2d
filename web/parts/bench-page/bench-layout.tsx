/** Where everything of the bench stands, on a phone and on a larger screen. Sizes follow from here. */

import type { ReactNode } from 'react'
import { useTranslation } from 'react-i18next'
import { classNames } from '../../ui/class-names.ts'
import styles from './bench-layout.module.css'

type BenchLayoutProps = {
  /** What this page is, for whoever hears it; a bench when left out. */
  readonly name?: string
  readonly head: ReactNode
  readonly clock: ReactNode
  /** What somebody else has to say just now: above the head, or under the clock where there is a column for it. */
  readonly note?: ReactNode
  /** The ribbon and its figures; some words where nothing counts. Always there, so that the cube keeps its place. */
  readonly line: ReactNode
  /** Pad, triggers and tools, which know their places. */
  readonly children: ReactNode
}

export function BenchLayout({ name, head, clock, note = null, line, children }: BenchLayoutProps) {
  const { t } = useTranslation()
  return (
    <main className={styles.bench} aria-label={name ?? t('bench:page')}>
      <div className={styles.top}>
        <div className={classNames(styles.note, clock === null && styles.withoutClock)}>{note}</div>
        {head}
        {clock}
      </div>
      <div className={styles.line}>{line}</div>
      {children}
    </main>
  )
}
