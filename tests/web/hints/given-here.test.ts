/** Which hints belong to the turns that stand. Rules HT: tests/RULES.md. */

import { expect, test } from 'vitest'
import { stepOf } from '../../../engine/contest/steps.ts'
import { hintsGivenHere } from '../../../web/parts/hints/given-here.ts'

// Rows: the steps of a try, the hints that belong to where it stands.
test.each<[string, number[]]>([
  ['', []],
  ['hint-1', [1]],
  ['hint-1 hint-2', [1, 2]],
  ['R hint-1', [1]],
  ['hint-1 R', []],
  // Back at the turns of the hint: it is there again.
  ['hint-1 R take-back', [1]],
  ['R hint-1 take-back R', [1]],
  // As many turns, but others: nothing is told for nothing.
  ['R hint-1 take-back U', []],
  ['R U hint-2 take-back take-back R U hint-3', [2, 3]],
])('[HT5] %s: %j', (steps, given) => {
  const names = steps.split(' ').filter((name) => name !== '')
  expect(hintsGivenHere(names.map((name) => stepOf(name as Parameters<typeof stepOf>[0])))).toEqual(given)
})
