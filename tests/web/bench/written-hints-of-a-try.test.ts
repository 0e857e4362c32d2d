/** Of which try the hints are that are asked for while writing. Rules BE: tests/RULES.md. */

import { expect, test } from 'vitest'
import { stepOf } from '../../../engine/contest/steps.ts'
import { numberOfWriting } from '../../../web/bench/use-written-hints.ts'

const STEPS = [stepOf('R')]

// Rows: the last try that is known, whether it has steps, the try that is being written.
test.each([
  ['the first one is empty: it is written', 1, [], 1],
  ['it went out: the second one', 1, STEPS, 2],
  // Refused: the page has taken back what the server does not hold.
  ['the second one was refused, and the first one stands', 1, STEPS, 2],
  ['the second one was opened on the screen', 2, [], 2],
  ['the second one went out', 2, STEPS, 3],
])('[BE19] %s', (_, number, steps, writing) => {
  expect(numberOfWriting({ number, steps })).toBe(writing)
})
