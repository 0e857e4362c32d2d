/**
 * Source of the metrics: World Cube Association, Regulations 2024, articles 12a5 (outer block turns) and 12a6 (execution
 * turns); Regulations 2009, articles 12a17 to 12a19 (half turns); quarter turns as OEIS A080602 counts them; slice turns
 * by the usual definition, from memory. The counts are worked by hand from these definitions.
 */

import { expect, test } from 'vitest'
import { countExecutionTurns } from '../../engine/cube/execution-turns.ts'
import { countHalfTurnMetric } from '../../engine/cube/half-turn-metric.ts'
import { countOuterBlockTurns } from '../../engine/cube/outer-block-turns.ts'
import { parseCompetitionTurns } from '../../engine/cube/parse-competition-turns.ts'
import { countQuarterTurnMetric } from '../../engine/cube/quarter-turn-metric.ts'
import { countSliceTurnMetric } from '../../engine/cube/slice-turn-metric.ts'
import { turns } from '../engine/cube/arbitraries.ts'

test.each([
  ["R U R' U'", 4, 4, 4, 4, 4],
  ["R2 U2 F' D", 4, 4, 4, 6, 4],
  ["Rw U Rw' x", 3, 4, 3, 3, 3],
  ["x y2 z'", 0, 3, 0, 0, 0],
])('[ME1] %s is %i outer block, %i execution, %i half, %i quarter, %i slice turns', (word, ...counts) => {
  const sequence = turns(word)
  expect([
    countOuterBlockTurns(sequence),
    countExecutionTurns(sequence),
    countHalfTurnMetric(sequence),
    countQuarterTurnMetric(sequence),
    countSliceTurnMetric(sequence),
  ]).toEqual(counts)
})

test('[ME1] M2 U M2 U2 M2 U M2 is 11 half, 20 quarter, 7 slice turns, and no notation of the Regulations 2024', () => {
  const sequence = turns('M2 U M2 U2 M2 U M2')
  expect(countHalfTurnMetric(sequence)).toBe(11)
  expect(countQuarterTurnMetric(sequence)).toBe(20)
  expect(countSliceTurnMetric(sequence)).toBe(7)
  expect(parseCompetitionTurns('M2 U M2 U2 M2 U M2').ok).toBe(false)
})

test('[ME3] in our rounds, which allow slices, each counts as the two outer turns that make it', () => {
  expect(countOuterBlockTurns(turns('M2 U M2 U2 M2 U M2'))).toBe(11)
  expect(countExecutionTurns(turns('M2 U M2 U2 M2 U M2'))).toBe(11)
})
