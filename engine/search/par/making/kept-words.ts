/** The half of a meeting in the middle that is kept, and how a kept word and one that is looked up make a solution. */

import { FACE_TURNS, inverseTurn } from '../../../cube/turns.ts'
import { N_FACE_TURNS, type PlaceTables } from './place-tables.ts'
import { FIRST_OF_SYMMETRIC_WORDS, walkWords } from './walk-words.ts'

/** Most turns of a kept word: its bits fit in a small whole number. */
export const KEPT_TURNS_MAX = 6

const BITS_PER_TURN = 5
const TURN_BITS = (1 << BITS_PER_TURN) - 1
const INVERSE: Uint8Array = Uint8Array.from(FACE_TURNS, inverseTurn)

/**
 * All words of n turns, sorted by where they put the cross; of words that upright symmetries turn into each other only the
 * first. Those that put the cross as number c says are the words from `begin[c]` to below `begin[c + 1]`.
 */
export type KeptWords = {
  readonly nTurns: number
  readonly begin: Uint32Array
  /** By word: where it puts the base corners, as in `place-tables.ts`. */
  readonly corners: Uint32Array
  /** By word: its turns, five bits each, the last turn lowest. */
  readonly packed: Uint32Array
}

/** @param nTurns 0..KEPT_TURNS_MAX @returns the words: about 1.1 million for 6 turns, 10 MB, made in half a second */
export function keepWords(tables: PlaceTables, nTurns: number): KeptWords {
  const word = new Uint8Array(nTurns)
  const walkAll = (visit: (cross: number, corners: number) => void) => {
    const portions = walkWords({ tables, word, which: FIRST_OF_SYMMETRIC_WORDS, visit })
    while (!portions.next().done);
  }
  const begin = new Uint32Array(tables.crossAfter.length / N_FACE_TURNS + 1)
  walkAll((cross) => {
    begin[cross + 1]++
  })
  for (let cross = 1; cross < begin.length; cross++) begin[cross] += begin[cross - 1]

  const next = begin.slice()
  const nKept = begin[begin.length - 1]
  const [corners, packed] = [new Uint32Array(nKept), new Uint32Array(nKept)]
  walkAll((cross, cornersThere) => {
    const at = next[cross]++
    corners[at] = cornersThere
    packed[at] = word.reduce((bits, turn) => (bits << BITS_PER_TURN) | turn, 0)
  })
  return { nTurns, begin, corners, packed }
}

/** @param word is filled with the turns of a kept word, from its beginning */
export function unpackWord({ nTurns, packed }: KeptWords, index: number, word: Uint8Array): void {
  for (let [at, bits] = [nTurns - 1, packed[index]]; at >= 0; at--, bits >>>= BITS_PER_TURN) word[at] = bits & TURN_BITS
}

/** @param solution is filled: the kept word, then the turns that undo `lookedUp`; as long as both together */
export function joinWords(kept: KeptWords, index: number, lookedUp: Uint8Array, solution: Uint8Array): void {
  unpackWord(kept, index, solution)
  for (let at = 0; at < lookedUp.length; at++) solution[solution.length - 1 - at] = INVERSE[lookedUp[at]]
}
