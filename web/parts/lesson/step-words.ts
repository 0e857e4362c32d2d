/**
 * A step of the lesson way in four sentences: what to look for, how to hold, what to do, why. Each makes sense without
 * the others, so that a hint can stop after any of them. Pure.
 */

import type { TFunction } from 'i18next'
import { type Colour, colourOfFaces } from '../../../engine/cube/colour-scheme.ts'
import type { LookFor, Why } from '../../../engine/method/way/lesson-step.ts'
import { neverHappens } from '../../../engine/result.ts'
import type { WayStepView } from '../../../engine/wire/views.ts'
import { colourWords } from '../colour-words.ts'
import { stageWords } from '../stage-words.ts'
import { doWords } from './do-words.ts'
import { holdWords } from './hold-words.ts'
import { pieceWords, placeWords } from './place-words.ts'

export type StepWords = { readonly look: string; readonly hold: string; readonly do: string; readonly why: string }

/** @param step of the lesson way, as it is sent @param baseColour colour of the round's first layer */
export function stepWords(t: TFunction, step: Omit<WayStepView, 'nSteps'>, baseColour: Colour): StepWords {
  const { lookFor, mark } = step
  const piece = 'piece' in lookFor ? lookFor.piece : null
  const look = lookWords(t, lookFor, baseColour)
  return {
    look: step.isRepair ? `${t('lesson:repair')} ${look}` : look,
    hold: holdWords(t, { mark, piece }, baseColour),
    do: doWords(t, step.do),
    why: whyWords(t, step, baseColour),
  }
}

function lookWords(t: TFunction, lookFor: LookFor, baseColour: Colour): string {
  const colours = colourWords(t, baseColour)
  if (!('piece' in lookFor) || lookFor.piece === null) return t(`lesson:look.${lookFor.key}`, colours)
  const { piece } = lookFor
  const base = piece.colours.find(({ colour }) => colourOfFaces(baseColour)[colour] === baseColour)
  return t(`lesson:look.${lookFor.key}`, {
    ...colours,
    piece: pieceWords(t, piece, baseColour),
    at: placeWords(t, piece.at),
    facing: base === undefined ? '' : t(`lesson:facing.${base.facing}`),
  })
}

type Reason = Pick<WayStepView, 'stage' | 'lookFor'> & { readonly why: Why }

function whyWords(t: TFunction, { why, stage, lookFor }: Reason, baseColour: Colour): string {
  const key = `lesson:why.${why.key}`
  switch (why.key) {
    case 'why/base-belongs-down':
      return t(key, colourWords(t, baseColour))
    case 'why/fewer-sequences':
      return t(key)
    case 'why/piece-home':
    case 'why/piece-out':
    case 'why/piece-nearer':
      return t(key, {
        piece: 'piece' in lookFor && lookFor.piece !== null ? pieceWords(t, lookFor.piece, baseColour) : '',
      })
    case 'why/stage-done':
      return t(key, { stage: stageWords(t, stage, baseColour).short })
    case 'why/case-becomes':
      return t(key, { case: t(`desk:case.${why.caseId}`) })
    default:
      return neverHappens(why, 'whyWords')
  }
}
