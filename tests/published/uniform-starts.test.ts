/**
 * Starts are uniform over all positions from which a stage can be played, checked stage by stage.
 *
 * Source of what is asked: World Cube Association, Regulations 2024, 4b3 (every state equally likely). Source of the
 * test: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.15; critical values at 0.1 %. How many cells there are,
 * and that they are equally likely, follows from the group (see `group-orders.test.ts`).
 */

import { expect, test } from 'vitest'
import { below, type RandomSource } from '../../engine/chance/random-source.ts'
import { type CubePosition, EDGES_AT, solvedCube } from '../../engine/cube/cube-position.ts'
import { isOddPermutation } from '../../engine/cube/legality.ts'
import { cornerCode, cornerPiece, cornerTwist, edgePiece } from '../../engine/cube/piece-code.ts'
import { CORNER_PLACES, EDGE_PLACES } from '../../engine/cube/piece-places.ts'
import { CASES_OF_STAGE, type CaseId, caseOf } from '../../engine/method/cases.ts'
import { drawArrangement, drawStart } from '../../engine/method/draw-start.ts'
import { TOP_CORNERS, TOP_EDGES } from '../../engine/method/goal-part.ts'
import { arrangementKey, arrangementsOf } from '../../engine/method/last-layer-arrangements.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { sourceNumbered } from '../engine/method/starts.ts'
import { looksFair } from './chi-square.ts'

/** At least 444 expected in each cell of the finest division. */
const N_DRAWS = 12_000

type Sampler = (stage: Stage, random: RandomSource) => CubePosition
type Cell = (position: CubePosition) => number | string

const cornerNamed = (name: string) => CORNER_PLACES.findIndex((place) => place.name === name)
const edgeNamed = (name: string) => EDGES_AT + EDGE_PLACES.findIndex((place) => place.name === name)

/** Which piece stands at a place and how it is turned, which piece alone, and how it is turned alone. */
const cornerAt =
  (name: string): Cell =>
  (position) =>
    position[cornerNamed(name)]
const cornerPieceAt =
  (name: string): Cell =>
  (position) =>
    cornerPiece(position[cornerNamed(name)])
const cornerTwistAt =
  (name: string): Cell =>
  (position) =>
    cornerTwist(position[cornerNamed(name)])
const edgeAt =
  (name: string): Cell =>
  (position) =>
    position[edgeNamed(name)]
const edgePieceAt =
  (name: string): Cell =>
  (position) =>
    edgePiece(position[edgeNamed(name)])

const cornerOrder: Cell = (position) => TOP_CORNERS.map((place) => cornerPiece(position[place])).join()
const edgeOrder: Cell = (position) => TOP_EDGES.map((place) => edgePiece(position[place])).join()
const parity: Cell = (position) => Number(isOddPermutation(Array.from(position.subarray(0, EDGES_AT), cornerPiece)))
const wholeArrangement =
  (stage: 4 | 5 | 6 | 7): Cell =>
  (position) =>
    arrangementKey(position, stage)

const drawnOfStage = new Map<Stage, CubePosition[]>()

/** One draw of many positions serves all rows of a stage. */
function drawn(stage: Stage): CubePosition[] {
  const known = drawnOfStage.get(stage)
  if (known !== undefined) return known
  const positions = draws(drawArrangement, stage, 100 + stage)
  drawnOfStage.set(stage, positions)
  return positions
}

function draws(sampler: Sampler, stage: Stage, seed: number): CubePosition[] {
  const random = sourceNumbered(seed)
  return Array.from({ length: N_DRAWS }, () => sampler(stage, random))
}

function countCells(positions: readonly CubePosition[], cell: Cell): Map<number | string, number> {
  const counts = new Map<number | string, number>()
  for (const position of positions) counts.set(cell(position), (counts.get(cell(position)) ?? 0) + 1)
  return counts
}

