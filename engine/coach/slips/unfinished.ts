/**
 * A sequence stops before its end, and something else is begun, or nothing more is done.
 *
 *     F U R U' R'      where the book has F U R U' R' F'
 *     U R U'           "the right trigger lacks its last turn"
 */

import { RIGHT_TRIGGER } from '../../method/sequence-book.ts'
import type { SlipFinder } from './slip.ts'

const TRIGGER_TOKENS = RIGHT_TRIGGER.length

/** With fewer turns done nobody can say what was begun. */
const DONE_MIN = 2
const MISSING_MAX = 3

/** At most three turns missing at the end, and no more than were done. */
export const unfinished: SlipFinder = ({ pattern, at, nRight }) => {
  const nMissing = pattern.tokens.length - nRight
  if (nRight < DONE_MIN || nMissing < 1 || nMissing > MISSING_MAX || nRight < nMissing) return null
  const endToken = at + nRight
  const block = pattern.blocks.find((each) => each.at < nRight && nRight < each.at + TRIGGER_TOKENS)
  const details = {
    key: 'coach/unfinished',
    side: block?.side ?? null,
    nth: block?.nth ?? 1,
    // Of a trigger that was begun, its own turns; what comes behind it in the sequence is not said.
    missing: pattern.turnOfToken.slice(nRight, block === undefined ? undefined : block.at + TRIGGER_TOKENS),
  } as const
  return { details, fromToken: endToken, toToken: endToken, endToken }
}
