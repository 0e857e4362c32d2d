/** A note of the coach as one plain sentence: what was done, and what came of it. Pure. */

import type { TFunction } from 'i18next'
import type { Note, TriggerSide } from '../../../engine/coach/note.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { neverHappens } from '../../../engine/result.ts'
import { colourWords } from '../colour-words.ts'
import { withPrimes, writtenTurn } from '../turn-words.ts'
import { heldWords } from './held-words.ts'

/** @param baseColour colour of the round's first layer @returns one sentence */
export function noteWords(t: TFunction, note: Note, baseColour: Colour): string {
  const key = `coach:note.${note.key}`
  const then = thenWords(t, note, baseColour)
  switch (note.key) {
    case 'coach/undone':
      return t(key, { turn: writtenTurn(note.turn), turns: turnsWords(t, note.nTurns) })
    case 'coach/two-for-one':
      return t(key, { better: writtenTurn(note.better), turns: turnsWords(t, note.nTurns) })
    case 'coach/unfinished':
      return t(key, {
        Part: unfinishedWords(t, note),
        missing: t('coach:missing', { count: note.missing.length }),
        then,
      })
    case 'coach/wrong-trigger': {
      const needed = note.side === 'right' ? 'left' : 'right'
      return t(key, { done: t(`coach:trigger.${note.side}`), needed: t(`coach:trigger.${needed}`), then })
    }
    case 'coach/wrong-hold':
      return t(key, { held: heldWords(t, note.held, note, baseColour), then })
    case 'coach/wrong-top-turn':
      return t(key, { sequence: sequenceWords(t, note), then })
    case 'coach/wrong-sequence': {
      const other = t(`coach:other.${note.ofStage === note.stage ? 'case' : 'stage'}`)
      return t(key, { Sequence: sequenceAtStart(t, note, null), other, then })
    }
    case 'coach/too-often':
    case 'coach/too-seldom': {
      const times = (count: number) => t('coach:times', { count })
      const Sequence = sequenceAtStart(t, note, note.side)
      return t(key, { Sequence, done: times(note.nDone), needed: times(note.nAdvised), then })
    }
    case 'coach/layer-broken':
    case 'coach/layer-left-broken':
      return t(key, {
        turn: writtenTurn(note.turn),
        layer: layerWords(t, note, baseColour),
        turns: turnsWords(t, note.costTurns),
      })
    case 'coach/wrong-way':
    case 'coach/wrong-layer':
    case 'coach/wrong-amount':
      return t(key, { turn: writtenTurn(note.turn), shouldBe: writtenTurn(note.shouldBe), then })
    case 'coach/turn-left-out':
    case 'coach/re-hold-left-out':
      return t(key, { shouldBe: writtenTurn(note.shouldBe), sequence: sequenceWords(t, note), then })
    case 'coach/needless-top-turn':
      return t(key, { turn: writtenTurn(note.turn) })
    case 'coach/needless-re-hold':
      return t(key, { count: note.nReHolds })
    case 'coach/led-nowhere':
      return t(key, { turns: turnsWords(t, note.nTurns) })
    case 'coach/long-way':
      return t(key, { turns: turnsWords(t, note.nTurns), fewer: turnsWords(t, note.nLessonTurns) })
    default:
      return neverHappens(note, 'noteWords')
  }
}

function turnsWords(t: TFunction, count: number): string {
  return t('common:turns', { count })
}

function thenWords(t: TFunction, note: Note, baseColour: Colour): string {
  if (note.broken !== null && note.broken === note.stage) return t('coach:outcome.pieceLeft')
  if (note.broken !== null) {
    return t(note.isOpen ? 'coach:outcome.stillBroken' : 'coach:outcome.broke', {
      layer: layerWords(t, note, baseColour),
    })
  }
  if (note.becomes !== null && note.becomes === note.caseId) return t('coach:outcome.sameCase')
  if (note.becomes !== null) return t('coach:outcome.otherCase', { case: t(`desk:case.${note.becomes}`) })
  return note.costTurns > 0 && !note.isOpen
    ? t('coach:outcome.tookMore', { turns: turnsWords(t, note.costTurns) })
    : t('coach:outcome.notYet')
}

function layerWords(t: TFunction, { broken, stage }: Note, baseColour: Colour): string {
  return t(`coach:layer.${broken ?? stage}`, colourWords(t, baseColour))
}

/** The sequence inside a sentence. */
function sequenceWords(t: TFunction, { sequence }: Note): string {
  return sequence === null ? t('coach:part.unnamed') : t('coach:part.sequence', { written: withPrimes(sequence) })
}

/** @param side when it is about the trigger, not about the whole sequence */
function sequenceAtStart(t: TFunction, { sequence }: Note, side: TriggerSide | null): string {
  if (side !== null) return t('coach:Part.trigger', { side: t(`coach:trigger.${side}`) })
  return sequence === null ? t('coach:Part.unnamed') : t('coach:Part.sequence', { written: withPrimes(sequence) })
}

function unfinishedWords(t: TFunction, note: Extract<Note, { key: 'coach/unfinished' }>): string {
  if (note.side === null || note.nth === 1) return sequenceAtStart(t, note, note.side)
  return t('coach:Part.nthTrigger', { nth: t(`coach:nth.${note.nth}`), side: t(`coach:trigger.${note.side}`) })
}
