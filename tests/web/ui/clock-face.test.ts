/** Figures of a clock, for both directions. */

import { expect, test } from 'vitest'
import { formatClock } from '../../../web/ui/clock-face.tsx'

test.each([
  [300_000, '5:00'],
  [299_999, '5:00'],
  [299_000, '4:59'],
  [1, '0:01'],
  [0, '0:00'],
  [-5, '0:00'],
  [3_600_000, '1:00:00'],
  [3_599_001, '1:00:00'],
  [10_800_000, '3:00:00'],
])('[UI1] running down, %i ms are shown as %s', (ms, figures) => expect(formatClock(ms, 'down')).toBe(figures))

test.each([
  [0, '0:00'],
  [999, '0:00'],
  [1_000, '0:01'],
  [61_990, '1:01'],
  [3_725_000, '1:02:05'],
])('[UI1] running up, %i ms are shown as %s', (ms, figures) => expect(formatClock(ms, 'up')).toBe(figures))
