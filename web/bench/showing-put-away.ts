/**
 * Whether a child has put away what the teacher shows. It stays put away while the teacher goes on with the same: each turn
 * of the teacher's own cube makes a showing of a new version, and must not take the child's cube away again.
 */

import { useState } from 'react'
import type { Showing } from '../../engine/wire/shown.ts'

/** @returns whether the showing stands in front now, and what puts it away or brings it back */
export function useShowingInFront(showing: Showing | null): readonly [boolean, (inFront: boolean) => void] {
  const [putAway, setPutAway] = useState<string | null>(null)
  // Shown anew after it was ended, even the same comes to the front.
  if (showing === null && putAway !== null) setPutAway(null)
  const what = showing === null ? null : whatIsShown(showing)
  return [what !== null && what !== putAway, (inFront) => setPutAway(inFront ? null : what)]
}

/** @returns the same words for the same cube or review, however far it has gone */
export function whatIsShown({ shown }: Pick<Showing, 'shown'>): string {
  const title = shown.kind === 'cube' ? shown.title : shown.roundNumber
  return [shown.kind, shown.start, title].join(' ')
}
