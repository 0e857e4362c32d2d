/** Written turns, read while they are written. Rules WR: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { TRY_STEPS_MAX } from '../../../engine/contest/limits.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { ALL_TURNS } from '../../../engine/cube/turns.ts'
import { readWritten } from '../../../web/parts/written/read-written.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

// Rows: the text, the turns that are read, the token that is none, what is the matter, how it may have been meant.
test.each<[string, string, string, string, string | null]>([
  ['R U f', 'R U', 'f', 'letter-case', 'F'],
  ["F r' U", 'F', "r'", 'letter-case', "R'"],
  ['F X2', 'F', 'X2', 'letter-case', 'x2'],
  ['UW R', '', 'UW', 'letter-case', 'Uw'],
  ['R3', '', 'R3', 'number', null],
  ['R U (F', 'R U', '(', 'bracket', null],
  ['(R U Q', 'R U', 'Q', 'unknown', null],
  ['R2Rw', '', 'R2Rw', 'two-ways', null],
  ['R hello', 'R', 'hello', 'unknown', null],
])('[WR1] %j: %j are turns, then %j is none', (text, turns, token, kind, correct) => {
  const read = readWritten(text)
  expect(formatTurns(read.turns)).toBe(turns)
  expect(read.fault).toMatchObject({ token, kind, correct })
  // The characters that are marked are the token's own.
  expect(read.fault !== null && text.slice(read.fault.from, read.fault.to)).toBe(token)
})

test('[WR1] what is written correctly has no fault, whatever its spacing', () => {
  expect(readWritten('').fault).toBeNull()
  expect(formatTurns(readWritten("RUR'U'").turns)).toBe("R U R' U'")
  const some = fc.array(fc.constantFrom(...ALL_TURNS), { maxLength: 40 })
  fc.assert(
    fc.property(some, (turns) => {
      expect(readWritten(formatTurns(turns))).toEqual({ turns, fault: null })
    }),
    { seed: SEED },
  )
})

test('[WR1] no text makes the reader throw, and its fault stands within the text', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 60, unit: 'grapheme' }), (text) => {
      const { fault } = readWritten(text)
      if (fault !== null) {
        expect(fault.from).toBeGreaterThanOrEqual(0)
        expect(fault.from).toBeLessThan(text.length)
      }
    }),
    { seed: SEED },
  )
})

test('[WR1] more turns than a try may hold are told as such', () => {
  const { fault, turns } = readWritten('U '.repeat(TRY_STEPS_MAX + 1))
  expect(fault).toMatchObject({ kind: 'too-many', token: String(TRY_STEPS_MAX) })
  expect(turns).toEqual([])
})
