/**
 * Chance, handed in: the engine never makes its own. Whoever calls gives a source; the same source gives the same draw.
 */

import { assert } from '../result.ts'

/** Gives whole numbers 0..2^32-1, each equally likely and independent of those before. */
export interface RandomSource {
  nextUint32(): number
}

const N_WORDS = 2 ** 32

/** Words rejected in a row before we call the source broken: a sound one does so less than once in 2^200 draws. */
const REJECTIONS_MAX = 200

/**
 * Draws a whole number below a bound, exactly uniformly: words past the last full multiple of the bound are drawn again,
 * because their remainders would make small numbers likelier.
 *
 * @param bound 1..2^32
 * @returns 0..bound-1
 */
export function below(random: RandomSource, bound: number): number {
  assert(Number.isInteger(bound) && 1 <= bound && bound <= N_WORDS, `bound ${bound} is in 1..2^32`)
  const nUsable = N_WORDS - (N_WORDS % bound)
  for (let attempt = 0; attempt <= REJECTIONS_MAX; attempt++) {
    const word = random.nextUint32()
    if (word < nUsable) return word % bound
  }
  throw new Error('The random source gives the same rejected words for ever')
}

/**
 * Shuffles in place, each order equally likely.
 * Source: R. A. Fisher and F. Yates 1938; Knuth, The Art of Computer Programming 2, section 3.4.2, algorithm P.
 */
export function shuffle<T>(random: RandomSource, items: T[]): void {
  for (let last = items.length - 1; last > 0; last--) {
    const chosen = below(random, last + 1)
    const item = items[chosen]
    items[chosen] = items[last]
    items[last] = item
  }
}
