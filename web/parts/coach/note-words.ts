/** A note of the coach as one plain sentence: what was done, what came of it, and what to try. Pure. */

import type { TFunction } from 'i18next'
import type { Note } from '../../../engine/coach/note.ts'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { type Turn, turnName, turnQuarters } from '../../../engine/cube/turns.ts'
import { neverHappens } from '../../../engine/result.ts'
import { colourWords } from '../colour-words.ts'
import { writtenTurn } from '../turn-words.ts'
import { heldWords } from './held-words.ts'
import { sequenceWords } from './sequence-words.ts'

/** @param baseColour colour of the round's first layer @returns one sentence */
export function noteWords(t: TFunction, note: Note, baseColour: Colour): string {
  const key = `coach:note.${note.key}`
  const then = thenWords(t, note, baseColour)
  const sequence = noteSequence(t, note, baseColour, 'part')
  switch (note.key) {
    case 'coach/undone': {
      const words = { turn: writtenTurn(note.turn), turns: turnsWords(t, note.nTurns) }
      return t(note.nTurns === THERE_AND_BACK ? key : 'coach:noteMore.undoneAllRound', words)
    }
    case 'coach/two-for-one':
      return t(key, { better: writtenTurn(note.better), turns: turnsWords(t, note.nTurns) })
    case 'coach/unfinished':
      return unfinishedWords(t, note, baseColour, then)
    case 'coach/wrong-trigger': {
      const needed = note.side === 'right' ? 'left' : 'right'
      return t(key, { done: t(`coach:trigger.${note.side}`), needed: t(`coach:trigger.${needed}`), then })
    }
    case 'coach/wrong-hold':
      return note.advised.key === 'hold/any'
        ? t('coach:noteMore.heldSomehow', { held: heldWords(t, note.held, note, baseColour), then })
        : t(key, { hold: heldWords(t, note.advised, note, baseColour), then })
    case 'coach/wrong-top-turn':
      return note.advised === null
        ? t('coach:noteMore.noTopTurn', { then })
        : t(key, { topTurn: t(`lesson:topTurn.${turnName(note.advised)}`), then })
    case 'coach/wrong-sequence':
      return wrongSequenceWords(t, note, baseColour, then)
    case 'coach/too-often':
    case 'coach/too-seldom': {
      const times = (count: number) => t('coach:times', { count })
      const Sequence =
        note.side === null ? noteSequence(t, note, baseColour, 'Part') : t(`coach:Part.${note.side}`, { count: 1 })
      return t(key, { Sequence, done: times(note.nDone), needed: times(note.nAdvised), then })
    }
    case 'coach/layer-broken':
    case 'coach/layer-left-broken':
      return layerBrokenWords(t, note, baseColour, then)
    case 'coach/wrong-amount':
      return t(amountKey(note), { turn: writtenTurn(note.turn), shouldBe: writtenTurn(note.shouldBe), then })
    case 'coach/wrong-layer':
      return t(isSameLetter(note) ? 'coach:noteMore.holdChanged' : key, {
        turn: writtenTurn(note.turn),
        shouldBe: writtenTurn(note.shouldBe),
        then,
      })
    case 'coach/wrong-way':
      return t(key, { turn: writtenTurn(note.turn), shouldBe: writtenTurn(note.shouldBe), then })
    case 'coach/two-slips': {
      const [first, second] = note.slips.map((slip) => slipWords(t, slip))
      return t(key, { sequence, first, second, then })
    }
    case 'coach/turn-left-out':
    case 'coach/re-hold-left-out':
      return t(key, { shouldBe: writtenTurn(note.shouldBe), sequence, then })
    case 'coach/needless-top-turn':
      return t(key, { turn: writtenTurn(note.turn) })
    case 'coach/needless-re-hold':
      return t(key, { count: note.nReHolds })
    case 'coach/led-nowhere':
      return t(key, { turns: turnsWords(t, note.nTurns) })
    case 'coach/long-way': {
      const turns = turnsWords(t, note.nTurns)
      // Where less is said to be lost than the lesson would have saved here, the two numbers must not stand side by side.
      return note.nLessonTurns > 0 && note.costTurns === note.nTurns - note.nLessonTurns
        ? t(key, { turns, fewer: turnsWords(t, note.nLessonTurns) })
        : t('coach:noteMore.longWaySaves', { turns, fewer: turnsWords(t, note.costTurns) })
    }
    default:
      return neverHappens(note, 'noteWords')
  }
}

/** A turn and its opposite; with more of them one layer goes all the way round. */
const THERE_AND_BACK = 2

type NoteOf<Key extends Note['key']> = Extract<Note, { key: Key }>

function turnsWords(t: TFunction, count: number): string {
  return t('common:turns', { count })
}

