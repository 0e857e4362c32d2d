/**
 * Numbers the words of n face turns in the order of their turns, first turn first. Only words count in which no face is
 * turned twice running and of two opposite faces turned one after the other the one that comes first in `FACES` leads:
 * every other word is a longer or another spelling of one of these.
 *
 * There are 1, 18, 243, 3240, 43254, ... of them, 12 times the last plus 18 times the one before. A number takes 3.74
 * bits a turn, where 18 turns by themselves would take 4.17.
 * Source of the count: R. E. Korf, Finding Optimal Solutions to Rubik's Cube Using Pattern Databases, AAAI 1997.
 */

import { FACES } from '../../cube/faces.ts'
import { FACE_TURNS, type Turn } from '../../cube/turns.ts'
import { assert } from '../../result.ts'

/** Most turns of a word that has a number: no number is above 2^53. */
export const WORD_TURNS_MAX = 13

const N_TURNS = FACE_TURNS.length
const TURNS_PER_FACE = N_TURNS / FACES.length
const N_LEADING_FACES = FACES.length / 2

/** What stands before the first turn: a turn of no face, which every turn may follow. */
export const NO_TURN = N_TURNS

/** `MAY_FOLLOW[before * 18 + turn]` is 1 when a word may have `turn` right behind `before`, which may be `NO_TURN`. */
export const MAY_FOLLOW: Uint8Array = Uint8Array.from({ length: (N_TURNS + 1) * N_TURNS }, (_, index) => {
  const before = Math.trunc(index / N_TURNS)
  const [faceBefore, face] = [faceOf(before), faceOf(index % N_TURNS)]
  return before === NO_TURN || (face !== faceBefore && face !== faceBefore - N_LEADING_FACES) ? 1 : 0
})

/** `N_ENDINGS[n][before]`: how many ways there are to go on for n turns behind `before`. */
const N_ENDINGS: ReadonlyArray<readonly number[]> = countEndings()

/** @param nTurns 0..WORD_TURNS_MAX @returns how many words of so many turns there are; a whole number below 2^53 */
export function nWords(nTurns: number): number {
  return N_ENDINGS[nTurns][NO_TURN]
}

/**
 * @param word face turns, of the words described above; asserted
 * @returns 0..nWords-1, rising in the order of the turns; inverse: `wordOfNumber`
 */
export function numberOfWord(word: ArrayLike<number>): number {
  let number = 0
  let before = NO_TURN
  for (let at = 0; at < word.length; at++) {
    const turn = word[at]
    assert(MAY_FOLLOW[before * N_TURNS + turn] === 1, `turn ${turn} may follow ${before} in a word that has a number`)
    const endings = N_ENDINGS[word.length - at - 1]
    for (let smaller = 0; smaller < turn; smaller++) {
      number += MAY_FOLLOW[before * N_TURNS + smaller] * endings[smaller]
    }
    before = turn
  }
  return number
}

/** @param number 0..nWords(nTurns)-1 @returns the word; inverse: `numberOfWord` */
export function wordOfNumber(number: number, nTurns: number): Turn[] {
  const word: Turn[] = []
  let rest = number
  let before = NO_TURN
  for (let at = 0; at < nTurns; at++) {
    const endings = N_ENDINGS[nTurns - at - 1]
    let turn = 0
    for (; turn < N_TURNS - 1; turn++) {
      const nWithTurn = MAY_FOLLOW[before * N_TURNS + turn] * endings[turn]
      if (rest < nWithTurn) break
      rest -= nWithTurn
    }
    word.push(FACE_TURNS[turn])
    before = turn
  }
  return word
}

/** @param word is put in order in place: of two neighbours that turn opposite faces the leading face comes first */
export function putOppositesInOrder(word: Uint8Array): void {
  for (let at = 1; at < word.length; at++) {
    const [first, second] = [word[at - 1], word[at]]
    if (faceOf(first) === faceOf(second) + N_LEADING_FACES) [word[at - 1], word[at]] = [second, first]
  }
}

/** @returns the face of one of the 18 turns, as an index into `FACES` */
export function faceOf(turn: number): number {
  return Math.trunc(turn / TURNS_PER_FACE)
}

function countEndings(): number[][] {
  const counts = [new Array<number>(N_TURNS + 1).fill(1)]
  for (let nTurns = 1; nTurns <= WORD_TURNS_MAX; nTurns++) {
    counts.push(
      counts[0].map((_, before) =>
        FACE_TURNS.reduce((sum, turn) => sum + MAY_FOLLOW[before * N_TURNS + turn] * counts[nTurns - 1][turn], 0),
      ),
    )
  }
  return counts
}
