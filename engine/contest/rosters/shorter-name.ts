/** Shorter ways to call somebody: the given name, and the first letter of the family name where two share it. */

import { isFriendlyName } from '../friendly-names.ts'
import { NAME_LENGTH_MAX } from '../limits.ts'
import { nameKey, readStudentName } from '../student-name.ts'

/** Twins of one name in one class are told apart by a number below this. */
const NUMBERS_END = 100

/**
 * @param full a written name, given name first
 * @param family its family name, where that stands elsewhere
 * @param isTaken whether somebody in the class goes by that name
 * @returns "Ana", or else "Ana K.", "Ana Ko.", "Ana 2": the first that is a good name and free; null when none is
 */
export function shorterName(full: string, family: string, isTaken: (name: string) => boolean): string | null {
  const [first, ...others] = full
    .replace(/[^\p{L}\p{M}\p{N} .'‘’-]/gu, ' ')
    .split(/\s+/)
    .filter(hasLetters)
  if (first === undefined) return null
  const given = short(first)
  const last = family === '' ? (others.at(-1) ?? '') : family
  for (const offer of offers(given, last)) {
    const read = readStudentName(offer)
    if (read.ok && !isTaken(read.value)) return read.value
  }
  return null
}

/** @returns does it look like a given name and a family name? "Ana K.", "Ana 2" and "Sunny Otter" do not. */
export function looksLikeFullName(name: string): boolean {
  const [, ...others] = name.split(' ')
  return !isFriendlyName(name) && others.some((word) => nameKey(word).length > 2 && !/\d/.test(word))
}

function* offers(given: string, last: string): Generator<string> {
  yield given
  const letters = [...last.normalize('NFC')].filter((letter) => /\p{L}/u.test(letter))
  for (const nLetters of [1, 2]) {
    if (letters.length >= nLetters) yield `${given} ${letters.slice(0, nLetters).join('')}.`
  }
  for (let number = 2; number < NUMBERS_END; number++) yield `${given} ${number}`
}

/** A double name too long for a lane is called by its first half; what is still too long is cut. */
function short(first: string): string {
  const room = NAME_LENGTH_MAX - ' Ko.'.length
  const half = [...first].length > room ? first.split('-')[0] : first
  return [...half.normalize('NFC')].slice(0, room).join('')
}

function hasLetters(word: string): boolean {
  return /\p{L}/u.test(word)
}
