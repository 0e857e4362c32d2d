/**
 * A room code: six letters, two syllables, easy to read aloud ("RAM-KET").
 *
 * Consonants and vowels stand in fixed places (CVCCVC), so letters that look alike never compete for one place: what looks
 * like I or L, O or 0, U or V is read as the one that can stand there. Left out are C, Q, W, X and Y, which sound like
 * others, and H and J at the end of a syllable, where nobody hears them.
 * 16 * 5 * 14 squared gives 1,254,400 codes, more than the 2^20 that OWASP ASVS 5.0, 6.5.4, asks of a lookup code.
 * Guessing is slowed by the server.
 */

import type { RandomSource } from '../chance/random-source.ts'
import { below } from '../chance/random-source.ts'
import { assert } from '../result.ts'
import type { RoomCode } from './ids.ts'

const FIRST_CONSONANTS = 'BDFGHJKLMNPRSTVZ'
const VOWELS = 'AEIOU'
const LAST_CONSONANTS = 'BDFGKLMNPRSTVZ'
const SYLLABLE = [FIRST_CONSONANTS, VOWELS, LAST_CONSONANTS]
const PATTERN = [...SYLLABLE, ...SYLLABLE]

/** What is put right when a letter or figure cannot stand where it was typed. */
const LOOK_ALIKES: Readonly<Record<string, string>> = {
  '0': 'O',
  '1': 'IL',
  I: 'L',
  L: 'I',
  U: 'V',
  V: 'U',
  '2': 'Z',
  '5': 'S',
  '8': 'B',
}

/** Letters of a code. */
export const ROOM_CODE_LENGTH = PATTERN.length

/** Syllables that no teacher wants to read aloud, in the languages of the product. A code that holds one is drawn again. */
const RUDE = [
  'FIK',
  'TIT',
  'DIK',
  'NIG',
  'PIS',
  'KIL',
  'SIK',
  'VIN',
  'GIN',
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

assert(PATTERN.reduce((product, letters) => product * letters.length, 1) === 1_254_400, 'the code space exceeds 2^20')

/** Draws a code, each admissible one equally likely. */
export function drawRoomCode(random: RandomSource): RoomCode {
  for (;;) {
    const code = PATTERN.map((letters) => letters[below(random, letters.length)]).join('')
    if (!RUDE.some((syllable) => code.includes(syllable))) return code as RoomCode
  }
}

/**
 * Reads what a child typed: case, spaces and dashes do not matter, and a look-alike is read as the letter that can stand there.
 *
 * @returns the code, or null when it cannot be one (wrong length or a letter that codes never use)
 */
export function readRoomCode(typed: string): RoomCode | null {
  const letters = [...typed.toUpperCase().replace(/[\s-]/g, '')]
  if (letters.length !== ROOM_CODE_LENGTH) return null
  const code = letters.map((letter, index) => fitting(letter, PATTERN[index]))
  return code.includes(null) ? null : (code.join('') as RoomCode)
}

function fitting(letter: string, place: string): string | null {
  if (place.includes(letter)) return letter
  return [...(LOOK_ALIKES[letter] ?? '')].find((alike) => place.includes(alike)) ?? null
}
