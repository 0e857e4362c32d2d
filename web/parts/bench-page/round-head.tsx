/** Above the cube: what to do. The goal as a picture, its name, one sentence; and a line for what holds just now. */

import type { ReactNode } from 'react'
import { classNames } from '../../ui/class-names.ts'
import styles from './round-head.module.css'

type RoundHeadProps = {
  readonly over: ReactNode
  /** Par while it is shown, with what is left of `over` where there is no room for both. */
  readonly par?: { readonly words: string; readonly briefOver: string } | null
  readonly title: string
  readonly sentence: string
  /** "Paused", "no connection": stands before the sentence, and in its place where there is little room. */
  readonly state?: string | null
  readonly picture?: ReactNode
}

export function RoundHead({ over, par = null, title, sentence, state = null, picture = null }: RoundHeadProps) {
  return (
    <header className={classNames(styles.head, picture === null && styles.withoutPicture)}>
      {picture !== null && <div className={styles.picture}>{picture}</div>}
      <div className={classNames(styles.words, state !== null && par === null && styles.hasMuchToSay)}>
        {par === null ? (
          <p className={styles.over}>{over}</p>
        ) : (
          <p className={styles.over}>
            <span className={styles.long}>{over}</span>
            <span className={styles.brief}>{par.briefOver}</span> · <b>{par.words}</b>
          </p>
        )}
        <h1 className={styles.title}>{title}</h1>
        <p className={classNames(styles.sentence, state !== null && styles.standsBack)}>{sentence}</p>
        <p className={styles.state} role="status">
          {state}
        </p>
      </div>
    </header>
  )
}
