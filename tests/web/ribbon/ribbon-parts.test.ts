import { expect, test } from 'vitest'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { turnName } from '../../../engine/cube/turns.ts'
import { ribbonParts } from '../../../web/parts/ribbon/ribbon-parts.ts'

// Rows: turns, and the ribbon: [..] a right trigger, {..} a left one, (..) a re-hold, = a square of double width.
test.each([
  ['', ''],
  ["F U R U' R' F'", "F [U R U' R'] F'"],
  ["U' L' U L", "{U' L' U L}"],
  ["U R U' R' U R U' R'", "[U R U' R'] [U R U' R']"],
  ["U R U'", "U R U'"],
  ["U R U' R", "U R U' R"],
  ["U U R U' R'", "U [U R U' R']"],
  ["U R y U' R'", "U R (y) U' R'"],
  ["M' U2 z2", "M'= U2 (z2)"],
])('[BE3] "%s" is drawn as "%s"', (text, drawn) => {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(`${text} cannot be read`)
  const parts = ribbonParts(read.value).map((part) => {
    if (part.kind === 're-hold') return `(${turnName(part.turn)})`
    if (part.kind === 'turn') return turnName(part.turn) + (part.squares === 2 ? '=' : '')
    const turns = part.turns.map(turnName).join(' ')
    return part.side === 'right' ? `[${turns}]` : `{${turns}}`
  })
  expect(parts.join(' ')).toBe(drawn)
})
