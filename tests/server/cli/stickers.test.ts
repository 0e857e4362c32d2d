/** A position given by its stickers. Rules CO: tests/RULES.md. */

import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import { readPosition } from '../../../server/cli/read-position.ts'
import { turns } from '../../engine/cube/arbitraries.ts'
import { cube } from './run-cube.ts'

const SOLVED = formatStickers(solvedCube())

test('[CO12] a cube given by its stickers is the one that the scramble makes', () => {
  const position = afterTurns(solvedCube(), turns("F R U R' U' F' y"))
  expect(readPosition({ stickers: formatStickers(position) })).toEqual({ ok: true, value: position })
  expect(readPosition({ scramble: "F R U R' U' F' y" })).toEqual({ ok: true, value: position })
})

// Stickers are exchanged in the text of the solved cube: UR with RU, a corner turned in its place, two edges exchanged.
test.each([
  [SOLVED.replace('U', 'X'), '"X" at character 1 is no face'],
  [SOLVED.slice(1), '53 stickers are given'],
  [exchanged(SOLVED, 4, 13), 'the six centres'],
  [replaced(SOLVED, [[19, 'D']]), 'no piece has the colours'],
  [
    replaced(SOLVED, [
      [5, 'F'],
      [10, 'R'],
    ]),
    'is there twice',
  ],
  [
    replaced(SOLVED, [
      [8, 'R'],
      [9, 'F'],
      [20, 'U'],
    ]),
    'a corner is twisted by',
  ],
  [exchanged(SOLVED, 5, 10), 'an odd number of its edges is flipped'],
  [exchanged(exchanged(SOLVED, 10, 19), 5, 7), 'two of its pieces have changed places'],
])('[CO12] what is no cube that turns can solve is refused with what is wrong: %s, %s', (stickers, why) => {
  const position = readPosition({ stickers })
  expect(position.ok ? 'a position' : position.error).toContain(why)
})

test('[CO12] as bad input it ends with code 2 and one line', () => {
  const { exit, lines, complaint } = cube(['par', '--stage', '4', '--stickers', exchanged(SOLVED, 5, 10)])
  expect([exit, lines, complaint.trim().split('\n')]).toEqual([
    2,
    [],
    ['--stickers: no turns can solve this cube: an odd number of its edges is flipped'],
  ])
  const both = cube(['par', '--stage', '4', '--stickers', SOLVED, '--scramble', 'R'])
  expect([both.exit, both.complaint]).toEqual([2, expect.stringContaining('cannot stand beside')])
})

function exchanged(text: string, a: number, b: number): string {
  return replaced(text, [
    [a, text[b]],
    [b, text[a]],
  ])
}

function replaced(text: string, letters: ReadonlyArray<readonly [number, string]>): string {
  const all = [...text]
  for (const [at, letter] of letters) all[at] = letter
  return all.join('')
}
