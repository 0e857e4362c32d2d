/** Which nudges stand on a bench. Rules NU: tests/RULES.md. */

import { expect, test } from 'vitest'
import { readPutAway, standingNudges } from '../../../web/bench/standing-nudges.ts'

const HINT = { number: 1, nudge: { kind: 'hint', level: 2 } } as const
const WORDS = { number: 3, nudge: { kind: 'words', words: 'check-the-hold' } } as const
const POINT = { number: 2, nudge: { kind: 'point', piece: 'DFR' } } as const
const ALL = { hint: HINT, words: WORDS, point: POINT }

test('[NU6] a hint, a sentence and a pointer stand side by side, the newer line first', () => {
  expect(standingNudges(ALL, [])).toEqual({ hint: HINT, lines: [WORDS, POINT] })
  const later = { ...POINT, number: 4 }
  expect(standingNudges({ ...ALL, point: later }, [])).toEqual({ hint: HINT, lines: [later, WORDS] })
})

// Rows: what was put away, what stands of the lines, whether the hint stands.
test.each([
  [[3], [POINT], true],
  [[2], [WORDS], true],
  [[1], [WORDS, POINT], false],
  [[1, 2, 3], [], false],
  // Of an earlier one of that kind: this one is another.
  [[4], [WORDS, POINT], true],
])('[NU6] put away %j: each goes by itself', (putAway, lines, hasHint) => {
  expect(standingNudges(ALL, putAway)).toEqual({ hint: hasHint ? HINT : null, lines })
})

test('[NU6] nothing sent is nothing to see, and what was kept and makes no sense puts nothing away', () => {
  expect(standingNudges({ hint: null, words: null, point: null }, [1])).toEqual({ hint: null, lines: [] })
  expect(readPutAway([1, 'x', null, 2.5, 3])).toEqual([1, 3])
  for (const kept of [null, {}, 4]) expect(readPutAway(kept)).toEqual([])
})
