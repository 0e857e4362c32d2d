import { expect, test } from 'vitest'
import { type CubePosition, EDGES_AT, solvedCube } from '../../../../engine/cube/cube-position.ts'
import { CODE_AFTER_ADDING, edgeFlip, edgePiece, edgeRow } from '../../../../engine/cube/piece-code.ts'
import { checkStage } from '../../../../engine/method/book/check-book.ts'
import { LESSON_BOOK } from '../../../../engine/method/book/lesson-book.ts'
import { MIDDLE_EDGES, TOP_EDGES } from '../../../../engine/method/goal-part.ts'
import { pieceCaseOf } from '../../../../engine/method/piece-cases.ts'
import { leastToBringHome } from '../way/bring-home.ts'

test('[BK6] at stage 3 the figures of each case are the least that brings a real piece home, counted by trying everything', () => {
  const counts = new Map<string, Array<{ nSequences: number; nTurns: number }>>()
  for (const { position, home, done, caseId } of everyEdgeOfTheSecondLayer()) {
    const least = leastToBringHome(position, 3, home, done, LESSON_BOOK)
    expect(least).not.toBe(undefined)
    counts.set(caseId, [...(counts.get(caseId) ?? []), ...(least === undefined ? [] : [least])])
  }
  const nAll = [...counts.values()].reduce((sum, list) => sum + list.length, 0)
  const { cases } = checkStage(LESSON_BOOK, 3)
  expect(cases.map(({ caseId }) => caseId).sort()).toEqual([...counts.keys()].sort())
  for (const { caseId, share, figures } of cases) {
    const list = counts.get(caseId) ?? []
    expect(share).toBeCloseTo(list.length / nAll, 12)
    for (const [unit, key] of [
      ['sequences', 'nSequences'],
      ['turns', 'nTurns'],
    ] as const) {
      const numbers = list.map((least) => least[key])
      expect(figures?.[unit].longest).toBe(Math.max(...numbers))
      expect(figures?.[unit].mean).toBeCloseTo(meanOf(numbers), 12)
    }
  }
})

/**
 * Real cubes for every situation of one edge of stage 3: where it is and how it is turned, with every set of the other
 * three done; those that are not done are turned over where they are.
 */
function* everyEdgeOfTheSecondLayer() {
  const places = [...MIDDLE_EDGES, ...TOP_EDGES]
  for (const home of MIDDLE_EDGES) {
    const others = MIDDLE_EDGES.filter((place) => place !== home)
    for (const place of places) {
      for (const flip of [0, 1]) {
        for (let set = 0; set < 2 ** others.length; set++) {
          const done = others.filter((_, index) => (set >> index) & 1)
          if ((place === home && flip === 0) || done.includes(place)) continue
          const position = solvedCube()
          for (const other of others) if (!done.includes(other)) turnOver(position, other)
          ;[position[home], position[place]] = [position[place], position[home]]
          if (flip === 1) turnOver(position, place)
          const code = position[place]
          expect([EDGES_AT + edgePiece(code), edgeFlip(code)]).toEqual([home, flip])
          yield { position, home, done, caseId: pieceCaseOf(3, home, place, flip) }
        }
      }
    }
  }
}

function turnOver(position: CubePosition, place: number): void {
  position[place] = CODE_AFTER_ADDING[edgeRow(1) + position[place]]
}

function meanOf(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0) / counts.length
}
