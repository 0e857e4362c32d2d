/** What the files of this folder have in common: one slip inside a sequence that is otherwise done as the book has it. */

import { CENTRES_AT, type CubePosition } from '../../cube/cube-position.ts'
import type { NoteDetails } from '../note.ts'
import type { SequencePattern } from '../sequence-pattern.ts'
import { seenFrom, type Token } from '../turn-tokens.ts'
import type { TurnTrack } from '../turn-track.ts'

/** Where a sequence was begun, and how far it was done as the book has it. */
export type Begun = {
  readonly track: TurnTrack
  readonly pattern: SequencePattern
  /** The position at the beginning, whose hold says which layer is which. */
  readonly held: CubePosition
  /** The token with which it began. */
  readonly at: number
  /** So many tokens are as in the book. */
  readonly nRight: number
}

/** A slip, and the sequence done to its end. */
export type Slip = {
  readonly details: NoteDetails
  /** The tokens of the try that the slip is about. */
  readonly fromToken: number
  readonly toToken: number
  /** One behind the last token of the sequence. */
  readonly endToken: number
}

/** Looks for one kind of slip at the first token that is otherwise. */
export type SlipFinder = (begun: Begun) => Slip | null

/** In a try that is under way a slip is believed when so many turns after it are right again. */
const RIGHT_AFTER_SLIP_MIN = 2

/** @returns how many tokens of the try, from `at` on, are those of a sequence from `from` on */
export function nAlike(
  { tokens }: TurnTrack,
  at: number,
  wanted: readonly Token[],
  from: number,
  held: CubePosition,
): number {
  const nMost = Math.min(wanted.length - from, tokens.length - at)
  for (let index = 0; index < nMost; index++) {
    if (tokens[at + index] !== seenFrom(wanted[from + index], held, CENTRES_AT)) return index
  }
  return Math.max(nMost, 0)
}

/**
 * @returns one behind the last token when the rest of the sequence, from its token `from` on, is done at `at`; also when
 *   the try ends in the middle of it. Null when something else is done.
 */
export function endOfRest({ track, pattern, held }: Begun, at: number, from: number): number | null {
  const nDone = nAlike(track, at, pattern.tokens, from, held)
  if (nDone === pattern.tokens.length - from) return at + nDone
  return at + nDone === track.tokens.length && nDone >= RIGHT_AFTER_SLIP_MIN ? at + nDone : null
}

/** @returns the token that the book has at `index`, in the hold of the try; undefined behind its end */
export function wantedToken({ pattern, held }: Begun, index: number): Token | undefined {
  const token = pattern.tokens[index]
  return token === undefined ? undefined : seenFrom(token, held, CENTRES_AT)
}
