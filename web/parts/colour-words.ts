/** The two colours that stage words speak of, inside a sentence and at its beginning. */

import type { TFunction } from 'i18next'
import { type Colour, colourOfFaces } from '../../engine/cube/colour-scheme.ts'

export type ColourWords = { readonly base: string; readonly Base: string; readonly top: string; readonly Top: string }

export function colourWords(t: TFunction, baseColour: Colour): ColourWords {
  const topColour = colourOfFaces(baseColour).U
  return {
    base: t(`common:colour.${baseColour}`),
    Base: t(`common:colourAtStart.${baseColour}`),
    top: t(`common:colour.${topColour}`),
    Top: t(`common:colourAtStart.${topColour}`),
  }
}
