/** Lines of standard input. Rules CO: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readLines } from '../../../server/cli/read-lines.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

async function linesOf(pieces: readonly string[], charactersMax: number) {
  async function* input() {
    yield* pieces
  }
  const lines: string[] = []
  for await (const { text, isTooLong } of readLines(input(), charactersMax)) lines.push(isTooLong ? `${text}…` : text)
  return lines
}

test('[CO9] however the text comes in pieces, the lines are the same', async () => {
  const piece = fc.stringMatching(/^[ab\r\n]{0,6}$/u)
  await fc.assert(
    fc.asyncProperty(fc.array(piece), async (pieces) => {
      const expected = pieces
        .join('')
        .split('\n')
        .map((line) => line.replace(/\r$/u, ''))
      // A line that ends with the text has no line feed behind it; an empty one there is none.
      if (pieces.join('').split('\n').at(-1) === '') expected.pop()
      expect(await linesOf(pieces, 100)).toEqual(expected)
    }),
    { seed: SEED },
  )
})

test('[CO9] a line that is too long is cut, and the next one is whole', async () => {
  expect(await linesOf(['abcde\nab', 'cdefgh', 'ijk\nabcd\nabcdef'], 5)).toEqual(['abcde', 'abcde…', 'abcd', 'abcde…'])
})
