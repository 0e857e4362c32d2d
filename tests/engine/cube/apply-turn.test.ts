import fc from 'fast-check'
import { expect, test } from 'vitest'
import { afterTurns, applyTurn, applyTurns } from '../../../engine/cube/apply-turn.ts'
import { copyCube, cubesEqual, solvedCube } from '../../../engine/cube/cube-position.ts'
import { ALL_TURNS, inverseTurn, inverseTurns, TURN_NAMES, turnOf, turnQuarters } from '../../../engine/cube/turns.ts'
import { aPosition, aTurn, SEED, someTurns } from './arbitraries.ts'

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

test('[CU12] a million turns leave nothing behind in memory', () => {
  const sequence = Uint8Array.from({ length: 1_000 }, (_, index) => (index * 31) % 54)
  const position = solvedCube()
  const bytesTaken = () => {
    const before = process.memoryUsage().heapUsed
    for (let round = 0; round < 1_000; round++) {
      for (let index = 0; index < sequence.length; index++) applyTurn(position, sequence[index] as (typeof ALL_TURNS)[number])
    }
    return Math.abs(process.memoryUsage().heapUsed - before)
  }
  // The least of several runs: the test runner's own work between two readings must not count.
  const bytesPerTurn = Math.min(...Array.from({ length: 7 }, bytesTaken)) / 1_000_000
  expect(bytesPerTurn).toBeLessThan(0.05)
})
