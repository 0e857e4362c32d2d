/**
 * A whole part of a sequence is otherwise: the other trigger, one trigger too many or too few, another re-hold or none.
 *
 *     U R U' R' y U R U' R'    where the book has A y B: "the right trigger was done in place of the left one"
 *     A^4 y B^3                where the book has A^3 y B^3
 *     A^3 B^3                  where the book has A^3 y B^3
 */

import { nAlike, type SlipFinder } from './slip.ts'

/** One of the slipped forms that belong to the sequence. */
export const wrongPart: SlipFinder = ({ track, pattern, held, at, nRight }) => {
  for (const { slip, tokens, at: from, to } of pattern.forms) {
    // What comes before is as in the book, or was not done.
    if (nRight < from || nAlike(track, at, tokens, 0, held) < tokens.length) continue
    return { details: slip, fromToken: at + from, toToken: at + to, endToken: at + tokens.length }
  }
  return null
}
