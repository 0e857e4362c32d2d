/**
 * A sequence of the book inside a sentence of the coach: a trigger by its name, a short sequence item by item, a long one
 * by the stage that it is for. Pure.
 */

import type { TFunction } from 'i18next'
import type { Colour } from '../../../engine/cube/colour-scheme.ts'
import { turnKind } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { parseSequence } from '../../../engine/method/book/parse-sequence.ts'
import type { WrittenItem } from '../../../engine/method/sequence-book.ts'
import type { Stage } from '../../../engine/method/stages.ts'
import { TRIGGER_PARTS } from '../lesson/do-words.ts'
import { stageWords } from '../stage-words.ts'
import { withPrimes, writtenTurn } from '../turn-words.ts'

/** A longer row is not taken in at one reading. */
const WORDS_MAX = 6

/** A comma would be read as one of the sentence, and a quotation mark beside a prime as another prime. */
const BETWEEN = ' · '

const PARTS = {
  turnsOf: new Map(LESSON_BOOK.parts.map(({ name, turns }) => [name, turns])),
  allNames: new Set(LESSON_BOOK.parts.map(({ name }) => name)),
}

/** A sequence as a note has it: in the spelling of its book, and the stage that it is for. */
type NotedSequence = { readonly written: string | null; readonly stage: Stage }

/**
 * @param where inside a sentence, or at its beginning
 * @returns "the right trigger 2 times", "the sequence F · right trigger · F’", "the sequence for “Corners home”"
 */
export function sequenceWords(
  t: TFunction,
  { written, stage }: NotedSequence,
  baseColour: Colour,
  where: 'part' | 'Part',
): string {
  if (written === null || written === '') return t(`coach:${where}.unnamed`)
  const read = parseSequence(written, { line: 1, column: 1 }, PARTS)
  // A name that the lesson's own book does not have is said as it is written.
  const items = read.ok ? read.value.written : null
  const [only] = items ?? []
  if (items?.length === 1 && only !== undefined) {
    const side = sideOf(only)
    if (side !== null) return t(`coach:${where}.${side}`, { count: powerOf(only) })
    if (only.kind === 'turn') return writtenTurn(only.turn)
  }
  const words = items === null ? withPrimes(written) : listWords(t, items)
  return words.replaceAll(BETWEEN, ' ').split(' ').length > WORDS_MAX
    ? t(`coach:${where}.ofStage`, { stage: stageWords(t, stage, baseColour).title })
    : t(`coach:${where}.sequence`, { words })
}

function listWords(t: TFunction, items: readonly WrittenItem[]): string {
  const isLettersOnly = items.every(({ kind }) => kind === 'turn')
  return items.map((item) => itemWords(t, item)).join(isLettersOnly ? ' ' : BETWEEN)
}

function itemWords(t: TFunction, item: WrittenItem): string {
  const side = sideOf(item)
  if (side !== null) return t(`coach:item.${side}`, { count: powerOf(item) })
  switch (item.kind) {
    case 'turn':
      return turnKind(item.turn) === 're-hold'
        ? t('coach:item.reHold', { turn: writtenTurn(item.turn) })
        : writtenTurn(item.turn)
    case 'part':
      return item.name
    case 'group':
      return item.power === 1
        ? listWords(t, item.items)
        : t('coach:item.group', { count: item.power, items: listWords(t, item.items) })
  }
}

function sideOf(item: WrittenItem): 'right' | 'left' | null {
  return item.kind === 'part' ? (TRIGGER_PARTS.find(({ name }) => name === item.name)?.side ?? null) : null
}

function powerOf(item: WrittenItem): number {
  return item.kind === 'turn' ? 1 : item.power
}
