/**
 * Par as a bar of ink through all lanes, with a tab in the ruler. The best known way, which is not proven, is dashed and
 * its tab is an outline. Heard from the words beside the lanes.
 */

import { type CSSProperties, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ParView } from '../../../engine/wire/views.ts'
import { classNames } from '../../ui/class-names.ts'
import styles from './par-bar.module.css'
import type { ParMark } from './par-mark.ts'

type ParBarProps = {
  par: ParView
  mark: ParMark
  words: string
  /** Whether the bar is drawn before the reader's eyes, from the ruler down; a page that has just been opened shows it done. */
  isNews: boolean
}

export function ParBar({ par, mark, words, isNews }: ParBarProps) {
  const [isDrawn] = useState(isNews)
  const { atSquares, tab } = mark
  const place = { left: tab.fromPx, width: tab.toPx - tab.fromPx }
  return (
    <div
      className={classNames(styles.par, par.proven ? styles.proven : styles.bestKnown, isDrawn && styles.drawn)}
      aria-hidden="true"
    >
      {atSquares !== null && <i className={styles.line} style={{ '--n': atSquares } as CSSProperties} />}
      <b className={styles.tab} style={place}>
        {words}
      </b>
    </div>
  )
}

/** @returns what the tab says; an arrow when par lies further right than the ruling goes */
export function useTabWords(par: ParView | null, nSquares: number): string {
  const { t } = useTranslation()
  if (par === null) return ''
  const words = t(par.proven ? 'board:par.tab' : 'board:par.tabBestKnown', { turns: par.turns })
  return par.turns > nSquares ? `${words} →` : words
}
