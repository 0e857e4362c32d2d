import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { composePositions } from '../../../engine/cube/compose-positions.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { aPosition, SEED, someTurns } from './arbitraries.ts'

test('[CU13] composing two positions does what their turns do one after the other', () => {
  fc.assert(
    fc.property(someTurns, someTurns, (first, then) => {
      const composed = composePositions(afterTurns(solvedCube(), first), afterTurns(solvedCube(), then))
      expect(composed).toEqual(afterTurns(solvedCube(), [...first, ...then]))
    }),
    { seed: SEED },
  )
})

test('[CU13] the solved cube changes nothing on either side', () => {
  fc.assert(
    fc.property(aPosition, (position) => {
      expect(composePositions(position, solvedCube())).toEqual(position)
      expect(composePositions(solvedCube(), position)).toEqual(position)
    }),
    { seed: SEED },
  )
})
