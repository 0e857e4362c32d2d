/**
 * A turn was undone at once, between sequences.
 *
 *     U U' F A F'    "U was turned and turned back: 2 turns"
 */

import { countBetween } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** Turns that undo each other at once, between sequences. */
export const undone: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'undone') return null
  const nTurns = countBetween(track, segment.from, segment.to)
  const details = { key: 'coach/undone', turn: track.turns[segment.from], nTurns } as const
  return { ...aboutSegment(segment, details), costTurns: nTurns }
}
