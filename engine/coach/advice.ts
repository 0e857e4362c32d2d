/** What the lesson would do at a moment of a try, and every other choice that leads on as well. */

import { afterTurns, applyTurns } from '../cube/apply-turn.ts'
import { copyCube } from '../cube/cube-position.ts'
import { type Hold, holdOf } from '../cube/hold.ts'
import { countOuterBlockTurns } from '../cube/outer-block-turns.ts'
import { type Turn, turnQuarters } from '../cube/turns.ts'
import type { LessonStep } from '../method/way/lesson-step.ts'
import { nextLessonStep } from '../method/way/lesson-steps.ts'
import { stageTable } from '../method/way/lesson-tables.ts'
import { turnsToBringBaseDown } from '../method/way/seen-cube.ts'
import { assert } from '../result.ts'
import { leadsOn } from './leads-on.ts'
import { standingAt, type TurnTrack } from './turn-track.ts'

/** A choice that leads on. */
export type GoodChoice = {
  readonly hold: Hold
  readonly topQuarters: number
  /** The sequence, once. */
  readonly turns: readonly Turn[]
  /** The most repeats with which it leads on. */
  readonly nTimes: number
  /** Is it the lesson's own? */
  readonly isLessons: boolean
}

/** @param moment before the goal of the span @returns the lesson's next step, the base brought down before it */
export function adviceAt({ standings, span, book }: TurnTrack, moment: number): LessonStep {
  const { position } = standings[moment]
  const step = nextLessonStep(afterTurns(position, turnsToBringBaseDown(position)), span, book)
  assert(step !== undefined, 'before the goal there is something to do')
  return step
}

/** @param moment before the goal of the span @returns all choices of the book that lead on there, whichever piece they are for */
export function goodChoicesAt(track: TurnTrack, moment: number): GoodChoice[] {
  const before = track.standings[moment]
  const { stage } = before
  assert(stage !== null, 'before the goal a stage is under way')
  const upright = afterTurns(before.position, turnsToBringBaseDown(before.position))
  const lessons = adviceAt(track, moment)
  const found = new Map<string, GoodChoice>()
  for (const { reHold, topTurn, sequenceIndex, nTimes, turns } of stageTable(track.book, stage).choices) {
    if (sequenceIndex === undefined) continue
    const after = copyCube(upright)
    applyTurns(after, turns)
    const once = track.book.stages[stage][sequenceIndex].turns
    if (!leadsOn(before, standingAt(after, track.span.to, track.book), nTimes * countOuterBlockTurns(once))) continue
    const hold = holdOf(reHold === undefined ? upright : afterTurns(upright, [reHold]))
    const topQuarters = topTurn === undefined ? 0 : turnQuarters(topTurn)
    const key = [hold, topQuarters, sequenceIndex].join()
    const lessonHold = holdOf(afterTurns(upright, lessons.hold.turns))
    const isLessons =
      hold === lessonHold && (topTurn ?? null) === lessons.do.topTurn && sequenceIndex === lessons.do.sequenceIndex
    const known = found.get(key)
    if (known === undefined || known.nTimes < nTimes) {
      found.set(key, { hold, topQuarters, turns: once, nTimes, isLessons })
    }
  }
  return [...found.values()]
}
