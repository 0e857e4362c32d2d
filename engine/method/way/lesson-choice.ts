/**
 * What a student may do next in the lesson: hold the cube another way, turn the top layer, do a sequence of the book,
 * once or several times in a row. The two in front of the sequence may be left out.
 */

import { afterTurns } from '../../cube/apply-turn.ts'
import { solvedCube } from '../../cube/cube-position.ts'
import { holdOf } from '../../cube/hold.ts'
import { countOuterBlockTurns } from '../../cube/outer-block-turns.ts'
import { type Turn, turnOf } from '../../cube/turns.ts'
import { sequenceFault } from '../book/book-fault.ts'
import type { BookSequence } from '../sequence-book.ts'
import type { Stage } from '../stages.ts'
import { type SeenEffect, seenEffectOf } from './seen-cube.ts'

/** One thing to do, with what it costs and what it does. */
export type LessonChoice = {
  /** A re-hold about the vertical axis: y, y' or y2. */
  readonly reHold: Turn | undefined
  /** A turn of the top layer. */
  readonly topTurn: Turn | undefined
  /** Place in the stage's list of sequences; undefined when turning the top layer is all. */
  readonly sequenceIndex: number | undefined
  /** How often in a row the sequence is done; 0 without one. */
  readonly nTimes: number
  /** All turns, in the order in which they are done: re-hold, top turn, sequences. */
  readonly turns: readonly Turn[]
  /** How many of them stand in front of the sequence, 0..2. */
  readonly nTurnsInFront: number
  readonly cost: number
  readonly effect: SeenEffect
}

/**
 * Shortest means: fewest steps (times to look and hold anew), then fewest sequences, then fewest that disturb, then fewest
 * turns, then top turns as late as can be, then fewest re-holds. But for stage 2 a step has one sequence, so that
 * sequences come first.
 *
 * The weights keep these apart for ways of fewer than 90 steps, 1,000 sequences, 100,000 turns, 100 top turns and 100
 * re-holds; all sums are whole numbers below 2^53. A way never comes twice to the same arrangement (at most 27) or spot
 * of its piece (at most 24), and a step has at most 5 sequences of 200 turns.
 */
const STEP_COST = 1e14
const SEQUENCE_COST = 1e11
/**
 * At stages 1 to 3 a step costs that much more when it pushes something out of one of the stage's own four places; added
 * by `piece-table.ts`, which knows the places. So a piece is fetched without disturbing any place where that takes no more
 * sequences, and is fetched in the same way whatever else is done or not.
 */
export const DISTURBING_COST = 1e9
const TURN_COST = 1e4
/** A top turn ahead of a sequence costs a little more, so that the layer is aligned at the end, as it is taught. */
const EARLY_TOP_TURN_COST = 1e2
const RE_HOLD_COST = 1

/** @returns how many sequences a cost stands for */
export function sequencesIn(cost: number): number {
  return Math.trunc((cost % STEP_COST) / SEQUENCE_COST)
}

/** @returns how many outer block turns a cost stands for */
export function turnsIn(cost: number): number {
  return Math.trunc((cost % DISTURBING_COST) / TURN_COST)
}

/** @returns do two costs stand for as many steps, sequences and re-holds? Turns are not compared. */
export function isAsMuchToDo(one: number, other: number): boolean {
  if (one === Number.POSITIVE_INFINITY || other === Number.POSITIVE_INFINITY) return one === other
  const isSameCount = Math.trunc(one / SEQUENCE_COST) === Math.trunc(other / SEQUENCE_COST)
  return isSameCount && one % EARLY_TOP_TURN_COST === other % EARLY_TOP_TURN_COST
}

/**
 * In the order in which equally short ways are preferred: a re-hold is rather done now than later, because the hold can
 * then stay as it is while the sequence is repeated.
 */
const RE_HOLDS = [turnOf('y'), turnOf("y'"), turnOf('y2'), undefined]
const HOME_HOLD = 0
const NO_TOP_TURN = [undefined]
const TOP_TURNS = [undefined, turnOf('U'), turnOf("U'"), turnOf('U2')]

/**
 * @param sequences the book's list for the stage; those with a fault are left out
 * @param nTimesMax how often a sequence may be done in one step, provided that it ends in the hold in which it began
 * @returns every sequence behind every top turn and re-hold, and last the top turns alone. No top turn at stage 7: the
 *   corners are home, and a sequence that keeps them home does not lead back what a top turn leads out.
 */
export function choicesOf(stage: Stage, sequences: readonly BookSequence[], nTimesMax: number): LessonChoice[] {
  const choices: LessonChoice[] = []
  const topTurns = stage === 7 ? NO_TOP_TURN : TOP_TURNS
  sequences.forEach(({ turns }, sequenceIndex) => {
    if (sequenceFault(turns, stage, sequenceIndex) !== undefined) return
    const nTimesEnd = holdOf(afterTurns(solvedCube(), turns)) === HOME_HOLD ? nTimesMax : 1
    for (let nTimes = 1; nTimes <= nTimesEnd; nTimes++) {
      const repeated = Array.from({ length: nTimes }, () => turns).flat()
      for (const topTurn of topTurns) {
        for (const reHold of RE_HOLDS) choices.push(choice(reHold, topTurn, sequenceIndex, nTimes, repeated))
      }
    }
  })
  for (const topTurn of topTurns) {
    if (topTurn !== undefined) choices.push(choice(undefined, topTurn, undefined, 0, []))
  }
  return choices
}

function choice(
  reHold: Turn | undefined,
  topTurn: Turn | undefined,
  sequenceIndex: number | undefined,
  nTimes: number,
  repeated: readonly Turn[],
): LessonChoice {
  const inFront = [reHold, topTurn].filter((turn) => turn !== undefined)
  const turns = [...inFront, ...repeated]
  const cost =
    (sequenceIndex === undefined ? 0 : STEP_COST) +
    SEQUENCE_COST * nTimes +
    TURN_COST * countOuterBlockTurns(turns) +
    (topTurn === undefined || sequenceIndex === undefined ? 0 : EARLY_TOP_TURN_COST) +
    (reHold === undefined ? 0 : RE_HOLD_COST)
  const effect = seenEffectOf(turns)
  return { reHold, topTurn, sequenceIndex, nTimes, turns, nTurnsInFront: inFront.length, cost, effect }
}
