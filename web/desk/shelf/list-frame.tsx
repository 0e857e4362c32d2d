/** A list of what a teacher keeps, with its heading and what can be done beside it. */

import { type ReactNode, useId } from 'react'
import { classNames } from '../../ui/class-names.ts'
import styles from './list-frame.module.css'
import { useArrivalFocus } from './use-arrival-focus.ts'

type ListFrameProps = {
  readonly title: string
  readonly acts: ReactNode
  /** The list takes the place of one that was open, and the focus with it. */
  readonly comesBack: boolean
  readonly className?: string | undefined
  readonly children: ReactNode
}

export function ListFrame({ title, acts, comesBack, className, children }: ListFrameProps) {
  const id = useId()
  const section = useArrivalFocus<HTMLElement>(comesBack)
  return (
    <section ref={section} tabIndex={-1} className={classNames(styles.list, className)} aria-labelledby={id}>
      <header className={styles.head}>
        <h2 id={id}>{title}</h2>
        <div className={styles.acts}>{acts}</div>
      </header>
      {children}
    </section>
  )
}
