/**
 * The lesson's own book: seven stages with two four-turn triggers, A and B, each the mirror of the other in the plane
 * between left and right, and a few turns that lead in and out.
 * Source: common practice of the trade. What each sequence does, and how far the book leads, is checked in
 * `tests/published/`.
 */

import type { SequenceBook } from '../sequence-book.ts'
import { ownBook } from './own-book.ts'

const TEXT = `
book Two triggers

part A = U R U' R'    # the right trigger
part B = U' L' U L    # the left trigger

stage 1
  F2                  # the edge is above its place and faces up: down with it; also out of a wrong place
  R' F R              # it faces the wrong way, above the right-hand side of its place: out by the side and in again
  A                   # it is in the middle layer, front right, its base colour in front: up with it
  B                   # the same at the front left

stage 2
  A                   # its place is front right: until the corner is home
  B                   # its place is front left

stage 3
  A y B               # the edge above the front centre goes to the right
  B y' A              # it goes to the left

stage 4
  F A F'

stage 5
  A^3 y B^3

stage 6
  L' A^2 L A^3 L' A L

stage 7
  A^5 B^5 A B
`

/** The book of the lesson, called so because two triggers do nearly everything. */
export const LESSON_BOOK: SequenceBook = ownBook(TEXT)
