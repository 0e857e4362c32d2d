/** From an explained try to its notes: what is said, what it cost, and in which order. */

import { formatRepeated } from '../method/book/format-book.ts'
import { caseOf, isLastLayerStage } from '../method/cases.ts'
import type { StageCaseId } from '../method/piece-cases.ts'
import { adviceAt } from './advice.ts'
import { type Costing, costsTogether } from './costs-together.ts'
import { broken } from './findings/broken.ts'
import type { Explained, Finder, Finding } from './findings/finding.ts'
import { insideOwnWays } from './findings/inside-own-way.ts'
import { longWay } from './findings/long-way.ts'
import { needlessReHolds } from './findings/needless-re-holds.ts'
import { nowhere } from './findings/nowhere.ts'
import { roundAgain, topTurnAlone, topTurnBefore } from './findings/right-step.ts'
import { slipped } from './findings/slipped.ts'
import { stoppedEarly } from './findings/stopped-early.ts'
import { twoTopsForOne } from './findings/two-tops-for-one.ts'
import { underWay } from './findings/under-way.ts'
import { undone } from './findings/undone.ts'
import { wrongStep } from './findings/wrong-step.ts'
import type { Note, NoteFacts } from './note.ts'
import type { Segment } from './segment.ts'
import { countBetween, soundAgain, type TurnTrack, turnsLost } from './turn-track.ts'

const FINDERS: readonly Finder[] = [
  undone,
  twoTopsForOne,
  slipped,
  underWay,
  wrongStep,
  roundAgain,
  topTurnBefore,
  topTurnAlone,
  stoppedEarly,
  broken,
  nowhere,
  longWay,
]

/**
 * @returns the notes, the dearest first; what made nothing longer is left out, but for re-holds, which are free. What they
 *   cost together: `costs-together.ts`.
 */
export function notesOf(explained: Explained): Note[] {
  const { track, segments } = explained
  const ofSegments = segments.flatMap((segment, index) =>
    FINDERS.flatMap((find) => {
      const finding = find(explained, index)
      return finding === null ? [] : (costingOf(track, finding, segment) ?? [])
    }),
  )
  const others = [...insideOwnWays(explained), ...needlessReHolds(track)].flatMap(
    (finding) => costingOf(track, finding, segmentAt(segments, finding.from)) ?? [],
  )
  return costsTogether(track, [...ofSegments, ...others])
}

function segmentAt(segments: readonly Segment[], moment: number): Segment | undefined {
  return segments.find(({ from, to }) => from <= moment && moment < to)
}

function costingOf(track: TurnTrack, finding: Finding, segment: Segment | undefined): Costing | null {
  const { details, from, to, since } = finding
  const sound = soundAgain(track, since, finding.until)
  const isOpen = sound === null
  const until = sound ?? track.turns.length
  const costTurns = finding.costTurns ?? (isOpen ? countBetween(track, since, until) : turnsLost(track, since, until))
  if (costTurns <= 0 && !isOpen && details.key !== 'coach/needless-re-hold') return null
  const facts = factsAt(track, since, finding.until, segment)
  const note = { ...facts, fromTurn: from, toTurn: to, costTurns, isOpen, ...details }
  // What is plain is plain of its own turns, whatever was broken meanwhile.
  return finding.costTurns === null
    ? { note, since, until, isPlain: false }
    : { note, since: from, until: to, isPlain: true }
}

type CaseFacts = Pick<NoteFacts, 'stage' | 'caseId' | 'piece' | 'becomes' | 'broken' | 'sequence' | 'sequenceStage'>

function factsAt(track: TurnTrack, since: number, until: number, segment: Segment | undefined): CaseFacts {
  const [before, after] = [track.standings[since], track.standings[until]]
  const { lookFor, stage } = adviceAt(track, since)
  const isBroken = after.level < before.level
  const done = segment !== undefined && 'done' in segment ? segment.done : null
  return {
    stage,
    caseId: 'caseId' in lookFor ? lookFor.caseId : null,
    piece: 'piece' in lookFor ? lookFor.piece : null,
    becomes: isBroken || after.stage !== stage ? null : caseAt(track, until),
    broken: isBroken ? after.stage : null,
    sequence:
      done === null
        ? null
        : formatRepeated(
            track.book.stages[done.pattern.stage][done.pattern.sequenceIndex].written,
            Math.max(done.nTimes, done.pattern.nTimes),
          ),
    sequenceStage: done?.pattern.stage ?? null,
  }
}

function caseAt({ standings }: TurnTrack, moment: number): StageCaseId | null {
  const { stage, position } = standings[moment]
  return stage !== null && isLastLayerStage(stage) ? caseOf(position, stage) : null
}
