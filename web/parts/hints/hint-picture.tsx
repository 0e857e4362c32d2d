/**
 * What a hint speaks of, shown: a case of the last layer from above, or the cube with a pointer on the piece. The words
 * beside it say the same.
 */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { stickersOf } from '../../../engine/cube/stickers.ts'
import { isLastLayerStage } from '../../../engine/method/cases.ts'
import type { LessonStep } from '../../../engine/method/way/lesson-step.ts'
import { CubePicture } from '../../cube/cube-picture.tsx'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { TopFacePicture } from '../top-face-picture.tsx'
import styles from './hint-picture.module.css'
import { pointedPicture } from './pointed-piece.ts'

type HintPictureProps = {
  readonly position: CubePosition
  readonly about: Pick<LessonStep, 'stage' | 'lookFor'>
  readonly baseColour: Colour
  readonly marks: MarkStyle
}

export function HintPicture({ position, about: { stage, lookFor }, baseColour, marks }: HintPictureProps) {
  const { t } = useTranslation()
  const pointed = pointedPicture(position, lookFor)
  if (pointed === null) {
    if (!isLastLayerStage(stage)) return null
    return (
      <div className={styles.picture} aria-hidden="true">
        <TopFacePicture stage={stage} stickers={stickersOf(position)} baseColour={baseColour} />
      </div>
    )
  }
  return (
    <figure className={styles.picture}>
      <CubePicture
        stickers={stickersOf(pointed.position)}
        baseColour={baseColour}
        marks={marks}
        view={pointed.view}
        pointed={pointed.stickers}
        label=""
      />
      {pointed.fromBehind && <figcaption>{t('hints:fromBehind')}</figcaption>}
    </figure>
  )
}
