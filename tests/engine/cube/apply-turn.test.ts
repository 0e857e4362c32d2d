import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns, applyTurn, applyTurns } from '../../../engine/cube/apply-turn.ts'
import { copyCube, cubesEqual, solvedCube } from '../../../engine/cube/cube-position.ts'
import { ALL_TURNS, inverseTurn, inverseTurns, TURN_NAMES, turnOf, turnQuarters } from '../../../engine/cube/turns.ts'
import { aPosition, aTurn, SEED, someTurns } from './arbitraries.ts'
import { bytesPerPortion } from './heap-growth.ts'

test('[CU3] a turn and then its inverse leave the cube as it was', () => {
  fc.assert(
    fc.property(aPosition, aTurn, (position, turn) => {
      expect(afterTurns(position, [turn, inverseTurn(turn)])).toEqual(position)
    }),
    { seed: SEED },
  )
})

test('[CU3] a sequence and then its inverse leave the cube as it was', () => {
  fc.assert(
    fc.property(aPosition, someTurns, (position, sequence) => {
      expect(afterTurns(position, [...sequence, ...inverseTurns(sequence)])).toEqual(position)
    }),
    { seed: SEED },
  )
})

test.each(TURN_NAMES)('[CU3] %s repeats after four quarters and not before', (name) => {
  const turn = turnOf(name)
  const position = solvedCube()
  for (let quarters = turnQuarters(turn); quarters % 4 !== 0; quarters += turnQuarters(turn)) {
    applyTurn(position, turn)
    expect(cubesEqual(position, solvedCube())).toBe(false)
  }
  applyTurn(position, turn)
  expect(cubesEqual(position, solvedCube())).toBe(true)
})

test('[CU3] no two of the 54 turns do the same', () => {
  const reached = new Set(ALL_TURNS.map((turn) => afterTurns(solvedCube(), [turn]).join()))
  expect(reached.size).toBe(54)
})

test('[CU12] afterTurns leaves the given position as it is; applyTurns changes it', () => {
  fc.assert(
    fc.property(aPosition, someTurns, (position, sequence) => {
      const before = copyCube(position)
      const after = afterTurns(position, sequence)
      expect(position).toEqual(before)
      applyTurns(position, sequence)
      expect(position).toEqual(after)
    }),
    { seed: SEED },
  )
})

test('[CU12] turning a cube in place takes no memory; turning a copy takes some, so the check can fail', () => {
  const sequence = Array.from({ length: 1_000 }, (_, index) => ALL_TURNS[(index * 31) % ALL_TURNS.length])
  const position = solvedCube()
  const inPlace = bytesPerPortion(() => {
    for (let round = 0; round < 20; round++) applyTurns(position, sequence)
  }, 50)
  const fewTurns = sequence.slice(0, 50)
  const copying = bytesPerPortion(() => {
    for (const turn of fewTurns) afterTurns(position, [turn])
  }, 50)
  expect(inPlace / (20 * sequence.length)).toBeLessThan(0.5)
  expect(copying / fewTurns.length).toBeGreaterThan(26)
})
