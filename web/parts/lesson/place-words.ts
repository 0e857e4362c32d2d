/** Places, pieces and sides in words: "top front right", "the white and red edge". */

import type { TFunction } from 'i18next'
import { type Colour, colourOfFaces } from '../../../engine/cube/colour-scheme.ts'
import type { Face } from '../../../engine/cube/faces.ts'
import type { LookedForPiece } from '../../../engine/method/way/lesson-step.ts'
import { assert } from '../../../engine/result.ts'

/** The twenty places, each with its faces in one order: top or bottom, front or back, right or left. */
const PLACE_KEYS = [
  ...(['UFR', 'UFL', 'UBR', 'UBL', 'DFR', 'DFL', 'DBR', 'DBL'] as const),
  ...(['UF', 'UB', 'UR', 'UL', 'DF', 'DB', 'DR', 'DL', 'FR', 'FL', 'BR', 'BL'] as const),
]
export type PlaceKey = (typeof PLACE_KEYS)[number]

/** @param name as the engine writes a place, its faces in any order: `ULB` @returns "top back left" */
export function placeWords(t: TFunction, name: string): string {
  const key = PLACE_KEYS.find((each) => each.length === name.length && [...each].every((face) => name.includes(face)))
  assert(key !== undefined, `${name} is one of the twenty places`)
  return t(`lesson:place.${key}`)
}

/** @returns "the white and red edge", "the white, red and green corner": named by its colours, wherever it is */
export function pieceWords(t: TFunction, { colours }: LookedForPiece, baseColour: Colour): string {
  const [first, second, third] = colours.map(({ colour }) => homeColourWord(t, colour, baseColour))
  return third === undefined
    ? t('lesson:piece.edge', { first, second })
    : t('lesson:piece.corner', { first, second, third })
}

/** @param home the faces of the piece's home place @returns the same for any piece, as a list names it */
export function namedPiece(t: TFunction, home: readonly Face[], baseColour: Colour): string {
  return pieceWords(
    t,
    { home: home.join(''), at: home.join(''), colours: home.map((colour) => ({ colour, facing: colour })) },
    baseColour,
  )
}

/** @returns the colour of a home face as it stands inside a sentence */
export function homeColourWord(t: TFunction, face: Face, baseColour: Colour): string {
  return t(`common:colour.${colourOfFaces(baseColour)[face]}`)
}
