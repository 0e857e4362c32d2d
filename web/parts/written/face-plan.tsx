/** All six sides unfolded: front in the middle, top above it, bottom below it, right and back beside it. */

import { useTranslation } from 'react-i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { FACES, type Face } from '../../../engine/cube/faces.ts'
import type { MarkStyle } from '../../cube/sticker-colours.ts'
import { FaceStickers } from './face-picture.tsx'
import styles from './face-plan.module.css'
import { lookOf } from './ready-question.ts'

/** Upper left corners, in stickers; a gap of a fifth between the sides. */
const PLACES: Readonly<Record<Face, readonly [x: number, y: number]>> = {
  U: [3.2, 0],
  L: [0, 3.2],
  F: [3.2, 3.2],
  R: [6.4, 3.2],
  B: [9.6, 3.2],
  D: [3.2, 6.4],
}

type FacePlanProps = { readonly position: CubePosition; readonly baseColour: Colour; readonly marks: MarkStyle }

export function FacePlan({ position, baseColour, marks }: FacePlanProps) {
  const { t } = useTranslation()
  return (
    <svg className={styles.plan} viewBox="-.1 -.1 12.8 9.6" role="img" aria-label={t('written:setup.plan')}>
      {FACES.map((face) => {
        const [x, y] = PLACES[face]
        return (
          <FaceStickers key={face} look={lookOf(position, face)} baseColour={baseColour} marks={marks} x={x} y={y} />
        )
      })}
      <text className={styles.name} x="3" y="2.2" textAnchor="end">
        {t('common:face.U')}
      </text>
      <text className={styles.name} x="3" y="8.8" textAnchor="end">
        {t('common:face.D')}
      </text>
      <text className={styles.name} x="1.5" y="7" textAnchor="middle">
        {t('common:face.L')}
      </text>
      <text className={styles.name} x="7.9" y="7" textAnchor="middle">
        {t('common:face.R')}
      </text>
      <text className={styles.name} x="11.1" y="7" textAnchor="middle">
        {t('common:face.B')}
      </text>
    </svg>
  )
}
