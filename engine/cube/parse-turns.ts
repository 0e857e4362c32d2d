/**
 * Reads written turns, leniently where nothing can be misread, and never by guessing.
 *
 * Accepted: spaces, line ends or nothing between turns; any of five characters for the prime; `R2'` and `R'2` for R2;
 * `2Rw` for Rw; the slices M E S; round brackets as mere grouping. Refused: every letter in the wrong case, every digit
 * but 2, and whatever could be read in two ways, such as `R2Rw`. The pair of this file is `format-turns.ts`.
 * Source of the notation: World Cube Association, Regulations 2024, article 12a.
 */

import { err, ok, type Result } from '../result.ts'
import { type Turn, turnNamed } from './turns.ts'

/**
 * Most turns that a text may hold. Far above any solution by hand, and enough to repeat five turns through the longest
 * order of any sequence (1,260 times); low enough to bound the work that a stranger can ask for.
 */
export const PARSED_TURNS_MAX = 10_000

/** Longest piece of text that a fault repeats, in characters. */
const TOKEN_SHOWN_MAX = 32

/** Why written turns could not be read. */
export type TurnsFault =
  /** The token names no turn. Data: the token, and the 0-based character at which it begins. Do: correct it. */
  | { readonly code: 'cube/unknown-turn'; readonly token: string; readonly at: number }
  /** Too many turns for one text. Data: how many there may be. Do: shorten it. */
  | { readonly code: 'cube/too-many-turns'; readonly max: number }

/** A word: anything between white space and brackets. Brackets are words of their own. */
const WORD = /[()]|[^\s()]+/gu

/** One turn and whatever clings to it: what precedes its letter, the letter, and all that cannot begin a turn. */
const TOKEN = /[^A-Za-z]+$|[^A-Za-z]*[A-Za-z][^URFDLBMESxyz]*/gu

/** A turn's letters, and the ways to write its amount. The primes: U+0027, U+2019, U+2032, U+0060, U+00B4. */
const SPELLING = /^(?:2(?=[URFDLB]w))?([URFDLB]w?|[MESxyz])(?:(2['’′`´]?|['’′`´]2)|(['’′`´]))?$/u

/**
 * @param text turns as a person writes them
 * @param nTurnsMax most turns accepted
 * @returns the turns in reading order, or the first fault
 */
export function parseTurns(text: string, nTurnsMax: number = PARSED_TURNS_MAX): Result<Turn[], TurnsFault> {
  const turns: Turn[] = []
  const openBrackets: number[] = []
  for (const { 0: word, index: at } of text.matchAll(WORD)) {
    if (word === '(') {
      openBrackets.push(at)
    } else if (word === ')') {
      if (openBrackets.pop() === undefined) return unknownTurn(word, at)
    } else {
      // A 2 that clings to a closed group might mean "the group twice".
      if (word.startsWith('2') && text[at - 1] === ')') return unknownTurn(word, at)
      for (const read of readWord(word, at)) {
        if (!read.ok) return read
        if (turns.length === nTurnsMax) return err({ code: 'cube/too-many-turns', max: nTurnsMax })
        turns.push(read.value)
      }
    }
  }
  const unclosed = openBrackets.pop()
  return unclosed === undefined ? ok(turns) : unknownTurn('(', unclosed)
}

/** Reads one turn after another, so that the caller can stop at the first fault or when there are too many. */
function* readWord(word: string, wordAt: number): Generator<Result<Turn, TurnsFault>> {
  for (const { 0: token, index } of word.matchAll(TOKEN)) {
    const turn = readToken(token)
    const end = index + token.length
    // `R2Rw` is R2 Rw or R 2Rw: the writer must say which, by a space.
    const isAmbiguous = token.endsWith('2') && /^[URFDLB]w/u.test(word.slice(end, end + 2))
    if (turn === undefined) yield unknownTurn(token, wordAt + index)
    else if (isAmbiguous) yield unknownTurn(word.slice(index), wordAt + index)
    else yield ok(turn)
  }
}

function readToken(token: string): Turn | undefined {
  const spelling = SPELLING.exec(token)
  if (spelling === null) return undefined
  const [, letters, half, prime] = spelling
  if (half !== undefined) return turnNamed(`${letters}2`)
  return turnNamed(prime === undefined ? letters : `${letters}'`)
}

/** The fault that repeats a token, cut to a length that fits on a screen. */
export function unknownTurn(token: string, at: number): Result<never, TurnsFault> {
  return err({
    code: 'cube/unknown-turn',
    token: [...token.slice(0, 2 * TOKEN_SHOWN_MAX)].slice(0, TOKEN_SHOWN_MAX).join(''),
    at,
  })
}
