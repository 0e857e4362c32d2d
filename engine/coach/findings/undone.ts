/**
 * A turn was undone at once, between sequences.
 *
 *     U U' F A F'    "U was turned and turned back: 2 turns"
 */

import type { Segment } from '../segment.ts'
import { nTokensEarlier } from '../turn-tokens.ts'
import { countBetween, momentBefore } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** Turns of these are as good as those that undo each other; a sequence of the book is better left whole. */
const OWN_KINDS: readonly (Segment['kind'] | undefined)[] = ['own-way', 'turn', 'top-turn']

/** Turns that undo each other at once, between sequences. */
export const undone: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'undone') return null
  const { firstToken, tokens, turnOfToken, turns } = track
  const [first, end] = [firstToken[segment.from], firstToken[segment.to]]
  const before = segments.slice(0, index).findLast(({ kind }) => kind !== 're-hold')
  const least = before !== undefined && OWN_KINDS.includes(before.kind) ? firstToken[before.from] : first
  const nEarlier = nTokensEarlier(tokens, least, first, end)
  const from = turnOfToken[first - nEarlier]
  const to = momentBefore(track, end - nEarlier) ?? segment.to
  const nTurns = countBetween(track, segment.from, segment.to)
  const details = { key: 'coach/undone', turn: turns[from], nTurns } as const
  return { ...aboutSegment(segment, details), from, to, since: from, until: to, costTurns: nTurns }
}
