/** Solutions in which nothing went wrong. Rules CC: tests/RULES.md. */

import { expect, test } from 'vitest'
import { below } from '../../../engine/chance/random-source.ts'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { FACE_TURNS, inverseTurns, type Turn, turnAxis } from '../../../engine/cube/turns.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { STAGES, type StageSpan } from '../../../engine/method/stages.ts'
import { openParTables } from '../../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../../engine/search/par/open-shortest-solutions.ts'
import { sourceNumbered } from '../method/starts.ts'
import { freeLessonWay, heldOtherwise } from './faultless.ts'

const SPANS: readonly StageSpan[] = STAGES.flatMap((from) =>
  STAGES.filter((to) => from <= to).map((to) => ({ from, to })),
)
const N_STARTS_PER_SPAN = 100
const N_STARTS_PER_STAGE = 400
const N_SCRAMBLES = 400

test('[CC2] there is nothing to say about the lesson way, over any span and from any hold', () => {
  for (const span of SPANS) {
    for (let number = 0; number < N_STARTS_PER_SPAN; number++) {
      const random = sourceNumbered(number * 100 + span.from * 10 + span.to)
      const start = heldOtherwise(drawArrangement(span.from, random), random)
      const reading = readSolution({ start, turns: lessonWay(start, span), span })
      expect({ number, span, notes: reading.notes }).toEqual({ number, span, notes: [] })
    }
  }
}, 60_000)

test('[CC2] nor about one with the holds and the order of pieces that the lesson leaves free', () => {
  for (const span of SPANS) {
    for (let number = 0; number < N_STARTS_PER_SPAN; number++) {
      const random = sourceNumbered(500_000 + number * 100 + span.from * 10 + span.to)
      const start = drawArrangement(span.from, random)
      const reading = readSolution({ start, turns: freeLessonWay(start, span, random), span })
      expect({ number, span, notes: reading.notes }).toEqual({ number, span, notes: [] })
    }
  }
}, 60_000)

test('[CC2] nor about a shortest solution of a stage, which is at par', async () => {
  const [solutions, pars] = await Promise.all([openShortestSolutions(), openParTables()])
  if (!solutions.ok || !pars.ok) throw new Error('the shipped tables can be read')
  for (const stage of STAGES) {
    for (let number = 0; number < N_STARTS_PER_STAGE; number++) {
      const start = drawArrangement(stage, sourceNumbered(900_000 + number * 10 + stage))
      const turns = solutions.value.shortestSolutionOf(start, stage)
      const reading = readSolution({ start, turns, span: { from: stage, to: stage }, pars: pars.value })
      expect({ number, stage, notes: reading.notes }).toEqual({ number, stage, notes: [] })
      expect({ number, stage, isReached: reading.isReached, overPar: reading.overPar }).toEqual({
        number,
        stage,
        isReached: true,
        overPar: 0,
      })
    }
  }
}, 60_000)

test('[CC2] nor about a short scramble of the whole cube that is undone', () => {
  for (let number = 0; number < N_SCRAMBLES; number++) {
    const scramble = someScramble(number)
    const start = afterTurns(solvedCube(), scramble)
    const reading = readSolution({ start, turns: inverseTurns(scramble), span: { from: 1, to: 7 } })
    expect({ number, notes: reading.notes }).toEqual({ number, notes: [] })
  }
})

/** 4 to 15 turns, no two in a row about the same axis. */
function someScramble(number: number): Turn[] {
  const random = sourceNumbered(700_000 + number)
  const length = 4 + below(random, 12)
  const turns: Turn[] = []
  while (turns.length < length) {
    const turn = FACE_TURNS[below(random, FACE_TURNS.length)]
    const last = turns[turns.length - 1]
    if (last === undefined || axisOf(last) !== axisOf(turn)) turns.push(turn)
  }
  return turns
}

function axisOf(turn: Turn): number {
  return ['UD', 'RL', 'FB'].findIndex((axis) => axis.includes(turnAxis(turn)))
}
