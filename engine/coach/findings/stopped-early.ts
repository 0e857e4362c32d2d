/**
 * A trigger was repeated too seldom, and something else was begun, which took the piece away again.
 *
 *     A, y B ...    where a second A would have brought the corner home
 */

import { applyTurns } from '../../cube/apply-turn.ts'
import { copyCube } from '../../cube/cube-position.ts'
import type { Segment, SequenceDone } from '../segment.ts'
import { standingAt, turnsLost } from '../turn-track.ts'
import type { Explained, Finder } from './finding.ts'
import { sideOf } from './wrong-step.ts'

/** So many repeats may be missing. */
const MISSING_MAX = 2

/** A trigger of stage 2 that lacks one or two repeats, when what was done instead made the way longer. */
export const stoppedEarly: Finder = (explained, index) => {
  const { track, segments } = explained
  const segment = segments[index]
  if (segment.kind !== 'sequence' || !segment.leadsOn || sideOf(segment.done) === null) return null
  const missing = repeatsMissing(explained, segment, segment.done)
  const next = segments.slice(index + 1).find(({ kind }) => kind !== 're-hold' && kind !== 'turn')
  if (missing === null || next === undefined || turnsLost(track, segment.from, next.to) <= 0) return null
  if (track.standings[next.to].level < track.standings[segment.from].level) return null
  const details = {
    key: 'coach/too-seldom',
    side: sideOf(segment.done),
    nDone: segment.done.nTimes,
    nAdvised: segment.done.nTimes + missing,
  } as const
  return { details, from: segment.from, to: segment.to, since: segment.from, until: next.to, costTurns: null }
}

/**
 * @returns how many more would have brought the same piece home at once, as many as the lesson had in mind for it; null when
 *   none would, or too many
 */
function repeatsMissing({ track }: Explained, segment: Segment, { nTimes, pattern }: SequenceDone): number | null {
  const [before, after] = [track.standings[segment.from], track.standings[segment.to]]
  if (before.stage !== 2 || after.stage !== 2) return null
  const helped = before.left.pieces.filter((piece, at) => piece.nSequences - after.left.pieces[at].nSequences >= nTimes)
  // It may have been done for another piece, which is further now.
  if (helped.length !== 1) return null
  const position = copyCube(after.position)
  for (let missing = 1; missing <= MISSING_MAX; missing++) {
    applyTurns(position, pattern.turns)
    const { stage, left } = standingAt(position, track.span.to, track.book)
    const isHome = (piece: number) => stage !== 2 || left.pieces[piece].nTurns === 0
    const wasMeant = before.left.pieces.some(
      ({ nSequences }, piece) => nSequences === nTimes + missing && isHome(piece),
    )
    if (wasMeant) return missing
  }
  return null
}
