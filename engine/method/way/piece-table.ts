/**
 * Stages 1 to 3 as a small graph: one piece of the stage, its 24 places-and-twists as seen, which slot is its home (4),
 * and which of the other slots are done already (they have to stay so). The shortest way through it is how the lesson
 * brings that piece home; the next piece is the one whose way is cheapest then, and among equals the first in the order
 * of their homes as seen.
 *
 * That leads to the goal: a step makes the way of its piece cheaper, so the cheapest way gets cheaper, until one more
 * slot is done; and no step undoes one.
 *
 * 1,536 states, some hundred choices; built in some ten milliseconds.
 * Source of the method: Bellman's equation solved by sweeps, R. Bellman, On a routing problem, 1958.
 */

import { N_PIECE_CODES } from '../../cube/piece-code.ts'
import type { PieceStage } from '../piece-cases.ts'
import type { BookSequence } from '../sequence-book.ts'
import { choicesOf, DISTURBING_COST, type LessonChoice } from './lesson-choice.ts'
import {
  doneMaskOf,
  findSpots,
  N_SLOTS,
  type PieceEffect,
  type PieceSpots,
  pieceEffectOf,
  type SpotKind,
  spotKindOf,
} from './piece-spots.ts'
import { answerOf, DONE, STUCK, type StageTable } from './stage-table.ts'

const N_MASKS = 2 ** N_SLOTS
const ALL_DONE = N_MASKS - 1

/**
 * How often in a row a sequence may be done in one step. Stage 2 is taught so: "repeat the trigger until the corner is
 * home", at most five times, since a trigger has order 6. Elsewhere a student looks anew after each sequence.
 */
const TIMES_IN_A_STEP_MAX: Readonly<Record<PieceStage, number>> = { 1: 1, 2: 5, 3: 1 }

const NO_CHOICE = -1

/** The table of a stage, with what the checker needs to walk over all arrangements. */
export type PieceTable = StageTable & {
  readonly stage: PieceStage
  readonly kind: SpotKind
  /** @returns the answer of `next` for pieces at these spots */
  nextFor(spots: PieceSpots): number
  /** Changes the spots as the choice does. `scratch` is overwritten. */
  carry(spots: PieceSpots, choice: number, scratch: PieceSpots): void
  /** @returns cost of the way home of a slot's piece, infinite when there is none */
  costOf(slot: number, spot: number, doneMask: number): number
  /** @returns index of the first choice of that way; negative when there is none */
  choiceFor(slot: number, spot: number, doneMask: number): number
}

/**
 * @param sequences the book's list for the stage; those with a fault are not used
 * @returns the table, with infinite costs where the book has no way
 */
export function buildPieceTable(stage: PieceStage, sequences: readonly BookSequence[]): PieceTable {
  const kind = spotKindOf(stage)
  // Nothing of these stages is finished by a top turn alone.
  const withSequence = choicesOf(stage, sequences, TIMES_IN_A_STEP_MAX[stage]).filter(({ nTimes }) => nTimes > 0)
  const effects = withSequence.map(({ effect }) => pieceEffectOf(effect, kind))
  const choices = withSequence.map((choice, index) =>
    effects[index].keeps === ALL_DONE ? choice : { ...choice, cost: choice.cost + DISTURBING_COST },
  )
  const costs = findCosts(kind, choices, effects)
  const firsts = findFirsts(costs, choices, effects)
  const spots = new Uint8Array(N_SLOTS)

  const nextFor = (at: PieceSpots): number => {
    const mask = doneMaskOf(at, kind)
    if (mask === ALL_DONE) return DONE
    let best = STUCK
    let bestCost = Number.POSITIVE_INFINITY
    for (let slot = 0; slot < N_SLOTS; slot++) {
      if ((mask >> slot) & 1) continue
      const state = stateOf(slot, at[slot], mask)
      if (costs[state] >= bestCost) continue
      bestCost = costs[state]
      best = answerOf(slot, firsts[state])
    }
    return best
  }

  return {
    stage,
    kind,
    choices,
    nextFor,
    next(seen) {
      findSpots(seen, kind, spots)
      return nextFor(spots)
    },
    carry(at, choice, scratch) {
      const { spotAfter } = effects[choice]
      for (let slot = 0; slot < N_SLOTS; slot++) {
        const after = spotAfter[slot * N_PIECE_CODES + at[slot]]
        scratch[Math.trunc(after / N_PIECE_CODES)] = after % N_PIECE_CODES
      }
      at.set(scratch)
    },
    costOf: (slot, spot, doneMask) => costs[stateOf(slot, spot, doneMask)],
    choiceFor: (slot, spot, doneMask) => firsts[stateOf(slot, spot, doneMask)],
  }
}

/** The bit of the slot itself is never set where it matters: a piece that is done is not looked for. */
function stateOf(slot: number, spot: number, doneMask: number): number {
  return (slot * N_PIECE_CODES + spot) * N_MASKS + doneMask
}

/** @returns the state after a choice; undefined states are never asked. Negative when it would undo a slot. */
function stateAfter({ spotAfter, maskAfter, keeps }: PieceEffect, state: number): number {
  const mask = state % N_MASKS
  if ((mask & ~keeps) !== 0) return NO_CHOICE
  return spotAfter[Math.trunc(state / N_MASKS)] * N_MASKS + maskAfter[mask]
}

/** Sweeps over all states until none finds a cheaper way: at most as many sweeps as the longest way has steps. */
function findCosts({ homes }: SpotKind, choices: readonly LessonChoice[], effects: readonly PieceEffect[]) {
  const costs = new Float64Array(N_SLOTS * N_PIECE_CODES * N_MASKS).fill(Number.POSITIVE_INFINITY)
  for (const [slot, home] of homes.entries()) costs.fill(0, stateOf(slot, home, 0), stateOf(slot, home, N_MASKS))
  for (let hasChanged = true; hasChanged; ) {
    hasChanged = false
    for (let choice = 0; choice < choices.length; choice++) {
      const { cost } = choices[choice]
      for (let state = 0; state < costs.length; state++) {
        const after = stateAfter(effects[choice], state)
        if (after === NO_CHOICE || costs[after] + cost >= costs[state]) continue
        costs[state] = costs[after] + cost
        hasChanged = true
      }
    }
  }
  return costs
}

/** @returns for each state the first choice, in the order of preference, with which a shortest way begins */
function findFirsts(costs: Float64Array, choices: readonly LessonChoice[], effects: readonly PieceEffect[]) {
  const firsts = new Int16Array(costs.length).fill(NO_CHOICE)
  for (let choice = choices.length - 1; choice >= 0; choice--) {
    for (let state = 0; state < costs.length; state++) {
      const after = stateAfter(effects[choice], state)
      if (after === NO_CHOICE || costs[after] === Number.POSITIVE_INFINITY) continue
      if (costs[after] + choices[choice].cost === costs[state]) firsts[state] = choice
    }
  }
  return firsts
}
