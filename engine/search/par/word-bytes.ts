/**
 * The bytes of the shortest solutions: the number of a word for each class, class after class. Lengths are not stored: a
 * shortest solution is as long as the par, and the length says how many bits the number takes.
 */

import type { Turn } from '../../cube/turns.ts'
import { bytesFor, readBits, widthFor, writeBits } from './bit-stream.ts'
import { nWords, WORD_TURNS_MAX, wordOfNumber } from './word-number.ts'

const WIDTH_OF_LENGTH: readonly number[] = Array.from({ length: WORD_TURNS_MAX + 1 }, (_, nTurns) =>
  widthFor(nWords(nTurns)),
)

/**
 * @param pars by class: length of the class's word, 0..13
 * @returns by class: at which bit its word begins; one entry more for the end
 */
export function wordBeginnings(pars: Uint8Array): Uint32Array {
  const beginnings = new Uint32Array(pars.length + 1)
  for (let index = 0; index < pars.length; index++) {
    beginnings[index + 1] = beginnings[index] + WIDTH_OF_LENGTH[pars[index]]
  }
  return beginnings
}

/** @param words by class: number of its word @returns the bytes; inverse: `readWord` */
export function writeWordBytes(pars: Uint8Array, words: Float64Array): Uint8Array {
  const beginnings = wordBeginnings(pars)
  const bytes = new Uint8Array(bytesFor(beginnings[pars.length]))
  for (let index = 0; index < pars.length; index++) {
    writeBits(bytes, beginnings[index], WIDTH_OF_LENGTH[pars[index]], words[index])
  }
  return bytes
}

/** @returns the word of `nTurns` turns that begins at this bit */
export function readWord(bytes: Uint8Array, beginning: number, nTurns: number): Turn[] {
  return wordOfNumber(readBits(bytes, beginning, WIDTH_OF_LENGTH[nTurns]), nTurns)
}