function thenWords(t: TFunction, note: Note, baseColour: Colour): string {
  if (note.broken !== null && note.broken === note.stage) return t('coach:outcome.pieceLeft')
  if (note.broken !== null) {
    return t(note.isOpen ? 'coach:outcome.stillBroken' : 'coach:outcome.broke', {
      layer: layerWords(t, note.broken, baseColour),
    })
  }
  if (note.becomes !== null && note.becomes === note.caseId) return t('coach:outcome.sameCase')
  if (note.becomes !== null) return t('coach:outcome.otherCase', { case: t(`desk:case.${note.becomes}`) })
  if (note.isOpen) return t('coach:outcome.notYet')
  return note.costTurns > 0
    ? t('coach:outcome.tookMore', { turns: turnsWords(t, note.costTurns) })
    : t('coach:outcome.madeGood')
}

function layerWords(t: TFunction, stage: Note['stage'], baseColour: Colour): string {
  return t(`coach:layer.${stage}`, colourWords(t, baseColour))
}

function noteSequence(t: TFunction, note: Note, baseColour: Colour, where: 'part' | 'Part'): string {
  return sequenceWords(t, { written: note.sequence, stage: note.sequenceStage ?? note.stage }, baseColour, where)
}

function slipWords(t: TFunction, slip: NoteOf<'coach/two-slips'>['slips'][number]): string {
  const { kind, turn, shouldBe } = slip
  return t(`coach:slip.${kind === 'instead' && isSameLetter(slip) ? 'inAnotherHold' : kind}`, {
    turn: turn === null ? '' : writtenTurn(turn),
    shouldBe: writtenTurn(shouldBe),
  })
}

/** Another layer under the letter of the book: what the letter says depends on the hold. */
function isSameLetter({ turn, shouldBe }: { readonly turn: Turn | null; readonly shouldBe: Turn }): boolean {
  return turn === shouldBe
}

/** An unfinished sequence that is still open can be finished now. */
function unfinishedWords(t: TFunction, note: NoteOf<'coach/unfinished'>, baseColour: Colour, then: string): string {
  const Part =
    note.side === null
      ? noteSequence(t, note, baseColour, 'Part')
      : note.nth === 1
        ? t(`coach:Part.${note.side}`, { count: 1 })
        : t('coach:Part.nthTrigger', { nth: t(`coach:nth.${note.nth}`), side: t(`coach:trigger.${note.side}`) })
  const count = note.missing.length
  const turns = note.missing.map(writtenTurn).join(' ')
  return note.isOpen
    ? t('coach:noteMore.unfinishedNow', { Part, count, turns })
    : t('coach:note.coach/unfinished', { Part, missing: t('coach:missing', { count }), turns, then })
}

/** What the lesson would have done is said where it has another name than what was done. */
function wrongSequenceWords(t: TFunction, note: NoteOf<'coach/wrong-sequence'>, baseColour: Colour, then: string) {
  const Sequence = noteSequence(t, note, baseColour, 'Part')
  const advisedAs = (where: 'part' | 'Part') =>
    sequenceWords(t, { written: note.advised, stage: note.stage }, baseColour, where)
  return note.advised === '' || advisedAs('Part') === Sequence
    ? t('coach:noteMore.doesNotFit', { Sequence, then })
    : t('coach:note.coach/wrong-sequence', { Sequence, advised: advisedAs('part'), then })
}

function layerBrokenWords(
  t: TFunction,
  note: NoteOf<'coach/layer-broken' | 'coach/layer-left-broken'>,
  baseColour: Colour,
  then: string,
): string {
  const turn = writtenTurn(note.turn)
  const turns = turnsWords(t, note.costTurns)
  // A turn inside a sequence of the book.
  if (note.sequence !== null) {
    return t('coach:noteMore.slippedIn', { turn, sequence: noteSequence(t, note, baseColour, 'part'), then })
  }
  if (note.broken === null || note.broken === note.stage) {
    if (note.key === 'coach/layer-left-broken') return t('coach:noteMore.pieceStillOut', { turn })
    return t(note.costTurns > 0 ? 'coach:noteMore.pieceTaken' : 'coach:noteMore.pieceMadeGood', { turn, turns })
  }
  if (note.key === 'coach/layer-broken' && note.costTurns === 0) {
    return t('coach:noteMore.layerMadeGood', { turn, layer: layerWords(t, note.broken, baseColour) })
  }
  return t(`coach:note.${note.key}`, { turn, layer: layerWords(t, note.broken, baseColour), turns })
}

/** Half for a quarter, a quarter for half, or a quarter twice. */
function amountKey({ key, turn, shouldBe }: NoteOf<'coach/wrong-amount'>): string {
  if (isHalf(turn)) return `coach:note.${key}`
  return isHalf(shouldBe) ? 'coach:noteMore.notFarEnough' : 'coach:noteMore.cameTwice'
}

function isHalf(turn: Turn): boolean {
  return turnQuarters(turn) === 2
}
