/**
 * What to do, in words: the book's spelling read item by item, so that a trigger is said by its name and not by its
 * turns. What the lesson's own book cannot read is said as it is written.
 */

import type { TFunction } from 'i18next'
import { type Turn, turnKind, turnName, turnNamed } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { parseSequence } from '../../../engine/method/book/parse-sequence.ts'
import type { WrittenItem } from '../../../engine/method/sequence-book.ts'
import type { DoKey } from '../../../engine/method/way/lesson-step.ts'
import { triggerOf } from '../ribbon/ribbon-parts.ts'
import { withPrimes, writtenTurn } from '../turn-words.ts'

const PARTS = {
  turnsOf: new Map(LESSON_BOOK.parts.map(({ name, turns }) => [name, turns])),
  allNames: new Set(LESSON_BOOK.parts.map(({ name }) => name)),
}

/** The parts of the book that are triggers, by name, in the book's order. */
export const TRIGGER_PARTS: readonly { readonly name: string; readonly side: 'left' | 'right' }[] =
  LESSON_BOOK.parts.flatMap(({ name, turns }) => {
    const side = triggerOf(turns)
    return side === null ? [] : [{ name, side }]
  })

/** @param written a step's turns as the book spells them: `U2 A^3`; empty when nothing is turned */
export function doWords(t: TFunction, written: string): string {
  const read = parseSequence(written, { line: 1, column: 1 }, PARTS)
  if (!read.ok) return t('lesson:do.do/sequence', { sequence: withPrimes(written) })
  const items = read.value.written
  const topTurn = topTurnOf(items[0])
  if (topTurn === null) return sequenceWords(t, items)
  const first = t('lesson:do.do/top-turn', { topTurn: t(`lesson:topTurn.${topTurn}`) })
  return items.length === 1 ? first : `${first} ${sequenceWords(t, items.slice(1))}`
}

/** @returns whether a spelled step uses the part of this name */
export function usesPart(written: string, name: string): boolean {
  return written.split(/[\s()]+/u).some((word) => word.split('^')[0] === name)
}

function sequenceWords(t: TFunction, items: readonly WrittenItem[]): string {
  const [only] = items
  const key: DoKey =
    only === undefined
      ? 'do/nothing-more'
      : items.length === 1 && only.kind !== 'turn' && only.power > 1
        ? 'do/sequence-again'
        : 'do/sequence'
  return t(`lesson:do.${key}`, { sequence: listWords(t, items) })
}

function listWords(t: TFunction, items: readonly WrittenItem[]): string {
  return items.map((item) => itemWords(t, item)).join(', ')
}

function itemWords(t: TFunction, item: WrittenItem): string {
  switch (item.kind) {
    case 'turn':
      return turnKind(item.turn) === 're-hold'
        ? t('lesson:sequence.reHold', { turn: writtenTurn(item.turn) })
        : writtenTurn(item.turn)
    case 'part': {
      const side = TRIGGER_PARTS.find(({ name }) => name === item.name)?.side
      return side === undefined ? item.name : t(`lesson:sequence.${side}`, { count: item.power })
    }
    case 'group':
      return item.power === 1
        ? listWords(t, item.items)
        : t('lesson:sequence.group', { count: item.power, items: listWords(t, item.items) })
  }
}

const TOP_TURNS: readonly (Turn | undefined)[] = ['U', "U'", 'U2'].map(turnNamed)

/** A turn of the top layer at the beginning is said in words of its own, whether or not the book has it in its sequence. */
function topTurnOf(item: WrittenItem | undefined): string | null {
  return item?.kind === 'turn' && TOP_TURNS.includes(item.turn) ? turnName(item.turn) : null
}
