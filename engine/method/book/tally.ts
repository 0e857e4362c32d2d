/** Adds up ways of one kind: their number, the longest, the mean. */

import { sequencesIn, turnsIn } from '../way/lesson-choice.ts'
import type { Figures, WayFigures } from './book-report.ts'

/** Sums so far. */
export type Tally = {
  nWays: number
  /** Ways that never end. */
  nStuck: number
  readonly sequences: { longest: number; sum: number }
  readonly turns: { longest: number; sum: number }
}

/** @returns an empty tally */
export function newTally(): Tally {
  return { nWays: 0, nStuck: 0, sequences: { longest: 0, sum: 0 }, turns: { longest: 0, sum: 0 } }
}

/** Adds a way that leads to its goal. */
export function addWay(tally: Tally, nSequences: number, nTurns: number): void {
  tally.nWays++
  addTo(tally.sequences, nSequences)
  addTo(tally.turns, nTurns)
}

/** Adds a way that never ends. */
export function addStuck(tally: Tally): void {
  tally.nWays++
  tally.nStuck++
}

/** @param cost of a way, as in `lesson-choice.ts`; infinite when it never ends */
export function addCost(tally: Tally, cost: number): void {
  if (cost === Number.POSITIVE_INFINITY) addStuck(tally)
  else addWay(tally, sequencesIn(cost), turnsIn(cost))
}

/** @returns longest and mean; null when a way never ends or there is none */
export function figuresOf({ nWays, nStuck, sequences, turns }: Tally): WayFigures | null {
  if (nStuck > 0 || nWays === 0) return null
  const figures = ({ longest, sum }: { longest: number; sum: number }): Figures => ({ longest, mean: sum / nWays })
  return { sequences: figures(sequences), turns: figures(turns) }
}

/** @returns the figures of ways done one after the other, chosen without regard to each other; null if one is */
export function sumOfFigures(all: ReadonlyArray<WayFigures | null>): WayFigures | null {
  let sum: WayFigures = { sequences: { longest: 0, mean: 0 }, turns: { longest: 0, mean: 0 } }
  for (const each of all) {
    if (each === null) return null
    sum = { sequences: plus(sum.sequences, each.sequences), turns: plus(sum.turns, each.turns) }
  }
  return sum
}

function plus(one: Figures, other: Figures): Figures {
  return { longest: one.longest + other.longest, mean: one.mean + other.mean }
}

function addTo(count: { longest: number; sum: number }, amount: number): void {
  count.longest = Math.max(count.longest, amount)
  count.sum += amount
}
