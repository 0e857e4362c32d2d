/** The start in pictures: from above with front and right, over the opposite corner, and all six sides unfolded. */

import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { type Colour, colourOfFaces } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { centreAt } from '../../../engine/cube/hold.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import styles from './check-pictures.module.css'
import { FacePlan } from './face-plan.tsx'

type CheckPicturesProps = { readonly start: CubePosition; readonly baseColour: Colour; readonly marks: MarkStyle }

/** Brings the corner at the bottom back left to the top front right: bottom on top, left in front, back at the right. */
const TO_OPPOSITE_CORNER = (['x2', "y'"] as const).map(turnOf)

export function CheckPictures({ start, baseColour, marks }: CheckPicturesProps) {
  const { t } = useTranslation()
  const front = useMemo(() => stickersOf(start), [start])
  const opposite = useMemo(() => stickersOf(afterTurns(start, TO_OPPOSITE_CORNER)), [start])
  const colours = colourOfFaces(baseColour)
  const centre = (face: 'U' | 'F' | 'D') => t(`common:colour.${colours[centreAt(start, face)]}`)
  return (
    <>
      <header className={styles.head}>
        <h2>{t('written:setup.compareTitle')}</h2>
        <p>{t('written:setup.compareHold', { base: centre('D'), front: centre('F') })}</p>
      </header>
      <div className={styles.pictures}>
        <figure>
          <CubePicture
            stickers={front}
            baseColour={baseColour}
            marks={marks}
            label={t('written:setup.frontPicture')}
            className={styles.cube}
          />
          <figcaption>{t('written:setup.frontCaption')}</figcaption>
        </figure>
        <figure>
          <CubePicture
            stickers={opposite}
            baseColour={baseColour}
            marks={marks}
            label={t('written:setup.oppositePicture')}
            className={styles.cube}
          />
          <figcaption>{t('written:setup.oppositeCaption', { base: centre('D') })}</figcaption>
        </figure>
        <figure className={styles.plan}>
          <FacePlan position={start} baseColour={baseColour} marks={marks} />
          <figcaption>{t('written:setup.planCaption')}</figcaption>
        </figure>
      </div>
    </>
  )
}
