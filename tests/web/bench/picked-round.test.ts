/** The round that an entry of the browser's history stands for. Rules BE: tests/RULES.md. */

import { expect, test } from 'vitest'
import { pickedOnEntry } from '../../../web/bench/picked-round.ts'

const mark = (value: unknown) => ({ 'fairturn.round': value })

// Rows: what the entry holds, the round that it stands for in Ada's eyes; null for the list.
test.each([
  ['nothing', null, null],
  ['a text', 'x', null],
  ['something else', { scroll: 3 }, null],
  ['a round of hers', mark({ seat: 'ada', round: 'r1' }), 'r1'],
  ["another child's", mark({ seat: 'bo', round: 'r1' }), null],
  ['half a mark', mark({ seat: 'ada' }), null],
  ['no mark', mark('r1'), null],
])('[BE18] %s', (_, state, round) => {
  expect(pickedOnEntry(state, 'ada')).toBe(round)
})
