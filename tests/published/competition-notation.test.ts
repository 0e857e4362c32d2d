/**
 * Source: World Cube Association, Regulations 2024, articles 12a1 (face turns), 12a2 with guideline 12a2+ (wide turns),
 * 12a4 (rotations) and E2c4 with guideline E2c4+ (what makes a written solution invalid).
 */

import { expect, test } from 'vitest'
import { formatTurns } from '../../engine/cube/format-turns.ts'
import { parseCompetitionTurns } from '../../engine/cube/parse-competition-turns.ts'

const FACES = ['F', 'B', 'R', 'L', 'U', 'D']
const AMOUNTS = ['', "'", '2']

test.each(
  [...FACES, ...FACES.map((face) => `${face}w`), 'x', 'y', 'z'].flatMap((letters) =>
    AMOUNTS.map((amount) => letters + amount),
  ),
)('[NO6] %s is notation', (word) => {
  const read = parseCompetitionTurns(word)
  expect(read.ok && formatTurns(read.value)).toBe(word)
})

test.each(FACES)('[NO6] the number of layers may be written: 2%sw is the turn without the 2', (face) => {
  for (const amount of AMOUNTS) {
    const read = parseCompetitionTurns(`2${face}w${amount}`)
    expect(read.ok && formatTurns(read.value)).toBe(`${face}w${amount}`)
  }
})

test.each([
  ["R2'", "R2'"],
  ["R'2", "R'2"],
  ['M', 'M'],
  ['E2', 'E2'],
  ["S'", "S'"],
  ['e', 'e'],
  ['r', 'r'],
  ['Y', 'Y'],
  ['U1', 'U1'],
  ['Ui', 'Ui'],
  ['U3', 'U3'],
  ['U-', 'U-'],
  ['R++', 'R++'],
  ["L'w", "L'w"],
  ['1R', '1R'],
  ['2U', '2U'],
  ['2f', '2f'],
  ['rw', 'rw'],
  ['1Rw', '1Rw'],
  ['3Rw', '3Rw'],
  ['2-3Rw', '2-3Rw'],
  ['[r]', '[r]'],
  ['(x)', '(x)'],
  ["(R U)'", '(R'],
  ['2(Rw)', '2(Rw)'],
  ['[R, U]', '[R,'],
  ['[R: U]', '[R:'],
  ['*', '*'],
  ['/', '/'],
  ['.', '.'],
  ['?', '?'],
  ['→', '→'],
  ['RU', 'RU'],
  ['R’', 'R’'],
])('[NO7] %s is not notation', (word, token) => {
  const error = { code: 'cube/unknown-turn', token }
  expect(parseCompetitionTurns(word)).toEqual({ ok: false, error: { ...error, at: 0 } })
  expect(parseCompetitionTurns(`F  ${word}`)).toEqual({ ok: false, error: { ...error, at: 3 } })
})
