/**
 * The puzzle came back to where it had been.
 *
 *     A^6    "24 turns led back to where you were"
 */

import { countBetween } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** At least three turns after which the puzzle stands as before; they cost all of them. */
export const nowhere: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'nowhere') return null
  const nTurns = countBetween(track, segment.from, segment.to)
  return { ...aboutSegment(segment, { key: 'coach/led-nowhere', nTurns }), costTurns: nTurns }
}
