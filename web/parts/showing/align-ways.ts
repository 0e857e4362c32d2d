/**
 * Ways through one start, laid beside each other: one square is one counted turn, and where two ways come through the same
 * moment of the puzzle they stand at the same place. The one that is there earlier waits. Pure.
 */

import { outerBlockCost } from '../../../engine/cube/outer-block-turns.ts'
import type { Turn } from '../../../engine/cube/turns.ts'

/** A moment of the puzzle, as the coach reads it: ways are at the same one when `key` is the same. */
export type WayMoment = { readonly key: string; readonly turnIndex: number }

export type AlignedWay = {
  /** Place, in squares from the margin, before each turn; one more for the end. A re-hold stands where the next turn begins. */
  readonly places: readonly number[]
  /** Where the way waits for another: before the turn of this index, so many squares. */
  readonly waits: readonly { readonly turnIndex: number; readonly squares: number }[]
}

/** A place that at least two ways share. */
export type SharedMoment = { readonly key: string; readonly place: number }

export type AlignedWays = {
  readonly ways: readonly AlignedWay[]
  /** In order of places; the start is not among them. */
  readonly moments: readonly SharedMoment[]
  /** Squares from the margin to the end of the longest way. */
  readonly nSquares: number
}

/**
 * @param ways each with the moments that it comes through, in order of turns
 * @returns where everything stands. A moment that some ways meet in another order is left out, and those only one way meets.
 */
export function alignWays(
  ways: readonly { readonly turns: readonly Turn[]; readonly moments: readonly WayMoment[] }[],
): AlignedWays {
  const keys = sharedKeys(ways.map(({ moments }) => moments.map(({ key }) => key)))
  const firsts = ways.map(
    ({ moments }) => new Map([...moments].reverse().map(({ key, turnIndex }) => [key, turnIndex])),
  )
  const costs = ways.map(({ turns }) => turns.map(outerBlockCost))
  // Moment by moment: whoever is there first waits for the one that is there last.
  const reached = ways.map(() => ({ turnIndex: 0, place: 0 }))
  const waits = ways.map((): { turnIndex: number; squares: number }[] => [])
  const moments: SharedMoment[] = []
  for (const key of keys) {
    const there = ways.flatMap((_, way) => {
      const turnIndex = firsts[way].get(key)
      if (turnIndex === undefined) return []
      const place = reached[way].place + sum(costs[way].slice(reached[way].turnIndex, turnIndex))
      return [{ way, turnIndex, place }]
    })
    const place = Math.max(...there.map((each) => each.place))
    for (const each of there) {
      if (each.place < place) waits[each.way].push({ turnIndex: each.turnIndex, squares: place - each.place })
      reached[each.way] = { turnIndex: each.turnIndex, place }
    }
    moments.push({ key, place })
  }
  // Two that no way meets both of may come out the other way round.
  moments.sort((a, b) => a.place - b.place)
  const aligned = ways.map((_, way) => ({ places: placesOf(costs[way], waits[way]), waits: waits[way] }))
  return { ways: aligned, moments, nSquares: Math.max(0, ...aligned.map(({ places }) => places[places.length - 1])) }
}

/** @returns how many turns of a way are done where the mark stands at `place`: all that end there or before */
export function turnsDoneAt({ places }: AlignedWay, place: number): number {
  let done = 0
  for (let index = 1; index < places.length; index++) if (places[index] <= place + EPSILON) done = index
  return done
}

const EPSILON = 1e-9

function placesOf(costs: readonly number[], waits: AlignedWay['waits']): number[] {
  const places = [0]
  for (let index = 0; index < costs.length; index++) {
    places[index] += waits.find(({ turnIndex }) => turnIndex === index)?.squares ?? 0
    places.push(places[index] + costs[index])
  }
  places[costs.length] += waits.find(({ turnIndex }) => turnIndex === costs.length)?.squares ?? 0
  return places
}

/** Keys that at least two ways meet, the first time each, in an order that none of these contradicts. */
function sharedKeys(rows: readonly (readonly string[])[]): string[] {
  const firstRows = rows.map((row) => [...new Set(row)])
  const all = [...new Set(firstRows.flat())].filter((key) => firstRows.filter((row) => row.includes(key)).length >= 2)
  const rank = (key: string) => {
    const at = firstRows.flatMap((row) => (row.includes(key) ? [row.indexOf(key) / Math.max(1, row.length - 1)] : []))
    return sum(at) / at.length
  }
  const kept: string[] = []
  for (const key of [...all].sort((a, b) => rank(a) - rank(b))) {
    const agrees = firstRows.every((row) => {
      const own = row.indexOf(key)
      return own < 0 || kept.every((before) => row.indexOf(before) <= own)
    })
    // The start is where all of them begin anyway.
    if (agrees && firstRows.some((row) => row.indexOf(key) > 0)) kept.push(key)
  }
  return kept
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
