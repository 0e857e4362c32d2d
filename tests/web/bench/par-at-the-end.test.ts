/** What a child is told of par when the round is over. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { parAtTheEnd } from '../../../web/bench/par-at-the-end.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

test.each([
  [11, true, 14, 'Par was 11. You took 14.'],
  [11, true, 11, 'Par was 11. You took 11.'],
  [11, true, null, 'Par was 11.'],
  [27, false, 30, 'The best known way takes 27 turns. You took 30.'],
  [27, false, 27, 'The best known way takes 27 turns. You took 27.'],
  [27, false, 26, 'You took 26: no shorter way is known.'],
  [27, false, null, 'The best known way takes 27 turns.'],
  [1, false, null, 'The best known way takes 1 turn.'],
])('[BE10] par %i, proven %s, own turns %s', (turns, proven, mine, words) => {
  expect(parAtTheEnd(t, { turns, proven, lowerBound: proven ? turns : 1 }, mine)).toBe(words)
})
