/** The one line about what holds just now. Rules BE: tests/RULES.md. */

import type { TFunction } from 'i18next'
import { beforeAll, expect, test } from 'vitest'
import { stateLine } from '../../../web/bench/state-line.ts'
import { inEnglish } from '../english.ts'

let t: TFunction
beforeAll(async () => {
  t = await inEnglish()
})

type Holds = Parameters<typeof stateLine>[1]
const USUAL: Holds = {
  live: { status: 'seated', view: null, mine: null },
  play: { phase: 'turning' },
  checksLong: false,
  delayMs: 45,
}
const AWAY = { ...USUAL, live: { ...USUAL.live, status: 'away' } } as const

// Rows: what holds, what is said.
test.each<[string, Holds, RegExp | null]>([
  ['all as usual', USUAL, null],
  ['nothing known of the delay', { ...USUAL, delayMs: null }, null],
  ['a delay that nobody feels', { ...USUAL, delayMs: 400 }, null],
  ['a slow connection', { ...USUAL, delayMs: 401 }, /slow just now/],
  ['no connection', AWAY, /^No connection\. Go on turning: your turns are kept here and sent when it is back\.$/],
  ['no connection, on a real cube', { ...AWAY, isWriting: true }, /^No connection\. .*what you send is kept here/],
  ['no connection and slow before', { ...AWAY, delayMs: 900 }, /^No connection/],
  ['a pause', { ...USUAL, play: { phase: 'paused' }, delayMs: 900 }, /paused/],
  ['the countdown, on a real cube', { ...USUAL, play: { phase: 'countdown', seconds: 2 }, isWriting: true }, /signal/],
  ['the clock at 0, no connection', { ...AWAY, play: { phase: 'time-up' } }, /how it ended/],
])('[BE16] %s', (_, holds, words) => {
  const said = stateLine(t, holds)
  if (words === null) expect(said).toBeNull()
  else expect(said).toMatch(words)
})
