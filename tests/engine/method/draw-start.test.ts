import fc from 'fast-check'
import { expect, test } from 'vitest'
import { EDGES_AT, solvedCube } from '../../../engine/cube/cube-position.ts'
import { holdOf } from '../../../engine/cube/hold.ts'
import { formatStickers, parseStickers } from '../../../engine/cube/stickers.ts'
import { CASES_OF_STAGE, type CaseId, caseOf, LAST_LAYER_STAGES } from '../../../engine/method/cases.ts'
import { casesLeaveAStart, drawArrangement, drawStart } from '../../../engine/method/draw-start.ts'
import { goalMet, goalsBeforeMet } from '../../../engine/method/goals.ts'
import { STAGES, type Stage, type StageSpan } from '../../../engine/method/stages.ts'
import { freedomBefore } from '../../../engine/method/start-freedom.ts'
import { SEED } from '../cube/arbitraries.ts'
import { aSpan, sourceNumbered } from './starts.ts'

test('[ST1] a start meets the goals before the span, misses its last goal, and is held home', () => {
  fc.assert(
    fc.property(aSpan, fc.nat(), (span, number) => {
      const start = drawStart({ span, random: sourceNumbered(number) })
      expect(goalsBeforeMet(start, span.from)).toBe(true)
      expect(goalMet(start, span.to)).toBe(false)
      expect(holdOf(start)).toBe(0)
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[ST3] every start can be solved by turns', () => {
  fc.assert(
    fc.property(aSpan, fc.nat(), (span, number) => {
      const start = drawStart({ span, random: sourceNumbered(number) })
      expect(parseStickers(formatStickers(start))).toEqual({ ok: true, value: start })
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[ST5] the same source gives the same starts, another source other starts', () => {
  const drawn = (number: number) => {
    const random = sourceNumbered(number)
    return STAGES.map((stage) => formatStickers(drawStart({ span: { from: stage, to: stage }, random })))
  }
  expect(drawn(1)).toEqual(drawn(1))
  expect(drawn(1)).not.toEqual(drawn(2))
})

test.each(LAST_LAYER_STAGES.flatMap((stage) => CASES_OF_STAGE[stage].map((id) => [stage, id] as const)))(
  '[ST4] at stage %i only starts of the case %s are drawn when it is asked for',
  (stage, id) => {
    const span: StageSpan = { from: stage, to: stage }
    if (!casesLeaveAStart(span, [id])) {
      expect(['cross', 'all-up', 'solved']).toContain(id)
      expect(() => drawStart({ span, cases: [id], random: sourceNumbered(1) })).toThrow('leave a start')
      return
    }
    for (let number = 0; number < 40; number++) {
      expect(caseOf(drawStart({ span, cases: [id], random: sourceNumbered(number) }), stage)).toBe(id)
    }
  },
)

test('[ST4] a finished case is a start when the span goes on', () => {
  const start = drawStart({ span: { from: 4, to: 7 }, cases: ['cross'], random: sourceNumbered(3) })
  expect([goalMet(start, 4), goalMet(start, 7)]).toEqual([true, false])
})

test.each([
  [{ from: 4, to: 4 }, ['cross']],
  [{ from: 4, to: 4 }, []],
  [{ from: 4, to: 7 }, []],
  [{ from: 5, to: 5 }, ['all-up']],
  [{ from: 7, to: 7 }, ['solved']],
  [{ from: 4, to: 5 }, ['all-up']],
  [{ from: 5, to: 5 }, ['two-up-across', 'dot']],
  [{ from: 2, to: 7 }, ['dot']],
] satisfies Array<[StageSpan, CaseId[]]>)(
  '[ST6] the span %j with the cases %j leaves no start and is refused',
  (span, cases) => {
    expect(casesLeaveAStart(span, cases)).toBe(false)
    expect(() => drawStart({ span, cases, random: sourceNumbered(1) })).toThrow('leave a start')
  },
)

test('[ST6] a span that ends before it begins is refused', () => {
  expect(() => drawStart({ span: { from: 3, to: 2 }, random: sourceNumbered(1) })).toThrow('span')
})

test('[ST6] a source that never gives a wanted start is reported instead of asked for ever', () => {
  const alwaysZero = { nextUint32: () => 0 }
  const start = drawArrangement(4, alwaysZero)
  const others = CASES_OF_STAGE[4].filter((id) => id !== caseOf(start, 4) && id !== 'cross')
  expect(() => drawStart({ span: { from: 4, to: 4 }, cases: others, random: alwaysZero })).toThrow('never gives')
})

test.each([
  [1, 8, true, 12, true],
  [2, 8, true, 8, true],
  [3, 4, true, 8, true],
  [4, 4, true, 4, true],
  [5, 4, true, 4, false],
  [6, 4, false, 4, false],
  [7, 0, false, 4, false],
] satisfies Array<[Stage, number, boolean, number, boolean]>)(
  '[ST7] before stage %i %i corners (turning: %s) and %i edges (turning: %s) are free',
  (stage, nCorners, cornersTurn, nEdges, edgesTurn) => {
    const { corners, edges } = freedomBefore(stage)
    expect([corners.places.length, corners.mayTurn, edges.places.length, edges.mayTurn]).toEqual([
      nCorners,
      cornersTurn,
      nEdges,
      edgesTurn,
    ])
    expect(corners.places.every((place) => place < EDGES_AT)).toBe(true)
    expect(edges.places.every((place) => EDGES_AT <= place)).toBe(true)
  },
)

test('[ST1] pieces that earlier goals have fixed are home in every arrangement', () => {
  for (const stage of STAGES) {
    const { corners, edges } = freedomBefore(stage)
    for (let number = 0; number < 20; number++) {
      drawArrangement(stage, sourceNumbered(number)).forEach((code, place) => {
        if (![...corners.places, ...edges.places].includes(place)) expect(code).toBe(solvedCube()[place])
      })
    }
  }
})
