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
  for (const { 0: word, index: wordAt } of text.matchAll(WORD)) {
    if (word === '(') {
      openBrackets.push(wordAt)
    } else if (word === ')') {
      if (openBrackets.pop() === undefined) return unknownTurn(word, wordAt)
    } else {
      const read = readWord(word, wordAt, text[wordAt - 1] === ')')
      if (!read.ok) return read
      turns.push(...read.value)
      if (turns.length > nTurnsMax) return err({ code: 'cube/too-many-turns', max: nTurnsMax })
    }
  }
  const unclosed = openBrackets.pop()
  return unclosed === undefined ? ok(turns) : unknownTurn('(', unclosed)
}

/** @param clingsToGroup a bracket closes right before the word: a 2 there might mean "the group twice" */
function readWord(word: string, wordAt: number, clingsToGroup: boolean): Result<Turn[], TurnsFault> {
  const turns: Turn[] = []
  if (clingsToGroup && word.startsWith('2')) return unknownTurn(word, wordAt)
  for (const { 0: token, index } of word.matchAll(TOKEN)) {
    const turn = readToken(token)
    if (turn === undefined) return unknownTurn(token, wordAt + index)
    // `R2Rw` is R2 Rw or R 2Rw: the writer must say which, by a space.
    const rest = word.slice(index + token.length)
    if (token.endsWith('2') && /^[URFDLB]w/u.test(rest)) return unknownTurn(word.slice(index), wordAt + index)
    turns.push(turn)
  }
  return ok(turns)
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
