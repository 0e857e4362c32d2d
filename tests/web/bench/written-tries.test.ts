/** What came of each written solution, and the best try to look back at. Rules BE: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { anEmptyTry } from '../../../engine/contest/round-state.ts'
import { stepOf } from '../../../engine/contest/steps.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { turnOf } from '../../../engine/cube/turns.ts'
import { readOwnTry, tryToReview } from '../../../web/bench/own-best.ts'
import { readWrittenTries, withWrittenTry } from '../../../web/bench/written-tries.ts'
import type { LocalTry } from '../../../web/live/bench-live.ts'

const R = turnOf('R')

function aTry(over: Partial<LocalTry>): LocalTry {
  const empty = { ...anEmptyTry(solvedCube(), 1), reachedHere: false, nWaiting: 0 }
  return { ...empty, steps: [stepOf('R')], standing: [R], turns: 1, ...over }
}

describe('the solutions that were sent', () => {
  test('[BE14] each stands once, in order, with what came of it in the end', () => {
    const first = withWrittenTry([], aTry({ number: 1, turns: 5 }))
    const second = withWrittenTry(first, aTry({ number: 2, turns: 7, reachedHere: true }))
    expect(second).toEqual([
      { number: 1, turns: 5, reached: false },
      { number: 2, turns: 7, reached: true },
    ])
    expect(withWrittenTry(second, aTry({ number: 2, turns: 7, reached: { turns: 7, momentMs: 1 } }))).toBe(second)
    expect(withWrittenTry(second, aTry({ number: 3, steps: [] }))).toBe(second)
  })

  test('[BE14] a solution on its way is known to reach the goal before the server has said so, and stays one entry', () => {
    const sent = withWrittenTry([], aTry({ reachedHere: true, turns: 6 }))
    const said = withWrittenTry(sent, aTry({ reachedHere: true, turns: 6, reached: { turns: 6, momentMs: 9 } }))
    expect(said).toEqual([{ number: 1, turns: 6, reached: true }])
  })

  test('[BE14] what was kept and makes no sense is left out', () => {
    const good = { number: 1, turns: 5, reached: false }
    expect(readWrittenTries([good, null, 3, { number: 1 }, { ...good, turns: 'five' }])).toEqual([good])
    for (const kept of [null, {}, 'x']) expect(readWrittenTries(kept)).toEqual([])
  })
})

describe('the try to look back at', () => {
  const best = { standing: [R, R], turns: 2 }

  test('[BE15] it is the best one where its turns are known', () => {
    expect(tryToReview(best, 2, aTry({ turns: 9 }))).toEqual({ ...best, isBest: true, isReached: true })
  })

  test('[BE15] else the last one, called the best only when it is', () => {
    const reached = aTry({ turns: 3, reached: { turns: 3, momentMs: 1 } })
    expect(tryToReview(null, 3, reached)).toMatchObject({ turns: 3, isBest: true, isReached: true })
    // A better one was made on another device.
    expect(tryToReview(best, 1, reached)).toMatchObject({ turns: 3, isBest: false, isReached: true })
    expect(tryToReview(null, null, aTry({}))).toMatchObject({ turns: 1, isBest: false, isReached: false })
  })

  test('[BE15] whoever turned nothing has nothing to look back at', () => {
    expect(tryToReview(null, null, aTry({ standing: [], steps: [] }))).toBeNull()
    expect(tryToReview(null, null, null)).toBeNull()
  })

  test('[BE15] what was kept and makes no sense is no try', () => {
    expect(readOwnTry(JSON.parse(JSON.stringify(best)))).toEqual(best)
    for (const kept of [null, 4, { standing: [R] }, { standing: [99], turns: 1 }, { standing: 'R', turns: 1 }])
      expect(readOwnTry(kept)).toBeNull()
  })
})
