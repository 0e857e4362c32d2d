import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { chachaSource } from '../../../../engine/chance/chacha-source.ts'
import { below } from '../../../../engine/chance/random-source.ts'
import { afterTurns, applyTurn } from '../../../../engine/cube/apply-turn.ts'
import { type CubePosition, copyCube, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { N_HOLDS, turnsToHold } from '../../../../engine/cube/hold.ts'
import { FACE_TURNS, inverseTurns } from '../../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../../engine/method/draw-start.ts'
import { stepsBeforeGoal } from '../../../../engine/method/goal-reached.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import { arrangementsOf } from '../../../../engine/method/last-layer-arrangements.ts'
import { STAGES, type Stage } from '../../../../engine/method/stages.ts'
import { openParTables } from '../../../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../../../engine/search/par/open-shortest-solutions.ts'
import { findShortest, type SearchGround } from '../../../../engine/search/shortest/find-shortest.ts'
import type { ShortestAnswer } from '../../../../engine/search/shortest/shortest-answer.ts'
import { deepen, type LowerBound, type WalkedNumber } from '../../../../engine/search/tables/deepen.ts'
import { openTables } from '../../../../engine/search/tables/lower-bounds.ts'
import { TABLE_NAMES } from '../../../../engine/search/tables/search-tables.ts'
import { SEED, turns } from '../../cube/arbitraries.ts'
import { fewestTurns } from '../par/plain-search.ts'
import { filledSearchTables } from '../tables/filled-search-tables.ts'
import { afterNodes } from '../two-phase/two-phase-tables.ts'

let ground: SearchGround
const random = chachaSource(new Uint8Array(32).fill(3))
const never = () => false

beforeAll(async () => {
  const [pars, solutions] = [await openParTables(), await openShortestSolutions()]
  if (!pars.ok || !solutions.ok) throw new Error('The shipped tables open')
  ground = { pars: pars.value, solutions: solutions.value, tables: openTables(filledSearchTables(TABLE_NAMES)) }
}, 60_000)

/** A goal that is some face turns away: so near that a plain search can prove it. */
const aNearStart = fc.tuple(
  fc.array(fc.constantFrom(...FACE_TURNS), { minLength: 1, maxLength: 6 }),
  fc.constantFrom(...STAGES.slice(1)),
)

function expectAnswer(answer: ShortestAnswer, position: CubePosition, to: Stage): void {
  expect(stepsBeforeGoal(position, answer.turns, to)).toBe(answer.turns.length)
  expect(answer.proven).toBe(answer.lowerBound === answer.turns.length)
  expect(answer.lowerBound).toBeLessThanOrEqual(answer.turns.length)
}

test('[SE54] no solution is shorter than the one found, as a plain search from both ends proves', () => {
  fc.assert(
    fc.property(aNearStart, ([word, to]) => {
      const position = afterTurns(solvedCube(), word)
      const answer = findShortest({ position, to, shouldStop: never }, ground)
      expectAnswer(answer, position, to)
      expect([answer.proven, answer.turns.length]).toEqual([true, fewestTurns(position, to, word.length)])
    }),
    { seed: SEED, numRuns: 60 },
  )
}, 60_000)

test('[SE51] no bound is above the distance, at any position of a word that leads to the goal', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 14 }), fc.nat(), (word, seed) => {
      for (const to of [2, 3, 4, 5, 6, 7] as const) {
        // Backwards from the goal: every position on the way is as many turns away as were made, or fewer.
        const goal = to === 7 ? solvedCube() : drawArrangement((to + 1) as Stage, sourceOf(seed))
        const position = copyCube(goal)
        for (const [index, turn] of word.entries()) {
          applyTurn(position, turn)
          expect(greatestBound(position, to)).toBeLessThanOrEqual(index + 1)
        }
      }
    }),
    { seed: SEED, numRuns: 60 },
  )
})

/** What the bounds say of the position itself, read as `deepen` reads them. */
function greatestBound(position: CubePosition, to: Stage): number {
  const { numbers, bounds } = ground.tables.boundsFor(position, to)
  return Math.max(...bounds.map((bound) => entryOf(bound, numbers)))
}

function entryOf(bound: LowerBound, numbers: readonly WalkedNumber[]): number {
  const at = (index: number) => numbers[index].start
  let entry = 0
  if (bound.kind === 'pair') entry = at(bound.row) * bound.nColumns + at(bound.column)
  else {
    const rank = at(bound.high) * bound.factor + at(bound.low)
    const image = bound.columnImages[bound.symmetryOf[rank] * bound.nColumns + at(bound.column)]
    entry = bound.classOf[rank] * bound.rowEntries + image
  }
  return (bound.distances[entry >> 1] >> ((entry & 1) * 4)) & 15
}

