/** A way of one's own that leads on, with more turns than the lesson takes for as much. */

import { countBetween, turnsLost } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

export const longWay: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'own-way' || !segment.isLong) return null
  // While something is being mended, that it broke was said already.
  const { level } = track.standings[segment.from]
  if (track.standings.slice(0, segment.from).some((standing) => standing.level > level)) return null
  const nTurns = countBetween(track, segment.from, segment.to)
  const nLessonTurns = nTurns - turnsLost(track, segment.from, segment.to)
  return aboutSegment(segment, { key: 'coach/long-way', nTurns, nLessonTurns })
}
