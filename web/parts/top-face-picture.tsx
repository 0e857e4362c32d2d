/**
 * The top of a cube seen from above, with a rim for the top row of each side: how a last-layer case is recognised.
 * What its stage does not look at is left dark. Decoration: the case's name stands beside it.
 */

import type { Colour } from '../../engine/cube/colour-scheme.ts'
import type { LastLayerStage } from '../../engine/method/cases.ts'
import colourStyles from '../cube/sticker-colours.module.css'
import { coloursByHomeFace } from '../cube/sticker-colours.ts'
import { classNames } from '../ui/class-names.ts'
import { type CaseSticker, caseStickers } from './case-stickers.ts'
import styles from './top-face-picture.module.css'

type TopFacePictureProps = { stage: LastLayerStage; stickers: Uint8Array; baseColour: Colour }

const SIDE = 0.86
const RIM = 0.34

export function TopFacePicture({ stage, stickers, baseColour }: TopFacePictureProps) {
  const colours = coloursByHomeFace(baseColour)
  return (
    <svg className={styles.top} viewBox="-0.62 -0.62 4.24 4.24" aria-hidden="true">
      <rect className={styles.body} x="-0.6" y="-0.6" width="4.2" height="4.2" rx="0.3" />
      {caseStickers(stage, stickers).map((sticker) => (
        <rect
          key={sticker.index}
          {...place(sticker)}
          rx="0.12"
          className={classNames(
            styles.sticker,
            sticker.matters ? colourStyles[colours[stickers[sticker.index]]] : styles.dark,
          )}
        />
      ))}
    </svg>
  )
}

/** Column and row 0 to 2 are the face; -1 and 3 are the rim. */
function place({ column, row }: CaseSticker) {
  const width = column < 0 || column > 2 ? RIM : SIDE
  const height = row < 0 || row > 2 ? RIM : SIDE
  const x = column < 0 ? -0.4 : column > 2 ? 3.06 : column + (1 - SIDE) / 2
  const y = row < 0 ? -0.4 : row > 2 ? 3.06 : row + (1 - SIDE) / 2
  return { x, y, width, height }
}
