import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type ClockSample, clockOffsetMs } from '../../../web/live/clock-offset.ts'
import { SEED } from '../../engine/cube/arbitraries.ts'

/** The server reads its clock when the question has come and before the answer leaves. */
const aSample = (askedAtMs: number, aheadMs: number, thereMs: number, backMs: number): ClockSample => ({
  askedAtMs,
  serverMs: askedAtMs + thereMs + aheadMs,
  answeredAtMs: askedAtMs + thereMs + backMs,
})

test('[PG1] on a line that is as slow there as back the offset is exact, and the fastest answer decides', () => {
  const samples = [aSample(0, 5_000, 900, 20), aSample(1_000, 5_000, 30, 30), aSample(2_000, 5_000, 20, 900)]
  expect(clockOffsetMs(samples)).toBe(5_000)
})

test('[PG1] the offset is wrong by at most half of the fastest round trip', () => {
  const anyDelayMs = fc.integer({ min: 0, max: 3_000 })
  const anySamples = fc.array(fc.tuple(fc.nat(1_000_000), anyDelayMs, anyDelayMs), { minLength: 1, maxLength: 8 })
  fc.assert(
    fc.property(fc.integer({ min: -1e9, max: 1e9 }), anySamples, (aheadMs, all) => {
      const fastestMs = Math.min(...all.map(([, thereMs, backMs]) => thereMs + backMs))
      const offsetMs = clockOffsetMs(all.map(([askedAtMs, there, back]) => aSample(askedAtMs, aheadMs, there, back)))
      // Rounded to whole milliseconds.
      expect(Math.abs(offsetMs - aheadMs)).toBeLessThanOrEqual(fastestMs / 2 + 0.5)
    }),
    { seed: SEED },
  )
})
