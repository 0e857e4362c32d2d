/**
 * What the notes of one try cost together. Most of it is measured on the lesson, as if the lesson had gone on from there; but
 * a mistake may be made good in fewer turns than the lesson takes, and two notes may be about the same turns. So each turn is
 * counted once, and of a try that reached its goal all notes together cost no more than it took beyond a way that is known:
 * its own turns up to some moment and the lesson from there. No such way is under par, so a child that adds up what was said
 * never comes to more than turns less par.
 */

import type { Note } from './note.ts'
import { countBetween, lessonTurnsToGoal, type TurnTrack } from './turn-track.ts'

/** A note and where its cost was measured. */
export type Costing = {
  readonly note: Note
  /** Moments from which to which the way became longer. */
  readonly since: number
  readonly until: number
  /** Plain from the turns alone: without them the rest would have come to the same. Else measured on the lesson. */
  readonly isPlain: boolean
}

/**
 * @param costings each with its cost as measured on its own
 * @returns the notes, the dearest first; a note whose turns are all counted elsewhere is left out
 */
export function costsTogether(track: TurnTrack, costings: readonly Costing[]): Note[] {
  const plain = costings.filter(({ isPlain }) => isPlain)
  const once = costings.flatMap((costing) => {
    const { note, since, until, isPlain } = costing
    if (isPlain) return [costing]
    const costTurns = note.costTurns - sumOf(plain.filter((each) => since <= each.since && each.until <= until))
    return costTurns > 0 || note.isOpen ? [withCost(costing, Math.max(0, costTurns))] : []
  })
  const measured = once.filter(({ isPlain }) => !isPlain)
  const most = measured.length === 0 ? 0 : spareTurns(track, plain, measured)
  const sum = sumOf(measured)
  return once
    .map((costing) => {
      const asMeasured = costing.note.costTurns
      if (costing.isPlain || sum <= most) return { note: costing.note, asMeasured }
      return { note: withCost(costing, Math.floor((asMeasured * most) / sum)).note, asMeasured }
    })
    .filter(({ note }) => note.key !== 'coach/long-way' || note.costTurns > 0)
    .sort(
      (a, b) => b.note.costTurns - a.note.costTurns || b.asMeasured - a.asMeasured || a.note.fromTurn - b.note.fromTurn,
    )
    .map(({ note }) => note)
}

/** @returns turns that the try took beyond the shortest way that is known, and beyond what is plain; no end of them before the goal */
function spareTurns(track: TurnTrack, plain: readonly Costing[], measured: readonly Costing[]): number {
  const end = track.turns.length
  if (track.standings[end].stage !== null) return Number.POSITIVE_INFINITY
  const nNeeded = (moment: number) =>
    countBetween(track, 0, moment) - sumOf(plain.filter(({ until }) => until <= moment))
  const least = [0, end, ...measured.map(({ since }) => since)].map(
    (moment) => nNeeded(moment) + lessonTurnsToGoal(track, moment),
  )
  return nNeeded(end) - Math.min(...least)
}

function sumOf(costings: readonly Costing[]): number {
  return costings.reduce((sum, { note }) => sum + note.costTurns, 0)
}

function withCost(costing: Costing, costTurns: number): Costing {
  return { ...costing, note: { ...costing.note, costTurns } }
}
