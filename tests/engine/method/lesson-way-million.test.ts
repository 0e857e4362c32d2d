import { expect, test } from 'vitest'
import { applyTurns } from '../../../engine/cube/apply-turn.ts'
import { composePositions } from '../../../engine/cube/compose-positions.ts'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { checkBook } from '../../../engine/method/book/check-book.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { goalMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { STAGES, type Stage } from '../../../engine/method/stages.ts'
import { sourceNumbered } from './starts.ts'

/** Two uniformly drawn positions one after the other are a uniformly drawn position again: 1,000 times 1,000 of them. */
const N_DRAWN = 1_000
const N_POSITIONS = N_DRAWN ** 2

/** A million ways take about twenty seconds on two slow cores. */
const TIMEOUT_MS = 240_000

test('[LW9] the lesson way reaches the goal of every stage, from a million random positions', {
  timeout: TIMEOUT_MS,
}, () => {
  const random = sourceNumbered(9)
  const firsts = Array.from({ length: N_DRAWN }, () => drawArrangement(1, random))
  const seconds = Array.from({ length: N_DRAWN }, () => drawArrangement(1, random))
  const nTurns = new Map<Stage, number>(STAGES.map((stage) => [stage, 0]))
  const nWays = new Map<Stage, number>(STAGES.map((stage) => [stage, 0]))
  let nReached = 0
  for (let index = 0; index < N_POSITIONS; index++) {
    const to = STAGES[index % STAGES.length]
    const position = composePositions(firsts[Math.trunc(index / N_DRAWN)], seconds[index % N_DRAWN])
    const way = lessonWay(position, { from: 1, to })
    applyTurns(position, way)
    if (goalMet(position, to)) nReached++
    nTurns.set(to, (nTurns.get(to) ?? 0) + countOuterBlockTurns(way))
    nWays.set(to, (nWays.get(to) ?? 0) + 1)
  }
  expect(nReached).toBe(N_POSITIONS)

  // The checker's means are exact; 142,857 ways a stage have a standard error of less than 0.15 turns.
  let meanTurns = 0
  for (const { stage, figures } of checkBook(LESSON_BOOK).stages) {
    meanTurns += figures?.turns.mean ?? Number.NaN
    expect(Math.abs((nTurns.get(stage) ?? 0) / (nWays.get(stage) ?? 0) - meanTurns)).toBeLessThan(0.8)
  }
})
