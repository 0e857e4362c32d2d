/**
 * A room code: six letters, two syllables, easy to read aloud ("RAM-KET").
 * Letters that are mistaken for one another or for figures are left out (I, Q, W, X, Y, and C, which sounds like S or K).
 * 16 consonants and 4 vowels in the pattern CVCCVC give 16^4 * 4^2 = 1,048,576 codes, 2^20,
 * the least entropy that OWASP ASVS 5.0, 6.5.4, asks of a lookup code. Guessing is slowed by the server.
 */

import type { RandomSource } from '../chance/random-source.ts'
import { below } from '../chance/random-source.ts'
import { assert } from '../result.ts'
import type { RoomCode } from './ids.ts'

const CONSONANTS = 'BDFGHJKMNPRSTVZL'
const VOWELS = 'AEUO'
const PATTERN = [CONSONANTS, VOWELS, CONSONANTS, CONSONANTS, VOWELS, CONSONANTS]

export const ROOM_CODE_LENGTH = PATTERN.length

/** Syllables that no teacher wants to read aloud, in the languages of the product. A code that holds one is drawn again. */
const RUDE = [
  'FUK',
  'FAK',
  'SEK',
  'SAT',
  'FOT',
  'FAN',
  'PUT',
  'TET',
  'KAK',
  'NEG',
  'HOR',
  'NUT',
  'GAS',
  'JUD',
  'ZEB',
  'BAS',
  'KON',
  'FAG',
  'PEN',
  'NAZ',
  'TOD',
  'MOR',
  'DUM',
  'FET',
]

assert(CONSONANTS.length === 16 && VOWELS.length === 4, 'the code space is 2^20')

/** Draws a code, each admissible one equally likely. */
export function drawRoomCode(random: RandomSource): RoomCode {
  for (;;) {
    const code = PATTERN.map((letters) => letters[below(random, letters.length)]).join('')
    if (!RUDE.some((syllable) => code.includes(syllable))) return code as RoomCode
  }
}

/**
 * Reads what a child typed: case, spaces and dashes do not matter, a nought is read as the letter O.
 *
 * @returns the code, or null when it cannot be one (wrong length or a letter that codes never use)
 */
export function readRoomCode(typed: string): RoomCode | null {
  const code = typed.toUpperCase().replace(/[\s-]/g, '').replaceAll('0', 'O')
  if (code.length !== ROOM_CODE_LENGTH) return null
  return PATTERN.every((letters, index) => letters.includes(code[index])) ? (code as RoomCode) : null
}
