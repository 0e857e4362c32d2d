import fc from 'fast-check'
import { expect, test } from 'vitest'
import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import { TURN_NAMES, turnName, turnOf } from '../../../engine/cube/turns.ts'
import { aTurn, SEED } from './arbitraries.ts'
import { SOLVED_PICTURE, turnPicture } from './sticker-model.ts'

test('[CU1] both models show the same solved cube', () => {
  expect(formatStickers(solvedCube())).toBe(SOLVED_PICTURE)
})

test.each(TURN_NAMES)('[CU1] %s shows the same in both models', (name) => {
  const position = solvedCube()
  applyTurn(position, turnOf(name))
  expect(formatStickers(position)).toBe(turnPicture(SOLVED_PICTURE, name))
})

test('[CU1] both models agree after every turn of any sequence', () => {
  fc.assert(
    fc.property(fc.array(aTurn, { minLength: 1, maxLength: 60 }), (sequence) => {
      const position = solvedCube()
      let picture = SOLVED_PICTURE
      for (const turn of sequence) {
        applyTurn(position, turn)
        picture = turnPicture(picture, turnName(turn))
        expect(formatStickers(position)).toBe(picture)
      }
    }),
    { seed: SEED, numRuns: 400 },
  )
})
