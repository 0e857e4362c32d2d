/** What is said before a try is put away. Rules BE: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { startAgainWords } from '../../../web/parts/bench-page/ask-start-again.tsx'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

const LIST = 'The list of the round still says that you had'

// Rows: counted turns, hints, what one costs, whether a list tells of them; what is said.
test.each<[number, number, number, boolean, string]>([
  [8, 0, 2, true, 'Your 8 turns of this try go away.'],
  [8, 3, 2, true, `Your 2 turns of this try go away. What your 3 hints cost goes away. ${LIST} 3 hints.`],
  [8, 1, 7, true, `Your 1 turn of this try goes away. What your 1 hint cost goes away. ${LIST} 1 hint.`],
  [8, 1, 0, true, `Your 8 turns of this try go away. ${LIST} 1 hint.`],
  // Nothing was turned: no turn is said to go.
  [10, 1, 10, true, `What your 1 hint cost goes away. ${LIST} 1 hint.`],
  // Alone there is no list.
  [8, 2, 0, false, 'Your 8 turns of this try go away.'],
])('[BE20] of %i counted turns with %i hints at %i: what was turned, and what becomes of the hints', (...row) => {
  const [turns, nHints, hintCost, hasList, words] = row
  expect(startAgainWords(t, { turns, nHints, hintCost, hasList, hasBest: false }).join(' ')).toBe(words)
})

test('[BE20] that the best try stays is said where there is one', () => {
  const words = startAgainWords(t, { turns: 9, nHints: 0, hintCost: 0, hasList: true, hasBest: true })
  expect(words).toEqual(['Your 9 turns of this try go away.', 'Your best try stays.'])
})
