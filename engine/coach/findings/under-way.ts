/**
 * The try ends inside a sequence that would have led on: the last note of whoever is stuck.
 *
 *     F U R U'    "the right trigger lacks its last turn"
 */

import { findSlips } from '../slips/find-slip.ts'
import { nAlike } from '../slips/slip.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** What the sequence lacks in which the try ends; nothing when hardly any of it was done. */
export const underWay: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'under-way') return null
  const { pattern, beginsAt } = segment.done
  const held = track.standings[beginsAt].position
  const at = track.firstToken[beginsAt]
  const nRight = nAlike(track, at, pattern.tokens, 0, held)
  const [slip] = findSlips({ track, pattern, held, at, nRight }).filter(
    ({ details }) => details.key === 'coach/unfinished',
  )
  return slip === undefined ? null : { ...aboutSegment(segment, slip.details), from: segment.to - 1 }
}
