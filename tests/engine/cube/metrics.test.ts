import fc from 'fast-check'
import { expect, test } from 'vitest'
import { countExecutionTurns } from '../../../engine/cube/execution-turns.ts'
import { countHalfTurnMetric } from '../../../engine/cube/half-turn-metric.ts'
import { countOuterBlockTurns, outerBlockCost } from '../../../engine/cube/outer-block-turns.ts'
import { countQuarterTurnMetric } from '../../../engine/cube/quarter-turn-metric.ts'
import { countSliceTurnMetric } from '../../../engine/cube/slice-turn-metric.ts'
import { inverseTurns, turnOf, turnQuarters } from '../../../engine/cube/turns.ts'
import { SEED, someFaceTurns, someTurns } from './arbitraries.ts'

const METRICS = [
  ['outer block', countOuterBlockTurns],
  ['execution', countExecutionTurns],
  ['half-turn', countHalfTurnMetric],
  ['quarter-turn', countQuarterTurnMetric],
  ['slice-turn', countSliceTurnMetric],
] as const

test.each(METRICS)('[ME2] %s: nothing counts 0, and counts of parts add up', (_, count) => {
  expect(count([])).toBe(0)
  fc.assert(
    fc.property(someTurns, someTurns, (first, then) => {
      expect(count([...first, ...then])).toBe(count(first) + count(then))
    }),
    { seed: SEED },
  )
})

test.each(METRICS)('[ME4] %s: a sequence and its inverse count the same', (_, count) => {
  fc.assert(
    fc.property(someTurns, (sequence) => {
      expect(count(inverseTurns(sequence))).toBe(count(sequence))
    }),
    { seed: SEED },
  )
})

test('[ME2] for face turns all metrics agree but the quarter-turn metric, which counts half turns twice', () => {
  fc.assert(
    fc.property(someFaceTurns, (sequence) => {
      const counts = METRICS.filter(([name]) => name !== 'quarter-turn').map(([, count]) => count(sequence))
      expect(new Set(counts).size).toBe(1)
      const nHalfTurns = sequence.filter((turn) => turnQuarters(turn) === 2).length
      expect(countQuarterTurnMetric(sequence)).toBe(counts[0] + nHalfTurns)
    }),
    { seed: SEED },
  )
})

test.each([
  ['R', 1],
  ['U2', 1],
  ["Rw'", 1],
  ['Fw2', 1],
  ['M', 2],
  ['S2', 2],
  ['x', 0],
  ['y2', 0],
] as const)('[ME3] in a round %s adds %i', (name, cost) => {
  expect(outerBlockCost(turnOf(name))).toBe(cost)
})
