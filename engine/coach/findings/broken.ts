/**
 * A turn that belongs to no sequence breaks what was done; it is mended later, or not.
 *
 *     R, then the lesson from the first stage on
 */

import { isMending, soundAgain } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** The first turn without an explanation after which something no longer stands. */
export const broken: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  if (segment.kind !== 'turn' || !segment.breaks) return null
  // Of several such turns in a row the first one is told.
  if (segments[index - 1]?.kind === 'turn' && isMending(track, segment.from)) return null
  const turn = track.turns[segment.from]
  const isMended = soundAgain(track, segment.from, segment.to) !== null
  return aboutSegment(segment, { key: isMended ? 'coach/layer-broken' : 'coach/layer-left-broken', turn })
}
