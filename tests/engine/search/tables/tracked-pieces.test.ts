import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { FACE_TURNS } from '../../../../engine/cube/turns.ts'
import { PAIR_TABLE_NAMES, PAIR_TABLES } from '../../../../engine/search/tables/pair-tables.ts'
import { N_FACE_TURNS } from '../../../../engine/search/two-phase/coordinate.ts'
import { SEED } from '../../cube/arbitraries.ts'

const aWord = fc.array(fc.constantFrom(...FACE_TURNS), { maxLength: 25 })

test.each(PAIR_TABLE_NAMES)('[SE50] the numbers of %s are walked as the cube is turned', (name) => {
  const { rows, columns } = PAIR_TABLES[name]
  fc.assert(
    fc.property(aWord, (word) => {
      for (const facet of [rows, columns]) {
        let number = facet.numberOf(solvedCube())
        for (const turn of word) number = facet.moves()[number * N_FACE_TURNS + turn]
        expect(number).toBe(facet.numberOf(afterTurns(solvedCube(), word)))
        expect(number).toBeLessThan(facet.n)
      }
    }),
    { seed: SEED },
  )
})

// 12 * 11 * 10 * 9 * 2^4, 8 * 7 * 6 * 5 * 3^4 and so on.
test.each([
  ['cross-corner', 190_080, 24],
  ['base-corners-edge', 136_080, 24],
  ['middle-corner', 190_080, 24],
  ['middle-edge', 190_080, 24],
  ['flips-base', 11_880, 2_048],
  ['flips-middle', 11_880, 2_048],
] as const)('[SE50] the table %s has %i rows and %i columns', (name, nRows, nColumns) => {
  expect([PAIR_TABLES[name].rows.n, PAIR_TABLES[name].columns.n]).toEqual([nRows, nColumns])
})
