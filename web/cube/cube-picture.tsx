/** A cube as a flat picture: for goals, walls, lists. What does not matter is grey and smaller. */

import { memo } from 'react'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import type { Face } from '../../engine/cube/faces.ts'
import styles from './cube-picture.module.css'
import { STICKER_PLACES } from './cube-space.ts'
import {
  FLAT_VIEW_BOXES,
  type FlatView,
  flatFace,
  flatFrame,
  flatMatrix,
  flatMirrorLines,
  flatSticker,
  SEEN_FACES,
} from './flat-drawing.ts'
import colourStyles from './sticker-colours.module.css'
import { coloursByHomeFace, type MarkStyle } from './sticker-colours.ts'
import { StickerMark } from './sticker-mark.tsx'

export type CubePictureProps = {
  /** As `stickersOf` gives them. */
  readonly stickers: Uint8Array
  readonly baseColour: Colour
  /** 54 flags; where 0 the sticker does not matter. All matter when left out. */
  readonly matters?: Uint8Array | undefined
  readonly marks?: MarkStyle | undefined
  /** As the cube is held; over a mirror where the bottom is what matters. */
  readonly view?: FlatView | undefined
  /** Stickers that a pointer rings. */
  readonly pointed?: readonly number[] | undefined
  /** The face to which the front has just gone in a re-hold: a still ghost of it. */
  readonly ghost?: Face | null | undefined
  /** What stands in words beside the picture needs no label. */
  readonly label: string
  readonly className?: string | undefined
}

export const CubePicture = memo(function CubePicture(props: CubePictureProps) {
  const { stickers, baseColour, matters, marks = 'plain', view = 'plain', pointed = NOTHING, label, className } = props
  const { ghost = null } = props
  const colours = coloursByHomeFace(baseColour)
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: it has a label, or is hidden because words beside it say the same.
    <svg
      className={`${styles.cube} ${className ?? ''}`}
      viewBox={FLAT_VIEW_BOXES[view]}
      {...(label === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
    >
      {view === 'over-mirror' && <path className={styles.mirrorLines} d={MIRROR_LINES} />}
      {SEEN_FACES[view].map((face) => (
        <polygon key={face} className={styles.body} points={flatFace(face)} />
      ))}
      {SEEN_STICKERS[view].map((place) => {
        const isShown = matters === undefined || matters[place.index] === 1
        const colour = colours[stickers[place.index]]
        return (
          <g key={place.index} className={colourStyles[isShown ? colour : 'grey']}>
            <polygon className={styles.sticker} points={isShown ? place.whole : place.small} />
            {isShown && <StickerMark colour={colour} marks={marks} transform={place.matrix} />}
            {pointed.includes(place.index) && <PointerRing transform={place.matrix} />}
          </g>
        )
      })}
      <polygon className={styles.frontLight} points={flatFace('F')} />
      <polygon className={styles.rightLight} points={flatFace('R')} />
      {ghost !== null && <Ghost face={ghost} isSeen={SEEN_FACES[view].some((face) => face === ghost)} />}
    </svg>
  )
})

const NOTHING: readonly number[] = []

/** A white ring inside a body-coloured one reads on all six colours. */
function PointerRing({ transform }: { transform: string }) {
  return (
    <g transform={transform}>
      <circle className={styles.ringDark} r="0.3" />
      <circle className={styles.ringLight} r="0.27" />
    </g>
  )
}

/** Seen through the cube, and dashed, where the face is hidden. */
function Ghost({ face, isSeen }: { readonly face: Face; readonly isSeen: boolean }) {
  const frame = flatFrame(face)
  return (
    <>
      <path className={styles.ghostDark} d={frame} />
      <path className={isSeen ? styles.ghostLight : styles.ghostThrough} d={frame} />
    </>
  )
}

// Optimisation: a wall shows thirty of these, so the geometry is written out once.
const SEEN_STICKERS = { plain: seenStickers('plain'), 'over-mirror': seenStickers('over-mirror') } as const
const MIRROR_LINES = flatMirrorLines()

function seenStickers(view: FlatView) {
  return STICKER_PLACES.filter((place) => SEEN_FACES[view].some((face) => face === place.face)).map((place) => ({
    index: place.index,
    whole: flatSticker(place, true),
    small: flatSticker(place, false),
    matrix: flatMatrix(place),
  }))
}
