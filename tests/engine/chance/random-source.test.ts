import { expect, test } from 'vitest'
import { chachaSource } from '../../../engine/chance/chacha-source.ts'
import { below, type RandomSource, shuffle } from '../../../engine/chance/random-source.ts'

/** A source that gives these words and then ends. */
function scripted(...words: number[]): RandomSource {
  return {
    nextUint32() {
      const word = words.shift()
      if (word === undefined) throw new Error('The script has ended')
      return word
    },
  }
}

test.each([
  [1, [0], 0],
  [2, [0], 0],
  [2, [1], 1],
  [6, [5], 5],
  [6, [6], 0],
  // 2^32 = 6 * 715,827,882 + 4: the last four words would favour 0 to 3 and are drawn again.
  [6, [4_294_967_291], 5],
  [6, [4_294_967_292, 3], 3],
  [6, [4_294_967_295, 4_294_967_292, 7], 1],
  [2 ** 32, [4_294_967_295], 4_294_967_295],
  [3, [4_294_967_295, 2], 2],
])('[CH3] below %i, the words %j give %i', (bound, words, number) => {
  expect(below(scripted(...words), bound)).toBe(number)
})

test.each([[0], [-1], [1.5], [2 ** 32 + 1], [Number.NaN]])('[CH3] %d is no bound', (bound) => {
  expect(() => below(scripted(0), bound)).toThrow('bound')
})

test('[CH3] a source that is stuck on a rejected word is reported instead of asked for ever', () => {
  expect(() => below({ nextUint32: () => 4_294_967_295 }, 6)).toThrow('rejected')
})

test('[CH4] a shuffle keeps the items', () => {
  const items = Array.from({ length: 20 }, (_, index) => index)
  shuffle(chachaSource(new Uint8Array(32)), items)
  expect(items).not.toEqual([...items].sort((a, b) => a - b))
  expect([...items].sort((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, index) => index))
})

test('[CH4] a shuffle follows algorithm P: from the last place down, each place is given one of those up to it', () => {
  const items = ['a', 'b', 'c', 'd']
  shuffle(scripted(1, 2, 0), items)
  expect(items).toEqual(['d', 'a', 'c', 'b'])
})

test.each([[[]], [['a']]])('[CH4] nothing is drawn to shuffle %j', (items) => {
  expect(() => shuffle(scripted(), [...items])).not.toThrow()
})
