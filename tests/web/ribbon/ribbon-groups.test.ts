/** What of a ribbon stays together where it goes on in the next line, and how it is heard. */

import fc from 'fast-check'
import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { countOuterBlockTurns } from '../../../engine/cube/outer-block-turns.ts'
import { parseTurns } from '../../../engine/cube/parse-turns.ts'
import { ALL_TURNS, turnName } from '../../../engine/cube/turns.ts'
import { LEFT_TRIGGER, RIGHT_TRIGGER } from '../../../engine/method/sequence-book.ts'
import { type RibbonGroup, ribbonGroups } from '../../../web/parts/ribbon/ribbon-groups.ts'
import { ribbonWords } from '../../../web/parts/ribbon/ribbon-words.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

// Rows: turns, and the groups between bars: a re-hold stands in front of what it belongs to.
test.each([
  ['', []],
  ["F U R U' R' F'", ['F', "U R U' R'", "F'"]],
  ["y F U R U' R' F'", ['y F', "U R U' R'", "F'"]],
  ["F y2 U R U' R'", ['F', "y2 U R U' R'"]],
  ['x y R', ['x y R']],
  ["U' L' U L y'", ["U' L' U L", "y'"]],
])('[DE7] "%s" may be parted only so', (text, groups) => {
  expect(ribbonGroups(turnsOf(text)).map(written)).toEqual(groups)
})

const ribbons = fc
  .array(
    fc.oneof(
      fc.constantFrom(...ALL_TURNS).map((turn) => [turn]),
      fc.constantFrom(RIGHT_TRIGGER, LEFT_TRIGGER),
    ),
  )
  .map((parts) => parts.flat())

test('[DE7] groups hold every turn in its order, and are as long as the turns count in a round', () => {
  fc.assert(
    fc.property(ribbons, (turns) => {
      const groups = ribbonGroups(turns)
      expect(groups.map(written).filter(Boolean).join(' ')).toBe(turns.map(turnName).join(' '))
      expect(groups.reduce((sum, { squares }) => sum + squares, 0)).toBe(countOuterBlockTurns(turns))
      expect(groups.map(({ at }) => at)).toEqual([...new Set(groups.map(({ at }) => at))].sort((a, b) => a - b))
    }),
    { seed: SEED },
  )
})

test('[WO7] a ribbon is heard turn by turn, a whole trigger by its name', () => {
  expect(ribbonWords(t, turnsOf("F U R U' R' y U' L' U"))).toBe(
    'front layer clockwise, Right trigger, re-hold: the front goes to the left, ' +
      'top layer to the right, left layer up, top layer to the left',
  )
})

function written({ reHolds, part }: RibbonGroup): string {
  const own = part === null ? [] : part.kind === 'trigger' ? part.turns : [part.turn]
  return [...reHolds, ...own].map(turnName).join(' ')
}

function turnsOf(text: string) {
  const read = parseTurns(text)
  if (!read.ok) throw new Error(`${text} cannot be read`)
  return read.value
}
