/** How the cube was held, as part of a sentence: by the landmarks with which the lesson says how to hold it. */

import type { TFunction } from 'i18next'
import type { Note } from '../../../engine/coach/note.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { HoldMark } from '../../../engine/method/way/hold-mark.ts'
import { neverHappens } from '../../../engine/result.ts'
import { colourWords } from '../colour-words.ts'
import { pieceWords, placeWords } from '../lesson/place-words.ts'

/** @returns "with the matching corners in front" */
export function heldWords(t: TFunction, mark: HoldMark, { piece }: Note, baseColour: Colour): string {
  const colours = colourWords(t, baseColour)
  const key = `coach:held.${mark.key}`
  switch (mark.key) {
    case 'hold/base-down':
    case 'hold/any':
      return t(key, colours)
    case 'hold/line':
      return t(key, { along: t(`lesson:holdMore.along.${mark.along}`) })
    case 'hold/arms': {
      const [first, second] = mark.at.map((face) => t(`common:face.${face}`))
      return t(key, { first, second })
    }
    case 'hold/corners': {
      const [first, second] = mark.corners.map(({ place, facing }) => ({
        place: placeWords(t, place),
        facing: t(`lesson:facing.${facing}`),
      }))
      if (second === undefined) {
        return t(key, { corners: t('lesson:holdMore.corner', { ...first, top: colours.top }) })
      }
      return t(first.facing === second.facing ? 'coach:heldCorners.alike' : 'coach:heldCorners.unlike', {
        first: first.place,
        second: second.place,
        top: colours.top,
        facing: first.facing,
        facingToo: second.facing,
      })
    }
    case 'hold/pair':
    case 'hold/finished-side':
      return t(key, { side: t(`lesson:side.${mark.side}`) })
    case 'hold/exchange': {
      const [first, second] = mark.at.map((place) => placeWords(t, place))
      return t(key, { first, second })
    }
    case 'hold/piece-above-home':
    case 'hold/piece-above-centre':
    case 'hold/piece-at':
      if (piece === null) return t('coach:held.hold/any')
      // In the top layer a piece stands anywhere; its home says how the cube is held.
      return t(mark.at.startsWith('U') ? 'coach:held.hold/piece-above-home' : key, {
        piece: pieceWords(t, piece, baseColour),
        at: placeWords(t, mark.at),
        home: placeWords(t, mark.home),
      })
    default:
      return neverHappens(mark, 'heldWords')
  }
}
