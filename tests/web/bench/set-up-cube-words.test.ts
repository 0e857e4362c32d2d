/** What is said while a real cube is brought to the start. Rules HC: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import type { RoundClock } from '../../../engine/contest/round-clock.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import { wordsForClockAtSetUp, wordsForNoSetup } from '../../../web/bench/set-up-cube-words.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

const RUNNING: RoundClock = { phase: 'running', startsAtMs: 1, endsAtMs: null }
const PAUSED: RoundClock = { phase: 'paused', startsAtMs: 1, endsAtMs: null, pausedAtMs: 2 }

// Rows: is there none, which cubes, what is said.
test.each([
  [false, 'real', /being worked out/],
  [false, 'either', /being worked out/],
  [true, 'real', /tell your teacher/],
  [true, 'either', /Play this round on the screen/],
] as const)('[HC4] no setup %s, cube "%s"', (noSetup, cube, words) => {
  expect(wordsForNoSetup(t, { noSetup }, { settings: { ...DEFAULT_ROUND_SETTINGS, cube } })).toMatch(words)
})

// Rows: the clock, is there no setup, where it is played, what is said.
test.each<[string, RoundClock, boolean, 'together' | 'alone', RegExp | null]>([
  ['dealt', { phase: 'ready' }, false, 'together', null],
  ['running', RUNNING, false, 'together', /Set your cube up/],
  ['running, none', RUNNING, true, 'together', null],
  ['paused', PAUSED, false, 'together', /paused/],
  ['paused, none', PAUSED, true, 'together', /paused/],
  ['at home', RUNNING, false, 'alone', null],
])('[HC4] the clock: %s', (_, clock, noSetup, pace, words) => {
  const said = wordsForClockAtSetUp(t, { noSetup }, { settings: { ...DEFAULT_ROUND_SETTINGS, pace }, clock })
  if (words === null) expect(said).toBeNull()
  else expect(said).toMatch(words)
})
