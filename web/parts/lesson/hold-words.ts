/** How to hold, in words: by the landmark that is seen from this side and from no other that looks different. */

import type { TFunction } from 'i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import type { CornerLook, HoldMark } from '../../../engine/method/way/hold-mark.ts'
import type { LookedForPiece } from '../../../engine/method/way/lesson-step.ts'
import { assert, neverHappens } from '../../../engine/result.ts'
import { colourWords } from '../colour-words.ts'
import { homeColourWord, pieceWords, placeWords } from './place-words.ts'

/** The landmark, and the piece that it may speak of. */
type Hold = { readonly mark: HoldMark; readonly piece: LookedForPiece | null }

export function holdWords(t: TFunction, { mark, piece }: Hold, baseColour: Colour): string {
  const colours = colourWords(t, baseColour)
  switch (mark.key) {
    case 'hold/base-down':
    case 'hold/any':
      return t(`lesson:hold.${mark.key}`, colours)
    case 'hold/line':
      return t(`lesson:hold.${mark.key}`, { along: t(`lesson:holdMore.along.${mark.along}`) })
    case 'hold/arms': {
      const [first, second] = mark.at.map((face) => t(`common:face.${face}`))
      return t(`lesson:hold.${mark.key}`, { first, second })
    }
    case 'hold/corners':
      return t(`lesson:hold.${mark.key}`, { corners: cornersWords(t, mark.corners, colours.top) })
    case 'hold/pair':
    case 'hold/finished-side':
      return t(`lesson:hold.${mark.key}`, { side: t(`lesson:side.${mark.side}`) })
    case 'hold/exchange': {
      const [first, second] = mark.at.map((place) => placeWords(t, place))
      return t(`lesson:hold.${mark.key}`, { first, second })
    }
    case 'hold/piece-above-home':
    case 'hold/piece-above-centre':
    case 'hold/piece-at':
      assert(piece !== null, `${mark.key} speaks of a piece`)
      return pieceMarkWords(t, mark, piece, baseColour)
    default:
      return neverHappens(mark, 'holdWords')
  }
}

type PieceMark = Extract<HoldMark, { home: string }>

/**
 * A piece of the top layer stands there only after the top turn, which comes later; so the words speak of its home,
 * which no top turn moves, and say where the piece comes to.
 */
function pieceMarkWords(t: TFunction, mark: PieceMark, piece: LookedForPiece, baseColour: Colour): string {
  const places = { at: placeWords(t, mark.at), home: placeWords(t, mark.home) }
  const name = pieceWords(t, piece, baseColour)
  if (mark.key === 'hold/piece-above-centre') {
    const onSide = piece.colours.find(({ facing }) => facing !== 'U')
    assert(onSide !== undefined, 'an edge has a second colour')
    const side = t(`lesson:side.${mark.at.replace('U', '')}`)
    return t(`lesson:hold.${mark.key}`, { ...places, side, colour: homeColourWord(t, onSide.colour, baseColour) })
  }
  const comesBy = mark.key === 'hold/piece-at' && mark.at.includes('U')
  return t(comesBy ? 'lesson:holdMore.pieceComesTo' : `lesson:hold.${mark.key}`, { ...places, piece: name })
}

function cornersWords(t: TFunction, corners: readonly CornerLook[], top: string): string {
  const [first, second] = corners.map(({ place, facing }) =>
    t('lesson:holdMore.corner', { place: placeWords(t, place), top, facing: t(`lesson:facing.${facing}`) }),
  )
  return second === undefined ? first : t('lesson:holdMore.bothCorners', { first, second })
}
