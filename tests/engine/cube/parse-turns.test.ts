import fc from 'fast-check'
import { expect, test } from 'vitest'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { PARSED_TURNS_MAX, parseTurns } from '../../../engine/cube/parse-turns.ts'
import { SEED, someTurns } from './arbitraries.ts'

function check(text: string, canonical: string) {
  const read = parseTurns(text)
  expect(read.ok ? formatTurns(read.value) : read.error).toEqual(canonical)
}

function checkRefused(text: string, token: string, at: number) {
  expect(parseTurns(text)).toEqual({ ok: false, error: { code: 'cube/unknown-turn', token, at } })
}

test('[NO1] what is written reads back as the same turns', () => {
  fc.assert(
    fc.property(someTurns, (sequence) => {
      expect(parseTurns(formatTurns(sequence))).toEqual({ ok: true, value: sequence })
    }),
    { seed: SEED, numRuns: 300 },
  )
})

test.each([
  ['nothing', '', ''],
  ['only white space', ' \n\t', ''],
  ['single spaces', "R U' F2", "R U' F2"],
  ['no spaces', "RUR'U'", "R U R' U'"],
  ['no spaces and half turns', "R2U2F'2D", 'R2 U2 F2 D'],
  ['line ends and tabs', "R\r\nU'\tF2\n", "R U' F2"],
  ['a no-break space', 'R\u00a0U', 'R U'],
  ['the apostrophe', 'R\u0027', "R'"],
  ['the typographic apostrophe', 'R\u2019', "R'"],
  ['the prime', 'R\u2032', "R'"],
  ['the grave accent', 'R\u0060', "R'"],
  ['the acute accent', 'R\u00b4', "R'"],
  ['half turns with a prime before or after', "R2' R'2 Rw2’ x′2", 'R2 R2 Rw2 x2'],
  ['wide turns with a 2 in front', "2Rw 2Uw' 2Fw2", "Rw Uw' Fw2"],
  ['slices and re-holds', "M E' S2 x y' z2", "M E' S2 x y' z2"],
  ['re-holds without spaces', "xy'z2", "x y' z2"],
  ['brackets as grouping', "(R U) (R' (U'))", "R U R' U'"],
  ['brackets without spaces', "F(RU'R'U)F'", "F R U' R' U F'"],
  ['an empty group', 'R () U', 'R U'],
  ['a half turn before a bracket', 'R2(U)', 'R2 U'],
  ['a half turn with prime before a wide turn with 2', "R2'Rw", 'R2 Rw'],
])('[NO2] %s: accepted', (_, text, canonical) => check(text, canonical))

test.each([
  ['R r', 'r', 2],
  ['u', 'u', 0],
  ['Rr', 'Rr', 0],
  ['m', 'm', 0],
  ['e', 'e', 0],
  ['s', 's', 0],
  ['X', 'X', 0],
  ['R Y', 'Y', 2],
  ['Z2', 'Z2', 0],
  ['rw', 'rw', 0],
  ['R U3', 'U3', 2],
  ['R1', 'R1', 0],
  ['R0', 'R0', 0],
  ['R22', 'R22', 0],
  ["R''", "R''", 0],
  ["R'2'", "R'2'", 0],
  ['Ui', 'Ui', 0],
  ['U-', 'U-', 0],
  ['U+', 'U+', 0],
  ['[r]', '[r]', 0],
  ['[R, U]', '[R,', 0],
  ['R, U', 'R,', 0],
  ['R.', 'R.', 0],
  ['R*U', 'R*', 0],
  ['2(Rw)', '2', 0],
  ['(R U)2', '2', 5],
  ["(R U)'", "'", 5],
  ['(R)2Rw', '2Rw', 3],
  ['2R', '2R', 0],
  ['R 2U2', '2U2', 2],
  ['2M', '2M', 0],
  ['1Rw', '1Rw', 0],
  ['3Rw', '3Rw', 0],
  ['2-3Rw', '2-3Rw', 0],
  ["L'w", "L'w", 0],
  ['Mw', 'Mw', 0],
  ['xw', 'xw', 0],
  ['R 2 U', '2', 2],
  ["R ' U", "'", 2],
  ['(R U', '(', 0],
  ['R U)', ')', 3],
  ['(R) (U', '(', 4],
  ['R2Rw', 'R2Rw', 0],
  ["U R'2Rw2", "R'2Rw2", 2],
  ['Я', 'Я', 0],
  ['R 😀', '😀', 2],
  ['null', 'null', 0],
])('[NO3] %j: refused, naming %j at %i', (text, token, at) => checkRefused(text, token, at))

test('[NO3] a long token is told by its beginning', () => {
  checkRefused(`R ${'q'.repeat(1_000)}`, 'q'.repeat(32), 2)
})

test('[NO4] no text makes the reader throw; a fault names a token that stands where it says', () => {
  const turnish = fc
    .array(fc.constantFrom(..."URFDLBMESxyzw2'’()[] \nru3"), { maxLength: 30 })
    .map((all) => all.join(''))
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), turnish), (text) => {
      const read = parseTurns(text)
      if (read.ok) expect(parseTurns(formatTurns(read.value))).toEqual(read)
      else if (read.error.code === 'cube/unknown-turn') {
        expect(text.startsWith(read.error.token, read.error.at)).toBe(true)
        expect(read.error.token).not.toBe('')
      }
    }),
    { seed: SEED, numRuns: 2_000 },
  )
})

test('[NO5] as many turns as allowed are read, one more is refused', () => {
  const full = 'R'.repeat(PARSED_TURNS_MAX)
  const read = parseTurns(full)
  expect(read.ok && read.value.length).toBe(PARSED_TURNS_MAX)
  expect(parseTurns(`${full} U`)).toEqual({ ok: false, error: { code: 'cube/too-many-turns', max: PARSED_TURNS_MAX } })
  expect(parseTurns('R U R', 2)).toEqual({ ok: false, error: { code: 'cube/too-many-turns', max: 2 } })
})

// A reader that went back over the text for each character would need hours for these.
test.each([
  ['(', 200_000],
  ['2', 200_000],
  ["R2'2", 100_000],
  ['!?', 100_000],
  ['R2', 1_000_000],
  ['R ', 1_000_000],
])('[NO5] a very long text of %j is refused like a short one', (piece, times) => {
  expect(parseTurns(piece.repeat(times)).ok).toBe(false)
  expect(parseTurns(`${piece.repeat(times)}R`).ok).toBe(false)
})
