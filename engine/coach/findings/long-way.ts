/** A way of one's own that leads on, with more turns than the lesson takes for as much. */

import { countBetween, isMending, turnsLost } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** Never said of a way that is as short as the lesson's, nor of the mending of what broke before. */
export const longWay: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'own-way' || !segment.isLong) return null
  // While something is being mended, that it broke was said already.
  if (isMending(track, segment.from)) return null
  const nTurns = countBetween(track, segment.from, segment.to)
  const nLessonTurns = nTurns - turnsLost(track, segment.from, segment.to)
  return aboutSegment(segment, { key: 'coach/long-way', nTurns, nLessonTurns })
}
