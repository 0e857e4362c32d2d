import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../../engine/cube/cube-position.ts'
import { centreAt, HELD_CUBES } from '../../../../engine/cube/hold.ts'
import { turnKind, turnLetters } from '../../../../engine/cube/turns.ts'
import { goalMet } from '../../../../engine/method/goals.ts'
import {
  applySeen,
  asSeen,
  N_SEEN_PLACES,
  seenEffectOf,
  turnsToBringBaseDown,
} from '../../../../engine/method/way/seen-cube.ts'
import { aPosition, cubeAfter, SEED, someTurns, turns } from '../../cube/arbitraries.ts'

const aBaseDownPosition = aPosition.map((position) => afterTurns(position, turnsToBringBaseDown(position)))
/** Turns after which the base is down again. */
const keepingTheBase = someTurns.map((some) =>
  some.filter((turn) => turnKind(turn) === 'face' || turnLetters(turn) === 'y' || turnLetters(turn) === 'Uw'),
)

test('[LW14] the turns that bring the base down are one re-hold at most', () => {
  for (const held of HELD_CUBES) {
    const reHold = turnsToBringBaseDown(held)
    expect(reHold.length).toBe(centreAt(held, 'D') === 'D' ? 0 : 1)
    expect(reHold.every((turn) => turnKind(turn) === 're-hold')).toBe(true)
    expect(centreAt(afterTurns(held, reHold), 'D')).toBe('D')
  }
})

test('[LW14] turns do to the cube as seen what they do to the cube', () => {
  fc.assert(
    fc.property(aBaseDownPosition, keepingTheBase, (position, some) => {
      const seen = new Uint8Array(N_SEEN_PLACES)
      applySeen(asSeen(position), seenEffectOf(some), seen)
      expect(seen).toEqual(asSeen(afterTurns(position, some)))
    }),
    { seed: SEED, numRuns: 500 },
  )
})

test.each(['y', "y'", 'y2'])('[LW14] the same turns from the hold %s look the same to the solver', (reHold) => {
  fc.assert(
    fc.property(keepingTheBase, (some) => {
      const held = afterTurns(solvedCube(), [...turns(reHold), ...some])
      expect(asSeen(held)).toEqual(asSeen(afterTurns(solvedCube(), some)))
    }),
    { seed: SEED },
  )
})

test('[LW14] a cube is at home as seen exactly when it is solved', () => {
  fc.assert(
    fc.property(aBaseDownPosition, (position) => {
      const isHome = asSeen(position).every((code, place) => code === solvedCube()[place])
      expect(isHome).toBe(goalMet(position, 7))
    }),
    { seed: SEED },
  )
  expect(() => asSeen(cubeAfter('x'))).toThrow('base down')
  expect(() => seenEffectOf(turns('z'))).toThrow('base is down')
})
