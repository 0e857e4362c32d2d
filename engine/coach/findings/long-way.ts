/**
 * It worked, with more turns than the lesson takes for as much: a way of one's own, or at stages 1 to 3 another sequence of
 * the book.
 *
 *     R U R' U' five times    where one A brings the corner home
 *     B B B B B               where one A, held otherwise, does
 */

import type { SequenceDone } from '../segment.ts'
import { countBetween, isMending, type TurnTrack, turnsLost } from '../turn-track.ts'
import { aboutSegment, type Finder } from './finding.ts'

/** After so many times a trigger has done nothing; more of them are told as too often. */
const ORDER_OF_A_TRIGGER = 6

/** Never said of a way that is as short as the lesson's, nor of the mending of what broke before. */
export const longWay: Finder = ({ track, segments }, index) => {
  const segment = segments[index]
  const isLong =
    segment.kind === 'own-way' ? segment.isLong : segment.kind === 'sequence' && isLongSequence(track, segment)
  // While something is being mended, that it broke was said already.
  if (!isLong || isMending(track, segment.from)) return null
  const nTurns = countBetween(track, segment.from, segment.to)
  const nLessonTurns = nTurns - turnsLost(track, segment.from, segment.to)
  return aboutSegment(segment, { key: 'coach/long-way', nTurns, nLessonTurns })
}

type Done = { readonly from: number; readonly to: number; readonly done: SequenceDone; readonly leadsOn: boolean }

function isLongSequence(track: TurnTrack, segment: Done): boolean {
  const { from, to, done, leadsOn } = segment
  if (!bringsHome(track, segment) || done.nTimes > ORDER_OF_A_TRIGGER || done.nTops > 1) return false
  // Within a stage one that leads on is never long: which piece comes first is free, and what that costs the others too.
  const isFinished = track.standings[to].stage !== track.standings[from].stage
  return (!leadsOn || isFinished) && turnsLost(track, from, to) > 0
}

/** @returns is a piece of stages 1 to 3 home after a sequence that was not before, and none has left its home? */
export function bringsHome({ standings }: TurnTrack, { from, to }: Pick<Done, 'from' | 'to'>): boolean {
  const { stage, level } = standings[from]
  return stage !== null && stage <= 3 && standings[to].level > level
}
