import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns } from '../../../engine/cube/apply-turn.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import { FACES, oppositeFace } from '../../../engine/cube/faces.ts'
import { asHeldHome, centreAt, HELD_CUBES, holdOf, holdWith, turnsToHold } from '../../../engine/cube/hold.ts'
import { ALL_TURNS, turnKind } from '../../../engine/cube/turns.ts'
import { aPosition, cubeAfter, SEED } from './arbitraries.ts'

const aReHold = fc.constantFrom(...ALL_TURNS.filter((turn) => turnKind(turn) === 're-hold'))

test('[CU7] there are 24 holds, numbered 0 to 23, and 0 is home', () => {
  expect(HELD_CUBES.map(holdOf)).toEqual(Array.from({ length: 24 }, (_, hold) => hold))
  expect(holdOf(solvedCube())).toBe(0)
})

test('[CU7] a hold is told by what is up and what is in front; the same or opposite faces are no hold', () => {
  for (const up of FACES) {
    for (const front of FACES) {
      const hold = holdWith(up, front)
      expect(hold === undefined).toBe(front === up || front === oppositeFace(up))
      if (hold !== undefined) {
        expect([centreAt(HELD_CUBES[hold], 'U'), centreAt(HELD_CUBES[hold], 'F')]).toEqual([up, front])
      }
    }
  }
})

test('[CU7] every hold is reached from home by two re-holds at most', () => {
  HELD_CUBES.forEach((held, hold) => {
    expect(afterTurns(solvedCube(), turnsToHold(hold))).toEqual(held)
    expect(turnsToHold(hold).length).toBeLessThanOrEqual(2)
  })
})

test('[CU7] re-holding a cube does not change what it is when held home', () => {
  fc.assert(
    fc.property(aPosition, fc.array(aReHold, { maxLength: 6 }), (position, reHolds) => {
      const home = asHeldHome(position)
      expect(holdOf(home)).toBe(0)
      expect(asHeldHome(afterTurns(position, reHolds))).toEqual(home)
    }),
    { seed: SEED },
  )
})

// Regulations 2024, 12a4: x as R, y as U, z as F.
test.each([
  ['x', 'F', 'D'],
  ['y', 'U', 'R'],
  ['z', 'L', 'F'],
  ['x2', 'D', 'B'],
  ["y'", 'U', 'L'],
])('[CU7] after %s the centre of %s is up and that of %s in front', (written, up, front) => {
  expect([centreAt(cubeAfter(written), 'U'), centreAt(cubeAfter(written), 'F')]).toEqual([up, front])
})
