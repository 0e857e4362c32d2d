/** What cost a class most over a lesson. Rules RV: tests/RULES.md. */

import { beforeAll, describe, expect, test } from 'vitest'
import { countOuterBlockTurns } from '../../../../engine/cube/outer-block-turns.ts'
import { formatStickers } from '../../../../engine/cube/stickers.ts'
import { type Turn, turnName } from '../../../../engine/cube/turns.ts'
import { type CaseId, caseOf } from '../../../../engine/method/cases.ts'
import { drawStart } from '../../../../engine/method/draw-start.ts'
import { lessonWay } from '../../../../engine/method/lesson-way.ts'
import type { Stage } from '../../../../engine/method/stages.ts'
import { openParTables, type ParTables } from '../../../../engine/search/par/open-par-tables.ts'
import { openShortestSolutions } from '../../../../engine/search/par/open-shortest-solutions.ts'
import type { ShortestSolutions } from '../../../../engine/search/par/shortest-solutions.ts'
import type { ReviewView } from '../../../../engine/wire/views.ts'
import { costsOf } from '../../../../web/desk/show/costs-of.ts'
import { turns } from '../../../engine/cube/arbitraries.ts'
import { sourceNumbered } from '../../../engine/method/starts.ts'
import { aReview, aSolution } from './a-review.ts'

let pars: ParTables
let shortest: ShortestSolutions
beforeAll(async () => {
  const [openPars, openSolutions] = [await openParTables(), await openShortestSolutions()]
  if (!openPars.ok || !openSolutions.ok) throw new Error('the shipped tables open')
  pars = openPars.value
  shortest = openSolutions.value
})

/** A start of a stage, and the review of what students did with it. */
function reviewOf(
  stage: Stage,
  cases: readonly CaseId[] | null,
  ...students: ((start: Parameters<typeof lessonWay>[0]) => Turn[])[]
) {
  const span = { from: stage, to: stage }
  const start = drawStart({ span, random: sourceNumbered(stage), ...(cases === null ? {} : { cases }) })
  const review = aReview([])
  const made = students.map((student) => student(start))
  const view: ReviewView = {
    ...review,
    round: { ...review.round, settings: { ...review.round.settings, ...span, cases }, start: formatStickers(start) },
    solutions: made.map((each, index) => aSolution(`N${index}`, countOuterBlockTurns(each), each.map(turnName))),
  }
  return { start, view, nTurns: made.map(countOuterBlockTurns) }
}
const byPar = (stage: Stage) => (start: Parameters<typeof lessonWay>[0]) => shortest.shortestSolutionOf(start, stage)
const byLesson = (stage: Stage) => (start: Parameters<typeof lessonWay>[0]) =>
  lessonWay(start, { from: stage, to: stage })
/** Two turns that are worth nothing ahead of the shortest way. */
const withDetour = (stage: Stage) => (start: Parameters<typeof lessonWay>[0]) => [
  ...turns("D D'"),
  ...byPar(stage)(start),
]

describe('costs', () => {
  test('[RV6] who needs par costs nothing, and is left out', () => {
    expect(costsOf([reviewOf(4, ['dot'], byPar(4)).view], pars)).toEqual([])
    expect(costsOf([], pars)).toEqual([])
  })

  test('[RV6] all turns over par are somewhere, summed over everybody who met the case', () => {
    const { view, start, nTurns } = reviewOf(5, null, byLesson(5), withDetour(5), byLesson(5))
    const par = pars.parOf(start, 5)
    const costs = costsOf([view], pars)
    const over = nTurns.reduce((sum, n) => sum + n - par, 0)
    expect(costs.reduce((sum, cost) => sum + cost.turns, 0)).toBe(over)
    expect(costs.find(({ caseId }) => caseId === caseOf(start, 5))?.nTimes).toBe(3)
  })

  test('[RV6] cases of several rounds are put together, the dearest first', () => {
    const dear = reviewOf(6, null, byLesson(6), byLesson(6)).view
    const cheap = reviewOf(4, ['line'], withDetour(4)).view
    const costs = costsOf([cheap, dear, cheap], pars)
    expect(costs.map(({ turns: cost }) => cost)).toEqual(costs.map(({ turns: cost }) => cost).sort((a, b) => b - a))
    expect(costs.find(({ stage }) => stage === 4)).toEqual({ stage: 4, caseId: 'line', turns: 4, nTimes: 2 })
  })

  test('[RV6] pieces of one stage below the last layer are one cost', () => {
    const { view, start, nTurns } = reviewOf(3, null, byLesson(3))
    const costs = costsOf([view], pars)
    expect(costs.map(({ stage, caseId }) => [stage, caseId])).toEqual([[3, null]])
    expect(costs[0].turns).toBe(nTurns[0] - pars.parOf(start, 3))
  })

  test('[RV6] a start that is no cube costs nobody anything', () => {
    const { view } = reviewOf(4, ['dot'], withDetour(4))
    expect(costsOf([{ ...view, round: { ...view.round, start: 'U'.repeat(54) } }], pars)).toEqual([])
  })
})