test.each([
  [1, 'the corner at one place', cornerPieceAt('URF'), 8],
  [1, 'the corner at another place and its twist', cornerAt('DBL'), 24],
  [1, 'the twist of the corner that is never drawn itself', cornerTwistAt('DLF'), 3],
  [1, 'the edge at one place', edgePieceAt('UF'), 12],
  [1, 'the edge at another place and its flip', edgeAt('DB'), 24],
  [1, 'the edge where the exchange that repairs the parity is made', edgeAt('UB'), 24],
  [1, 'the parity of the permutation', parity, 2],
  [2, 'the corner at a base place and its twist', cornerAt('DFR'), 24],
  [2, 'the corner at a top place and its twist', cornerAt('ULB'), 24],
  [2, 'the edge at a middle place and its flip', edgeAt('FR'), 16],
  [2, 'the edge at a top place and its flip', edgeAt('UB'), 16],
  [2, 'the parity of the permutation', parity, 2],
  [3, 'the corner at a top place and its twist', cornerAt('URF'), 12],
  [3, 'the edge at a middle place and its flip', edgeAt('BL'), 16],
  [3, 'the edge at a top place and its flip', edgeAt('UR'), 16],
  [3, 'the order of the corners', cornerOrder, 24],
  [4, 'the pattern of flips', wholeArrangement(4), 8],
  [4, 'the pattern of twists', wholeArrangement(5), 27],
  [4, 'the order of the corners', cornerOrder, 24],
  [4, 'the order of the edges', edgeOrder, 24],
  [5, 'the pattern of twists', wholeArrangement(5), 27],
  [5, 'the order of the corners', cornerOrder, 24],
  [5, 'the order of the edges', edgeOrder, 24],
  [6, 'the order of the corners', wholeArrangement(6), 24],
  [6, 'the order of the edges', edgeOrder, 24],
  [6, 'the parity of the permutation', parity, 2],
  [7, 'the order of the edges', wholeArrangement(7), 12],
] satisfies Array<[Stage, string, Cell, number]>)(
  '[ST2] stage %i, %s: %4$i cells equally likely',
  (stage, _, cell, nCells) => {
    const counts = [...countCells(drawn(stage), cell).values()]
    expect(counts.length).toBe(nCells)
    expect(looksFair(counts)).toBe(true)
  },
)

test.each([
  [4, undefined, 7],
  [5, undefined, 26],
  [6, undefined, 23],
  [7, undefined, 11],
  [4, ['line', 'dot'], 3],
  [5, ['none-up-two-sides', 'two-up-across'], 6],
  [6, ['aligned'], 3],
  [6, ['diagonal', 'aligned'], 7],
  [7, ['across', 'three-clockwise'], 5],
] satisfies Array<[4 | 5 | 6 | 7, CaseId[] | undefined, number]>)(
  '[ST2] stage %i, cases %j: the %i arrangements that are no goal and of these cases are equally likely',
  (stage, cases, nCells) => {
    const sampler: Sampler = (from, random) =>
      drawStart({ span: { from, to: from }, random, ...(cases === undefined ? {} : { cases }) })
    const counts = [...countCells(draws(sampler, stage, 200 + stage), wholeArrangement(stage)).values()]
    expect(counts.length).toBe(nCells)
    expect(looksFair(counts)).toBe(true)
  },
)

test.each([4, 5, 6, 7] as const)('[ST2] stage %i: each case is drawn as often as it has arrangements', (stage) => {
  const arrangements = arrangementsOf(stage).map((position) => caseOf(position, stage))
  const weights = CASES_OF_STAGE[stage].map((id) => arrangements.filter((found) => found === id).length)
  const met = countCells(drawn(stage), (position) => caseOf(position, stage))
  const counts = CASES_OF_STAGE[stage].map((id) => met.get(id) ?? 0)
  expect(looksFair(counts, weights)).toBe(true)
})

/** Samplers with well-known mistakes, to show that the test above can fail. */
const MISTAKES: ReadonlyArray<readonly [string, Sampler, 5 | 6]> = [
  ['a shuffle that exchanges each place with any place, not only with those up to it', cornersIn(exchangedWithAny), 6],
  ['sorting by chance instead of shuffling', cornersIn(sortedByChance), 6],
  ['a source of 32 different words only', (stage, random) => drawArrangement(stage, fiveBitsOf(random)), 5],
]

test.each(MISTAKES)('[ST2] the check notices %s', (_, sampler, stage) => {
  const met = countCells(draws(sampler, stage, 400), wholeArrangement(stage))
  const counts = arrangementsOf(stage).map((position) => met.get(arrangementKey(position, stage)) ?? 0)
  expect(looksFair(counts)).toBe(false)
})

function cornersIn(order: (places: number[], random: RandomSource) => void): Sampler {
  return (_, random) => {
    const homes = [...TOP_CORNERS]
    order(homes, random)
    const position = solvedCube()
    TOP_CORNERS.forEach((place, index) => {
      position[place] = cornerCode(homes[index], 0)
    })
    return position
  }
}

function exchangedWithAny(places: number[], random: RandomSource): void {
  for (let index = 0; index < places.length; index++) {
    const other = below(random, places.length)
    ;[places[index], places[other]] = [places[other], places[index]]
  }
}

function sortedByChance(places: number[], random: RandomSource): void {
  places.sort(() => below(random, 2) - 0.5)
}

function fiveBitsOf(random: RandomSource): RandomSource {
  return { nextUint32: () => random.nextUint32() % 32 }
}