test('[SE55] one stage away the answer is par, looked up, in every hold', () => {
  for (const stage of STAGES) {
    for (let draw = 0; draw < 40; draw++) {
      const position = afterTurns(drawArrangement(stage, random), turnsToHold(below(random, N_HOLDS)))
      const answer = findShortest({ position, to: stage, shouldStop: never }, ground)
      expectAnswer(answer, position, stage)
      expect([answer.turns.length, answer.proven, answer.nNodes]).toEqual([ground.pars.parOf(position, stage), true, 0])
    }
  }
})

// Live search and table are made in ways that share nothing: iterative deepening here, meeting in the middle there.
test.each([
  [2, 60],
  [3, 12],
  [4, 8],
  [5, 27],
] as const)(
  '[SE56] a live search finds the pars of stage %i that the tables hold',
  (stage, nStarts) => {
    const starts = stage < 4 ? Array.from({ length: nStarts }, () => drawArrangement(stage, random)) : []
    for (const position of stage < 4 ? starts : arrangementsOf(stage as 4 | 5)) {
      const answer = deepen({
        ...ground.tables.boundsFor(position, stage),
        isGoal: (turns) => goalMet(afterTurns(position, turns), stage),
        atLeast: 0,
        turnsMax: 14,
        shouldStop: never,
      })
      expect(answer.kind === 'found' && answer.turns.length).toBe(ground.pars.parOf(position, stage))
    }
  },
  30_000,
)

test('[SE57] cross and first layer in one go are proven from any position, never longer than the two pars', () => {
  for (let draw = 0; draw < 40; draw++) {
    const position = afterTurns(drawArrangement(1, random), turnsToHold(below(random, N_HOLDS)))
    const answer = findShortest({ position, to: 2, shouldStop: never }, ground)
    expectAnswer(answer, position, 2)
    expect(answer.proven).toBe(true)
    expect(answer.turns.length).toBeGreaterThanOrEqual(ground.pars.parOf(position, 1))
    const stageByStage = ground.solutions.shortestSolutionOf(position, 1)
    const inTwo = stageByStage.length + ground.pars.parOf(afterTurns(position, stageByStage), 2)
    expect(answer.turns.length).toBeLessThanOrEqual(inTwo)
  }
})

test('[SE58] a search that is stopped gives the best known way, labelled so, with what is proven', () => {
  for (const [from, to] of [
    [1, 3],
    [2, 3],
    [3, 7],
    [1, 7],
  ] as const) {
    const position = drawArrangement(from, random)
    const answer = findShortest({ position, to, shouldStop: afterNodes(400_000) }, ground)
    expectAnswer(answer, position, to)
    expect([answer.proven, answer.lowerBound >= ground.pars.parOf(position, from)]).toEqual([false, true])
    expect(answer.nNodes).toBeLessThan(600_000)
  }
})

// Starts on which a bold search once came past the goal and went on: its word reached the goal a turn before its end.
test.each([
  ["L2 F2 U' B2 L2 B2 U R2 U' R2 F D' F' D L' F' R' D' B2 L' U", 300_000],
  ["D' R2 F2 U2 F2 U R2 U F2 U' F' R D2 L' B D' F2 R2 F2 U B R' U'", 9_000_000],
])(
  '[SE58] the best known way to the second layer after %s ends when it meets the goal',
  (scramble, nNodes) => {
    const position = afterTurns(solvedCube(), turns(scramble))
    for (let nNodesNow = nNodes / 10; nNodesNow <= nNodes; nNodesNow += nNodes / 10) {
      const answer = findShortest({ position, to: 3, shouldStop: afterNodes(nNodesNow) }, ground)
      expectAnswer(answer, position, 3)
    }
  },
  60_000,
)

test('[SE58] a search that may not look at a single node still gives a way', () => {
  const position = drawArrangement(1, random)
  const answer = findShortest({ position, to: 7, shouldStop: () => true }, ground)
  expectAnswer(answer, position, 7)
})

test('[SE58] a way that is known is never made longer', () => {
  const word = Array.from({ length: 18 }, () => FACE_TURNS[below(random, FACE_TURNS.length)])
  const position = afterTurns(solvedCube(), word)
  const known = [inverseTurns(word)]
  const answer = findShortest({ position, to: 7, known, shouldStop: afterNodes(100_000) }, ground)
  expectAnswer(answer, position, 7)
  expect(answer.turns.length).toBeLessThanOrEqual(word.length)
})

test('[SE59] at the goal, and beyond it, there is nothing to do', () => {
  for (const to of STAGES) {
    const answer = findShortest({ position: solvedCube(), to, shouldStop: never }, ground)
    expect(answer).toEqual({ turns: [], proven: true, lowerBound: 0, nNodes: 0 })
  }
})

function sourceOf(seed: number) {
  return chachaSource(new Uint8Array(32).fill(seed & 255))
}
