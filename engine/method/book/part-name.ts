/**
 * What a part of a book may be called. A name stands between turns, so it must not pass for one, nor for another name:
 *
 * - Latin letters, digits and hyphens, a letter first, as the turns are Latin too; marks on a letter are fine (`Ä`). In
 *   other scripts some letters look like those of a turn. Titles and comments may be in any script.
 * - It cannot be read as turns. One exception, since the trade calls the left trigger so: a single face letter.
 * - It does not differ from a turn only by its case or its marks: `u`, `X`, `Ú`, `r2`.
 *
 * Names are compared and kept in Unicode's composed form (NFC), since the same letter can be typed in two ways.
 */

import { FACES } from '../../cube/faces.ts'
import { parseTurns } from '../../cube/parse-turns.ts'
import { turnNamed } from '../../cube/turns.ts'
import type { BookTextCode } from './book-text-fault.ts'
import { PART_NAME_MAX } from './limits.ts'

const KEYWORDS = ['book', 'part', 'stage']
const WORD = /^\p{L}[\p{L}\p{M}\p{N}-]*$/u
const LATIN_WORD = /^\p{Script=Latin}[\p{Script=Latin}\p{M}0-9-]*$/u
/** Marks that are not seen, such as those that choose between shapes of a letter. */
const UNSEEN = /\p{Default_Ignorable_Code_Point}/u

/** @returns the name as it is kept and compared */
export function partName(word: string): string {
  return word.normalize('NFC')
}

/** @param name as `partName` gives it @returns what is wrong with it, or undefined */
export function partNameFault(name: string): BookTextCode | undefined {
  if (!WORD.test(name) || UNSEEN.test(name) || name.length > PART_NAME_MAX || KEYWORDS.includes(name)) {
    return 'book/bad-name'
  }
  // Full-width and other compatibility forms are Latin letters too, but not those of the turns that they look like.
  if (!LATIN_WORD.test(name) || name.normalize('NFKC') !== name) return 'book/name-not-latin'
  if (FACES.some((face) => face === name)) return undefined
  if (parseTurns(name).ok) return 'book/name-is-turns'
  return isLikeOneTurn(name) ? 'book/name-like-turn' : undefined
}

function isLikeOneTurn(name: string): boolean {
  const [, letter = ''] = /^(\p{L})w?2?$/u.exec(name.normalize('NFD').replace(/\p{M}/gu, '')) ?? []
  return [letter.toUpperCase(), letter.toLowerCase()].some((other) => turnNamed(other) !== undefined)
}
