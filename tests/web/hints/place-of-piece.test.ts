/** Where a ringed piece is, to be said. Rules HT: tests/RULES.md. */

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { PIECE_NAMES } from '../../../engine/contest/nudges.ts'
import { applyTurn } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { stickersOfPiece } from '../../../engine/cube/find-piece.ts'
import { TURN_NAMES, type Turn } from '../../../engine/cube/turns.ts'
import { placeOfPiece } from '../../../web/parts/hints/place-of-piece.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

test('[HT7] a piece at home is at its home', () => {
  for (const home of PIECE_NAMES) expect(placeOfPiece(solvedCube(), home)).toBe(home)
})

test('[HT7] the place that is said is the place that is ringed, wherever turns have brought the piece', () => {
  const turns = fc.array(fc.nat(TURN_NAMES.length - 1), { maxLength: 20 })
  fc.assert(
    fc.property(turns, fc.constantFrom(...PIECE_NAMES), (row, home) => {
      const position = solvedCube()
      for (const turn of row) applyTurn(position, turn as Turn)
      const place = placeOfPiece(position, home)
      expect(place.length).toBe(home.length)
      // The stickers of a piece at home are those of its place, in whatever hold: a second way to name the same.
      expect(stickersOfPiece(position, home)).toEqual(stickersOfPiece(solvedCube(), place))
    }),
    { seed: SEED },
  )
})
