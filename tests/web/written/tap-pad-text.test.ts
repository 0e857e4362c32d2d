/** What the keys of the tap pad write. Rules WR: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readWritten } from '../../../web/parts/written/read-written.ts'
import { PAD_ENDINGS, PAD_LETTERS, type PadKey, withPadKey } from '../../../web/parts/written/tap-pad-text.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

const pressed = (text: string, ...keys: PadKey[]) => keys.reduce(withPadKey, text)

// Rows: what stands there, the keys, what stands there then.
test.each<[string, PadKey[], string]>([
  ['', ['R'], 'R'],
  ['R', ['U'], 'R U'],
  ['R ', ['U'], 'R U'],
  ['R U', ["'"], "R U'"],
  ["R U'", ["'"], 'R U'],
  ["R U'", ['2'], 'R U2'],
  ['R2', ["'"], "R'"],
  ['R', ['w', "'"], "Rw'"],
  ["R'", ['w'], "Rw'"],
  ['Rw2', ['w'], 'R2'],
  // Neither a slice nor a re-hold has a layer beside it.
  ['M', ['w'], 'M'],
  ['x', ['w', '2'], 'x2'],
  // An ending needs a turn before it.
  ['', ["'", '2', 'w'], ''],
  ['R U2', ['erase'], 'R'],
  ['R hello', ['erase'], 'R hell'],
  ['', ['erase'], ''],
  ['F', ['right'], "F U R U' R'"],
  ['', ['left', 'F'], "U' L' U L F"],
  // Written by hand with the printed prime.
  ['R’', ["'"], 'R'],
])('[WR2] %j and %j make %j', (text, keys, then) => {
  expect(pressed(text, ...keys)).toBe(then)
})

test('[WR2] whatever is pressed, the text reads as turns, and rubbing out empties it', () => {
  const key = fc.constantFrom<PadKey>(...PAD_LETTERS, ...PAD_ENDINGS, 'left', 'right', 'erase')
  fc.assert(
    fc.property(fc.array(key, { maxLength: 40 }), (keys) => {
      const text = pressed('', ...keys)
      const { fault, turns } = readWritten(text)
      expect(fault).toBeNull()
      expect(pressed(text, ...turns.map((): PadKey => 'erase'))).toBe('')
    }),
    { seed: SEED },
  )
})
