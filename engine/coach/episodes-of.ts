/** From an explained try to its episodes: what was done from one sound moment to the next. */

import { holdOf } from '../cube/hold.ts'
import { goalsBeforeMet } from '../method/goals.ts'
import type { ParTables } from '../search/par/open-par-tables.ts'
import { adviceAt } from './advice.ts'
import type { Explained } from './findings/finding.ts'
import type { Note } from './note.ts'
import type { DoneSequence, Episode } from './reading.ts'
import type { Segment } from './segment.ts'
import { countBetween, type TurnTrack } from './turn-track.ts'

/** Where par is looked up. */
export type Pars = Pick<ParTables, 'parOf'>

/** @param pars of single stages, or none @returns the episodes, which follow each other without gaps */
export function episodesOf(explained: Explained, notes: readonly Note[], pars: Pars | undefined): Episode[] {
  return grouped(explained).map((segments) => episodeOf(explained.track, segments, notes, pars))
}

/** An episode ends where everything stands that stood at its beginning, and something was done but re-hold or undo. */
function grouped({ track, segments }: Explained): Segment[][] {
  const groups: Segment[][] = []
  let open: Segment[] = []
  for (const segment of segments) {
    open.push(segment)
    const isSound = track.standings[segment.to].level >= track.standings[open[0].from].level
    const isIdle = open.every(({ kind }) => kind === 're-hold' || kind === 'undone')
    if (!isSound || isIdle) continue
    groups.push(open)
    open = []
  }
  if (open.length === 0) return groups
  const isIdle = open.every(({ kind }) => kind === 're-hold' || kind === 'undone')
  const last = groups[groups.length - 1]
  if (isIdle && last !== undefined) last.push(...open)
  else groups.push(open)
  return groups
}

function episodeOf(
  track: TurnTrack,
  segments: readonly Segment[],
  notes: readonly Note[],
  pars: Pars | undefined,
): Episode {
  const [from, to] = [segments[0].from, segments[segments.length - 1].to]
  const [before, after] = [track.standings[from], track.standings[to]]
  const advised = adviceAt(track, from)
  const { stage, lookFor } = advised
  const nTurns = countBetween(track, from, to)
  const isOpen = after.level < before.level
  const parBefore = pars === undefined ? null : pars.parOf(before.position, stage)
  const parAfter =
    pars === undefined || !goalsBeforeMet(after.position, stage) ? null : pars.parOf(after.position, stage)
  const nWasted = notes
    .filter(({ fromTurn }) => from <= fromTurn && fromTurn < to)
    .reduce((sum, { costTurns }) => sum + costTurns, 0)
  return {
    fromTurn: from,
    toTurn: to,
    stage,
    isRepair: stage < track.span.from,
    caseId: 'caseId' in lookFor ? lookFor.caseId : null,
    piece: 'piece' in lookFor ? lookFor.piece : null,
    done: segments.flatMap((segment) => doneIn(track, segment) ?? []),
    advised,
    nTurns,
    parBefore,
    parAfter,
    overPar: parBefore === null || parAfter === null ? null : nTurns - (parBefore - parAfter),
    nWasted: Math.min(nWasted, nTurns),
    isOpen,
  }
}

function doneIn(track: TurnTrack, segment: Segment): DoneSequence | null {
  if (!('done' in segment)) return null
  const { pattern, nTimes, beginsAt } = segment.done
  return {
    stage: pattern.stage,
    sequenceIndex: pattern.sequenceIndex,
    nTimes,
    hold: holdOf(track.standings[beginsAt].position),
    isExact: segment.kind === 'sequence',
  }
}
