import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatTurns } from '../../../engine/cube/format-turns.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { turnsBetween } from '../../../web/cube/turns-between.ts'

// Rows: turns before, turns after, what happened, the turns that are carried out.
test.each([
  ['', '', 'none', ''],
  ['R U', 'R U', 'none', ''],
  ['R U', 'R U F2', 'turned', 'F2'],
  ['R', "R U R U' R'", 'turned', "U R U' R'"],
  ['R U', 'R', 'taken-back', "U'"],
  ["R U M'", 'R', 'taken-back', "M U'"],
  ['R U', 'R F', 'other', ''],
  ['R U F', 'R D', 'other', ''],
])('[DR5] from "%s" to "%s" it is %s', (before, after, kind, carriedOut) => {
  const between = turnsBetween(cubeAfter(before), cubeAfter(after))
  expect(between.kind).toBe(kind)
  expect('turns' in between ? formatTurns(between.turns) : '').toBe(carriedOut)
})

test('[DR5] another try, and another start, are something else', () => {
  expect(turnsBetween(cubeAfter('R'), { ...cubeAfter('R U'), tryNumber: 2 }).kind).toBe('other')
  expect(turnsBetween(cubeAfter('R'), { ...cubeAfter('R U'), position: cubeAfter('F').position }).kind).toBe('other')
  expect(turnsBetween(cubeAfter(''), { ...cubeAfter(''), position: cubeAfter('F').position }).kind).toBe('other')
})

function cubeAfter(text: string) {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(`${text} cannot be read`)
  return { tryNumber: 1, standing: read.value, position: afterTurns(solvedCube(), read.value) }
}
