/** One side of a cube, seen straight on. Decoration: whoever shows it says in words what it shows. */

import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import colourStyles from '../../cube/sticker-colours.module.css'
import { coloursByHomeFace, type MarkStyle } from '../../cube/sticker-colours.ts'
import { StickerMark } from '../../cube/sticker-mark.tsx'
import styles from './face-picture.module.css'
import type { FaceLook } from './ready-question.ts'

type FaceStickersProps = {
  readonly look: FaceLook
  readonly baseColour: Colour
  readonly marks: MarkStyle
  /** Where the upper left corner lies, in stickers. */
  readonly x?: number
  readonly y?: number
}

/** The nine stickers with the body under them, for a picture of one side or of several. */
export function FaceStickers({ look, baseColour, marks, x = 0, y = 0 }: FaceStickersProps) {
  const colours = coloursByHomeFace(baseColour)
  return (
    <g transform={`translate(${x} ${y})`}>
      <rect className={styles.body} x="-.06" y="-.06" width="3.12" height="3.12" rx=".22" />
      {look.map((home, index) => {
        const colour = colours[home]
        const [column, row] = [index % 3, Math.floor(index / 3)]
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a sticker's place is what it is.
          <g key={index} className={colourStyles[colour]} transform={`translate(${column + 0.5} ${row + 0.5})`}>
            <rect className={styles.sticker} x="-.42" y="-.42" width=".84" height=".84" rx=".12" />
            <StickerMark colour={colour} marks={marks} />
          </g>
        )
      })}
    </g>
  )
}

export function FacePicture(props: Omit<FaceStickersProps, 'x' | 'y'>) {
  return (
    <svg className={styles.face} viewBox="-.1 -.1 3.2 3.2" aria-hidden="true">
      <FaceStickers {...props} />
    </svg>
  )
}
