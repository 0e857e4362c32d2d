/** What the notes of one try say it cost, taken together. Rules CC: tests/RULES.md. */

import { expect, test } from 'vitest'
import { below, type RandomSource } from '../../../engine/chance/random-source.ts'
import { readSolution } from '../../../engine/coach/read-solution.ts'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import type { CubePosition } from '../../../engine/cube/cube-position.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { FACE_TURNS, inverseTurn, inverseTurns, type Turn, turnOf } from '../../../engine/cube/turns.ts'
import { LESSON_BOOK } from '../../../engine/method/book/lesson-book.ts'
import { drawArrangement } from '../../../engine/method/draw-start.ts'
import { goalsBeforeMet } from '../../../engine/method/goals.ts'
import { lessonWay } from '../../../engine/method/lesson-way.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'
import { openParTables } from '../../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../../engine/search/par/open-shortest-solutions.ts'
import { cubeAfter, turns } from '../cube/arbitraries.ts'
import { sourceNumbered } from '../method/starts.ts'
import { plant } from './plant.ts'
import { KINDS } from './plant-kinds.ts'

const CROSS = "F U R U' R' F'"
const AT_4 = { from: 4, to: 4 } as const
const N_PLANTED = 60
const N_MESSY = 150
const RE_HOLDS = ['y', "y'", 'y2'] as const

const [pars, shortest] = await Promise.all([openParTables(), openShortestSolutions()])
if (!pars.ok || !shortest.ok) throw new Error('the shipped tables can be read')

/** The fewest turns, proven; of a span of several stages the par of its first stage, which no way to its end is under. */
function leastTurns(start: CubePosition, { from }: StageSpan): number {
  const par = pars.ok ? pars.value.parOf(start, from) : null
  if (par === null) throw new Error('the goals before the first stage are met')
  return par
}

function said(start: CubePosition, made: readonly Turn[], span: StageSpan) {
  const { notes, nTurns, isReached, episodes } = readSolution({ start, turns: made, span })
  return { nTurns, isReached, episodes, notes, sum: notes.reduce((sum, { costTurns }) => sum + costTurns, 0) }
}

// Origin: found by a tester. The lesson takes 18 turns from the dot to which the wrong hold led, a shortest way only 11.
test('[CC13] a mistake that was made good in fewer turns than the lesson takes cost no more than the try took', () => {
  const dot = cubeAfter(formatTurns(inverseTurns(turns(`${CROSS} y ${CROSS} ${CROSS}`))))
  const cornerShape = afterTurns(dot, turns(`${CROSS} y ${CROSS}`))
  const wrong = turns(`y2 ${CROSS}`)
  const quick = shortest.ok ? shortest.value.shortestSolutionOf(afterTurns(cornerShape, wrong), 4) : []
  const { isReached, nTurns, notes, sum } = said(cornerShape, [...wrong, ...quick], AT_4)
  expect([isReached, leastTurns(cornerShape, AT_4), nTurns]).toEqual([true, 6, 17])
  expect(notes.map(({ key }) => key)).toEqual(['coach/wrong-hold'])
  expect(sum).toBe(17 - 6)
})

test('[CC13] over all planted mistakes the costs add up to no more than turns less par', () => {
  for (const kind of KINDS) {
    for (let number = 0; number < N_PLANTED; number++) {
      const { start, turns: made, span } = plant(kind, number)
      const { isReached, nTurns, sum } = said(start, made, span)
      if (!isReached || !goalsBeforeMet(start, span.from)) continue
      expect({ key: kind.key, number, isTooMuch: sum > nTurns - leastTurns(start, span) }).toEqual({
        key: kind.key,
        number,
        isTooMuch: false,
      })
    }
  }
}, 60_000)

test('[CC13] and over messy tries, which go astray several times and end by the lesson’s way or a shorter one', () => {
  let nWithCosts = 0
  for (const stage of STAGES) {
    for (let number = 0; number < N_MESSY; number++) {
      const span = { from: stage, to: stage }
      const random = sourceNumbered(2_000_000 + number * 10 + stage)
      const start = drawArrangement(stage, random)
      const made = messyTry(start, stage, random)
      const { isReached, nTurns, sum, episodes } = said(start, made, span)
      expect(isReached).toBe(true)
      if (sum > 0) nWithCosts++
      expect({ stage, number, isTooMuch: sum > nTurns - leastTurns(start, span) }).toEqual({
        stage,
        number,
        isTooMuch: false,
      })
      for (const { nWasted, nTurns: nOwn } of episodes) expect(nWasted).toBeLessThanOrEqual(nOwn)
    }
  }
  // Or nothing was tried at all.
  expect(nWithCosts).toBeGreaterThan(STAGES.length * N_MESSY * 0.6)
}, 60_000)

/** Sequences of the stage in any hold, turns put in, turns undone; at the end the lesson's way or a shortest one. */
function messyTry(start: CubePosition, stage: Stage, random: RandomSource): Turn[] {
  const made: Turn[] = []
  const one = <Item>(items: readonly Item[]) => items[below(random, items.length)]
  const nMess = 1 + below(random, 4)
  for (let mess = 0; mess < nMess; mess++) {
    const way = lessonWay(afterTurns(start, made), { from: stage, to: stage })
    switch (below(random, 4)) {
      case 0:
        made.push(turnOf(one(RE_HOLDS)), ...one(LESSON_BOOK.stages[stage]).turns)
        break
      case 1:
        made.push(...way.slice(0, below(random, way.length + 1)), one(FACE_TURNS))
        break
      case 2: {
        const turn = one(FACE_TURNS)
        made.push(turn, inverseTurn(turn))
        break
      }
      default:
        made.push(...way.slice(0, 3 + below(random, 6)))
    }
  }
  const position = afterTurns(start, made)
  const canBeShort = goalsBeforeMet(position, stage) && below(random, 2) === 0
  return [
    ...made,
    ...(canBeShort && shortest.ok
      ? shortest.value.shortestSolutionOf(position, stage)
      : lessonWay(position, { from: stage, to: stage })),
  ]
}
