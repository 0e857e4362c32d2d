/**
 * A second book, of classic sequences: more to remember, far fewer turns.
 * Common practice, no source. The checker proves it like any other book (`tests/published/book-figures.test.ts`).
 */

import type { SequenceBook } from '../sequence-book.ts'
import { ownBook } from './own-book.ts'

const TEXT = `
book Classic sequences

stage 1
  F2                  # the edge is above its place and faces up
  R' F R              # the edge is above the right-hand side of its place and faces the wrong way
  R U R'              # it is in the middle layer, front right, its base colour in front

stage 2
  R U R'              # the base colour looks to the right
  F' U' F             # it looks to the front
  R U2 R' U' R U R'   # it looks up

stage 3
  U R U' R' U' F' U F
  U' L' U L U F U' F'

stage 4
  F R U R' U' F'
  F U R U' R' F'

stage 5
  R U R' U R U2 R'
  R U2 R' U' R U' R'

stage 6
  R' F R' B2 R F' R' B2 R2                    # three corners go round
  F R U' R' U' R U R' F' R U R' U' R' F R F'  # two corners across exchange places

stage 7
  R U' R U R U R U' R' U' R2      # three edges go round
  R2 U R U R' U' R' U' R' U R'    # the other way round
  M2 U M2 U2 M2 U M2              # all four change places, each across the layer
`

/** The book of classic sequences. */
export const CLASSIC_BOOK: SequenceBook = ownBook(TEXT)
