/** The cube as text: what stands where, face by face, and how far the goal is. For who hears it, or likes it in words. */

import { memo } from 'react'
import { useTranslation } from 'react-i18next'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { FACES } from '../../../engine/cube/faces.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { coloursByHomeFace } from '../../cube/sticker-colours.ts'
import { classNames } from '../../ui/class-names.ts'
import styles from './cube-in-words.module.css'
import { goalProgress } from './goal-progress.ts'
import { progressWords } from './words-for-turns.ts'

type CubeInWordsProps = {
  readonly position: CubePosition
  readonly baseColour: Colour
  /** The round whose goal is spoken of; null while practising. */
  readonly settings: RoundSettings | null
  readonly seen: boolean
}

export const CubeInWords = memo(function CubeInWords({ position, baseColour, settings, seen }: CubeInWordsProps) {
  const { t } = useTranslation()
  const stickers = stickersOf(position)
  const colours = coloursByHomeFace(baseColour)
  const colourAt = (index: number) => t(`common:colour.${colours[stickers[index]]}`)
  return (
    <section
      className={classNames(styles.words, seen ? styles.seen : 'visually-hidden')}
      aria-label={t('bench:words.label')}
      data-cube-in-words={seen || undefined}
    >
      {settings !== null && <p>{progressWords(t, goalProgress(position, settings), settings)}</p>}
      {FACES.map((face, index) => {
        const first = index * 9
        return (
          <div key={face} className={styles.face}>
            <h2>{t('bench:words.face', { face: t(`common:face.${face}`), colour: colourAt(first + 4) })}</h2>
            <ol>
              {[0, 3, 6].map((row) => (
                <li key={row}>
                  {t('bench:words.row', {
                    first: colourAt(first + row),
                    second: colourAt(first + row + 1),
                    third: colourAt(first + row + 2),
                  })}
                </li>
              ))}
            </ol>
          </div>
        )
      })}
    </section>
  )
})
