import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { cubesEqual, solvedCube } from '../../../../engine/cube/cube-position.ts'
import type { Turn } from '../../../../engine/cube/turns.ts'
import {
  numberOfWord,
  nWords,
  putOppositesInOrder,
  WORD_TURNS_MAX,
  wordOfNumber,
} from '../../../../engine/search/par/word-number.ts'
import { SEED, turns } from '../../cube/arbitraries.ts'

const aNumberedWord = fc
  .integer({ min: 0, max: WORD_TURNS_MAX })
  .chain((nTurns) => fc.record({ nTurns: fc.constant(nTurns), number: fc.maxSafeNat().map((n) => n % nWords(nTurns)) }))

describe('words of face turns', () => {
  // Source: Korf, AAAI 1997, as summarised: words in which no face comes twice running and opposite faces keep an order.
  test('[SE4] there are as many words as published, 12 times the last count and 18 times the one before', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7].map(nWords)).toEqual([1, 18, 243, 3_240, 43_254, 577_368, 7_706_988, 102_876_480])
    for (let nTurns = 3; nTurns <= WORD_TURNS_MAX; nTurns++) {
      expect(nWords(nTurns)).toBe(12 * nWords(nTurns - 1) + 18 * nWords(nTurns - 2))
    }
    expect(Number.isSafeInteger(nWords(WORD_TURNS_MAX))).toBe(true)
  })

  test('[SE4] a word is written as a number and read back, and numbers rise with the turns', () => {
    for (let nTurns = 0; nTurns <= 3; nTurns++) {
      const words = Array.from({ length: nWords(nTurns) }, (_, number) => wordOfNumber(number, nTurns))
      expect(words.map(numberOfWord)).toEqual(words.map((_, number) => number))
      const inOrder = [...words].sort(
        (a, b) => a.map((turn, at) => turn - b[at]).find((difference) => difference !== 0) ?? 0,
      )
      expect(words).toEqual(inOrder)
    }
    fc.assert(
      fc.property(aNumberedWord, ({ nTurns, number }) => {
        const word = wordOfNumber(number, nTurns)
        expect(word).toHaveLength(nTurns)
        expect(numberOfWord(word)).toBe(number)
      }),
      { seed: SEED },
    )
  })

  test('[SE4] two spellings of a word get one number', () => {
    const spelling = Uint8Array.from(turns("D U R2 L B' F U"))
    putOppositesInOrder(spelling)
    expect([...spelling]).toEqual(turns("U D R2 L F B' U"))
    const other = [...spelling] as Turn[]
    expect(cubesEqual(afterTurns(solvedCube(), other), afterTurns(solvedCube(), turns("D U R2 L B' F U")))).toBe(true)
  })

  test.each(["R R'", 'U U2', 'D U', "L R'", 'B2 F'])('[SE4] %s is not such a word', (text) => {
    expect(() => numberOfWord(turns(text))).toThrow('may follow')
  })
})
