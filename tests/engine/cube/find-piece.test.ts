/** A pointer on a piece. Rules CU: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { pieceAtSticker, stickersOfPiece } from '../../../engine/cube/find-piece.ts'
import { CENTRE_STICKERS, CORNER_PLACES, EDGE_PLACES } from '../../../engine/cube/piece-places.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import { aPosition, cubeAfter, SEED } from './arbitraries.ts'

const PLACES = [...CORNER_PLACES, ...EDGE_PLACES]

test('[CU17] a piece is where its colours are: in any position and hold its stickers show the faces of its name', () => {
  fc.assert(
    fc.property(aPosition, fc.constantFrom(...PLACES), (position, { name }) => {
      const letters = formatStickers(position)
      const shown = stickersOfPiece(position, name).map((sticker) => letters[sticker])
      expect(shown.sort().join('')).toBe([...name].sort().join(''))
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test('[CU17] each of its stickers leads back to it, and a centre to none', () => {
  fc.assert(
    fc.property(aPosition, (position) => {
      for (const { name } of PLACES)
        for (const sticker of stickersOfPiece(position, name)) expect(pieceAtSticker(position, sticker)).toBe(name)
      for (const centre of CENTRE_STICKERS) expect(pieceAtSticker(position, centre)).toBeNull()
    }),
    { seed: SEED, numRuns: 60 },
  )
})

test('[CU17] the twenty pieces cover all stickers but the centres, each once', () => {
  const all = PLACES.flatMap(({ name }) => stickersOfPiece(cubeAfter("R U2 F' x M"), name))
  expect([all.length, new Set(all).size]).toEqual([48, 48])
})

test('[CU17] a name of no piece is our own bug', () => {
  expect(() => stickersOfPiece(solvedCube(), 'UD')).toThrow('names a piece')
  expect(() => stickersOfPiece(solvedCube(), '')).toThrow('names a piece')
})
