/** Hints of the teacher that this page has shown. Rules HT and NU: tests/RULES.md. */

import { expect, test } from 'vitest'
import { readSeenHints, withSeenHint } from '../../../web/bench/seen-hints.ts'

const LAST = { number: 3, nudge: { kind: 'hint', level: 2 } } as const
const SEEN = { number: 3, level: 2, tryNumber: 1, afterSteps: 5 } as const

test('[HT9] a hint is kept with where the cube stood when it was first shown, however far it has gone since', () => {
  const first = withSeenHint([], LAST, { tryNumber: 1, nSteps: 5 })
  expect(first).toEqual([SEEN])
  expect(withSeenHint(first, LAST, { tryNumber: 2, nSteps: 9 })).toBe(first)
  expect(withSeenHint(first, null, { tryNumber: 2, nSteps: 9 })).toBe(first)
  const later = withSeenHint(first, { ...LAST, number: 4 }, { tryNumber: 1, nSteps: 9 })
  expect(later).toEqual([SEEN, { ...SEEN, number: 4, afterSteps: 9 }])
})

test('[HT9] it is read back after a reload, and what makes no sense is left out', () => {
  expect(readSeenHints(JSON.parse(JSON.stringify([SEEN])))).toEqual([SEEN])
  const bad = [null, 4, {}, { ...SEEN, level: 4 }, { ...SEEN, afterSteps: '5' }, { ...SEEN, tryNumber: 1.5 }]
  expect(readSeenHints([...bad, SEEN])).toEqual([SEEN])
  for (const kept of [null, {}, 'x']) expect(readSeenHints(kept)).toEqual([])
})
