/** When par stands in the lanes of the desk, which may be on a projector. */

import { expect, test } from 'vitest'
import type { RoundClock } from '../../../engine/contest/round-clock.ts'
import { classSeesPar } from '../../../web/desk/room-phase.ts'
import { aView, RUNNING } from '../live/a-bench.ts'

const ENDED: RoundClock = { phase: 'ended', startsAtMs: 0, endedAtMs: 60_000, reason: 'time' }
const PAUSED: RoundClock = { ...RUNNING, phase: 'paused', pausedAtMs: 30_000 }

test.each([
  ['running, hidden', RUNNING, false, false],
  ['running, shown', RUNNING, true, true],
  ['paused, hidden', PAUSED, false, false],
  ['paused, shown', PAUSED, true, true],
  ['ended, never shown before', ENDED, false, true],
])('[DE6] %s', (_, clock, parShown, sees) => {
  expect(classSeesPar({ round: aView({ clock }).round, parShown })).toBe(sees)
})

test('[DE6] without a round there is nothing to see', () => {
  expect(classSeesPar({ round: null, parShown: true })).toBe(false)
})
