/** A slip inside a sequence; `slips/` says which. */

import { momentBefore } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** The slip of a segment that was explained by one. */
export const slipped: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'slip') return null
  const { details, fromToken, toToken } = segment.slip
  // Where turns are missing the note is about the turn in front of the gap, if the sequence has one there.
  const firstOwn = track.firstToken[segment.done.beginsAt]
  const first = fromToken === toToken ? Math.max(firstOwn, fromToken - 1) : fromToken
  const from = track.turnOfToken[first]
  const to = momentBefore(track, Math.max(toToken, first + 1)) ?? from + 1
  return { ...aboutSegment(segment, details), from, to, costTurns: plainCost(segment.slip.details) }
}

function plainCost(details: ReturnType<typeof aboutSegment>['details']): number | null {
  if (details.key === 'coach/undone') return details.nTurns
  return details.key === 'coach/two-for-one' ? details.nTurns - 1 : null
}
