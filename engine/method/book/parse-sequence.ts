/**
 * Reads one written sequence of a book: turns as `parse-turns.ts` takes them, names of parts, and brackets; `A^3` and
 * `(R U)^3` say "three times". Keeps the spelling besides the turns.
 */

import { parseTurns } from '../../cube/parse-turns.ts'
import { type Turn, turnLetters } from '../../cube/turns.ts'
import { ok, type Result } from '../../result.ts'
import type { BookSequence, WrittenItem } from '../sequence-book.ts'
import { type BookTextFault, bookTextFault, type TextPlace } from './book-text-fault.ts'
import { BRACKET_DEPTH_MAX, POWER_MAX, SEQUENCE_TURNS_MAX } from './limits.ts'
import { partName } from './part-name.ts'

/** The parts that a sequence may use. */
export type KnownParts = {
  /** The turns of each part that stands above this line. */
  readonly turnsOf: ReadonlyMap<string, readonly Turn[]>
  /** The names of all parts of the text, those further down too. */
  readonly allNames: ReadonlySet<string>
}

/** An open bracket, or the sequence itself: what was read inside so far. */
type Level = { readonly items: WrittenItem[]; readonly turns: Turn[]; readonly openedAt: TextPlace }

/** A bracket, a closing bracket with its power, or a word. */
const TOKEN = /\(|\)(?:\^[^\s()]*)?|[^\s()]+/gu

/**
 * @param text the sequence alone; empty gives an empty sequence
 * @param at where it begins: line and column from 1
 * @returns the sequence, or the first fault in reading order
 */
export function parseSequence(
  text: string,
  at: { readonly line: number; readonly column: number },
  parts: KnownParts,
): Result<BookSequence, BookTextFault> {
  const levels: Level[] = [{ items: [], turns: [], openedAt: { ...at, token: '' } }]
  for (const { 0: token, index } of text.matchAll(TOKEN)) {
    const place = { line: at.line, column: at.column + index, token }
    // A 2 that clings to a closed bracket might mean "these turns twice", and is no part of the turn behind it.
    const isClinging = token.startsWith('2') && text[index - 1] === ')'
    const fault = isClinging ? bookTextFault('book/unknown-word', place) : readToken(levels, place, parts)
    if (fault !== undefined) return fault
  }
  const last = levels[levels.length - 1]
  if (levels.length > 1) return bookTextFault('book/lonely-bracket', last.openedAt)
  return ok({ written: last.items, turns: last.turns })
}

type Refusal = Result<never, BookTextFault> | undefined

function readToken(levels: Level[], place: TextPlace, parts: KnownParts): Refusal {
  const { token } = place
  if (token === '(') {
    if (levels.length > BRACKET_DEPTH_MAX) return bookTextFault('book/too-deep', place, BRACKET_DEPTH_MAX)
    levels.push({ items: [], turns: [], openedAt: place })
    return undefined
  }
  if (token.startsWith(')')) return closeBracket(levels, place)
  const level = levels[levels.length - 1]
  const caret = token.indexOf('^')
  const word = caret < 0 ? token : token.slice(0, caret)
  const name = partName(word)
  const partTurns = parts.turnsOf.get(name)
  if (partTurns === undefined) return readTurns(level, place, word, parts)
  const power = readPower(place, caret)
  if (!power.ok) return power
  return add(level, { kind: 'part', name, power: power.value }, partTurns, power.value, place)
}

function closeBracket(levels: Level[], place: TextPlace): Refusal {
  const inner = levels.pop()
  const outer = levels[levels.length - 1]
  if (inner === undefined || outer === undefined) return bookTextFault('book/lonely-bracket', place)
  if (inner.items.length === 0) return bookTextFault('book/empty-brackets', inner.openedAt)
  const power = readPower(place, place.token.indexOf('^'))
  if (!power.ok) return power
  return add(outer, { kind: 'group', items: inner.items, power: power.value }, inner.turns, power.value, place)
}

/** Reads a word that names no part above: turns, or a fault that says which. */
function readTurns(level: Level, place: TextPlace, word: string, parts: KnownParts): Refusal {
  if (parts.allNames.has(partName(word))) return bookTextFault('book/part-not-yet', { ...place, token: word })
  const read = parseTurns(word, SEQUENCE_TURNS_MAX)
  if (!read.ok) {
    if (read.error.code === 'cube/too-many-turns') {
      return bookTextFault('book/too-many-turns', place, SEQUENCE_TURNS_MAX)
    }
    return bookTextFault('book/unknown-word', {
      ...place,
      column: place.column + read.error.at,
      token: read.error.token,
    })
  }
  if (read.value.length === 0) return bookTextFault('book/unknown-word', place)
  if (word !== place.token) return bookTextFault('book/power-of-turns', place)
  for (const turn of read.value) {
    if (parts.allNames.has(turnLetters(turn)[0])) return bookTextFault('book/hidden-turn', place)
    const fault = add(level, { kind: 'turn', turn }, [turn], 1, place)
    if (fault !== undefined) return fault
  }
  return undefined
}

function readPower(place: TextPlace, caret: number): Result<number, BookTextFault> {
  if (caret < 0) return ok(1)
  const digits = place.token.slice(caret + 1)
  const power = /^[1-9][0-9]?$/u.test(digits) ? Number(digits) : 0
  if (1 <= power && power <= POWER_MAX) return ok(power)
  return bookTextFault(
    'book/bad-power',
    { ...place, column: place.column + caret, token: place.token.slice(caret) },
    POWER_MAX,
  )
}

/** Adds turns to a level, unless they would be too many: asked before anything is copied. */
function add(level: Level, item: WrittenItem, turns: readonly Turn[], power: number, place: TextPlace): Refusal {
  if (level.turns.length + turns.length * power > SEQUENCE_TURNS_MAX) {
    return bookTextFault('book/too-many-turns', place, SEQUENCE_TURNS_MAX)
  }
  level.items.push(item)
  for (let time = 0; time < power; time++) level.turns.push(...turns)
  return undefined
}
