/**
 * Turns are missing. When they are the last ones of a trigger, the trigger is unfinished; the sequence goes on behind it.
 *
 *     F R U' R' F'     where the book has F U R U' R' F': "U was left out"
 *     F U R U' F'      "the right trigger lacks its last turn"
 */

import { RIGHT_TRIGGER } from '../../method/sequence-book.ts'
import { type Begun, endOfRest, type Slip, type SlipFinder } from './slip.ts'

const TRIGGER_TOKENS = RIGHT_TRIGGER.length

/** Of a trigger so many turns may be missing, so that its beginning is still seen. */
const MISSING_MAX = 2

/** What comes behind the gap may look like what is missing, so that the gap is seen some turns late. */
const SEEN_LATE_MAX = 2

/** One turn missing anywhere, or the last one or two of a trigger. */
export const leftOut: SlipFinder = (begun) => {
  for (let late = 0; late <= Math.min(SEEN_LATE_MAX, begun.nRight); late++) {
    for (let nMissing = 1; nMissing <= MISSING_MAX; nMissing++) {
      const found = missing({ ...begun, nRight: begun.nRight - late }, nMissing)
      if (found !== null) return found
    }
  }
  return null
}

function missing(begun: Begun, nMissing: number): Slip | null {
  const { track, pattern, at, nRight } = begun
  // What is missing at the very end is told by `unfinished.ts`.
  if (nRight + nMissing >= pattern.tokens.length) return null
  const block = pattern.blocks.find((each) => each.at + TRIGGER_TOKENS === nRight + nMissing)
  const isTriggerEnd = block !== undefined && nRight > block.at
  if (nMissing > 1 && !isTriggerEnd) return null
  const fromToken = at + nRight
  const endToken = endOfRest(begun, fromToken, nRight + nMissing)
  if (endToken === null || track.tokens.length === fromToken) return null
  const turns = pattern.turnOfToken.slice(nRight, nRight + nMissing)
  const details = isTriggerEnd
    ? ({ key: 'coach/unfinished', side: block.side, nth: block.nth, missing: turns } as const)
    : ({ key: 'coach/turn-left-out', shouldBe: turns[0] } as const)
  return { details, fromToken, toToken: fromToken, endToken }
}
