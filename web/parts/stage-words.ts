/** What a stage is called and what its goal asks, in the colours of the cube that is played. */

import type { TFunction } from 'i18next'
import type { Colour } from '../../engine/cube/colour-scheme.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { colourWords } from './colour-words.ts'

export type StageWords = {
  readonly title: string
  readonly short: string
  readonly sentence: string
  /** For a picture of the goal: title and sentence in one. */
  readonly picture: string
}

export function stageWords(t: TFunction, stage: Stage, baseColour: Colour): StageWords {
  const colours = colourWords(t, baseColour)
  const title = t(`common:stage.${stage}.title`, colours)
  const sentence = t(`common:stage.${stage}.sentence`, colours)
  return {
    title,
    sentence,
    short: t(`common:stage.${stage}.short`, colours),
    picture: t('common:goalPicture', { title, sentence }),
  }
}

/** "stage 4" or "stages 4 to 6". */
export function spanWords(t: TFunction, span: { readonly from: Stage; readonly to: Stage }): string {
  return span.from === span.to ? t('common:stageNumber', { stage: span.from }) : t('common:stageSpan', span)
}
