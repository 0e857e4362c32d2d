/**
 * The letter or the mark on a sticker, for eyes that tell colours badly. Drawn in a unit square around 0, so that each
 * drawing can lay it into the plane of its sticker. The letters are the first letters of the colours in the reader's language.
 */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import type { MarkStyle } from './sticker-colours.ts'
import styles from './sticker-mark.module.css'

/** White has none: five marks and their absence are six. */
const MARK_PATHS: Readonly<Record<Colour, string | null>> = {
  white: null,
  yellow: 'M-.01 0h.02',
  orange: 'M-.2 .2 .2 -.2',
  green: 'M0 -.22v.44M-.22 0h.44',
  red: 'M0 -.2a.2 .2 0 1 1 -.001 0z',
  blue: 'M-.2 -.12h.4M-.2 .12h.4',
}

export function StickerMark({ colour, marks, transform }: { colour: Colour; marks: MarkStyle; transform?: string }) {
  const { t } = useTranslation()
  if (marks === 'plain') return null
  if (marks === 'letters') {
    return (
      <text className={styles.letter} y=".21" textAnchor="middle" transform={transform}>
        {t(`bench:colourLetter.${colour}`)}
      </text>
    )
  }
  const path = MARK_PATHS[colour]
  // A dot is a line of no length: only its round ends are seen, so it needs a wider stroke.
  if (path === null) return null
  return <path className={colour === 'yellow' ? styles.dot : styles.mark} d={path} transform={transform} />
}
