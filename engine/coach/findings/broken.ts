/**
 * A turn that belongs to no sequence breaks what was done; it is mended later, or not.
 *
 *     R, then the lesson from the first stage on
 */

import { soundAgain } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

export const broken: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'turn' || !segment.breaks || isInTheMidst(track, segments, index)) return null
  const turn = track.turns[segment.from]
  const isMended = soundAgain(track, segment.from, segment.to) !== null
  return aboutSegment(segment, { key: isMended ? 'coach/layer-broken' : 'coach/layer-left-broken', turn })
}

/** What was broken before and does not stand yet was told before. */
function isInTheMidst(
  track: Parameters<Finder>[0]['track'],
  segments: Parameters<Finder>[0]['segments'],
  index: number,
): boolean {
  const { from } = segments[index]
  const reached = Math.max(...track.standings.slice(0, from).map(({ level }) => level), 0)
  const before = segments[index - 1]
  return before?.kind === 'turn' && track.standings[from].level < reached
}
