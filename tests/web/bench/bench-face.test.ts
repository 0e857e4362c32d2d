import { expect, test } from 'vitest'
import type { RoundClock } from '../../../engine/contest/round-clock.ts'
import { type CubeInHand, DEFAULT_ROUND_SETTINGS } from '../../../engine/contest/round-settings.ts'
import { anEmptyTry } from '../../../engine/contest/round-state.ts'
import { solvedCube } from '../../../engine/cube/cube-position.ts'
import type { BenchView, RoundView } from '../../../engine/wire/views.ts'
import { benchFace } from '../../../web/bench/bench-face.ts'
import type { OwnChoices } from '../../../web/bench/own-choices.ts'
import type { BenchLive, LocalTry } from '../../../web/live/bench-live.ts'

const NO_CHOICES: OwnChoices = { pickedRound: null, cube: null, ready: null }
const NOW_MS = 100_000
const REACHED = { turns: 11, momentMs: 9_000 }
const ENDED: RoundClock = { phase: 'ended', startsAtMs: 1, endedAtMs: 2, reason: 'time' }
const RUNNING: RoundClock = { phase: 'running', startsAtMs: 90_000, endsAtMs: 200_000 }

test.each<[string, Partial<BenchLive>, string]>([
  ['an old page', { outOfDate: true }, 'out-of-date'],
  ['another tab has the seat', { gone: 'taken-over' }, 'gone'],
  ['no view yet', { view: null }, 'connecting'],
  ['no round', { view: aView(null), mine: null }, 'waiting'],
  ['a closed room', { view: { ...aView(null), room: { ...aView(null).room, closed: true } } }, 'gone'],
  ['a round that is dealt', { view: aView({ phase: 'ready' }) }, 'waiting'],
  ['a running round', { view: aView(RUNNING) }, 'playing'],
  ['a running round while away', { view: aView(RUNNING), status: 'away' }, 'playing'],
  ['an ended round', { view: aView(ENDED) }, 'ended'],
  ['a round that ended before one came in', { view: { ...aView(ENDED), lanes: [] } }, 'waiting'],
  ['a voided round', { view: aView({ phase: 'void', atMs: 1 }) }, 'voided'],
])('[BE1] %s', (_, live, kind) => {
  expect(benchFace({ ...aLive(), ...live }, NO_CHOICES, NOW_MS).kind).toBe(kind)
})

test.each<[string, RoundClock, Partial<LocalTry>, object]>([
  ['before the signal', { ...RUNNING, startsAtMs: NOW_MS + 2_001 }, {}, { phase: 'countdown', seconds: 3 }],
  ['at the last moment', { ...RUNNING, startsAtMs: NOW_MS + 1 }, {}, { phase: 'countdown', seconds: 1 }],
  ['at the signal', { ...RUNNING, startsAtMs: NOW_MS }, {}, { phase: 'turning' }],
  ['while it runs', RUNNING, {}, { phase: 'turning' }],
  ['without a clock', { ...RUNNING, endsAtMs: null }, {}, { phase: 'turning' }],
  ['paused', { ...RUNNING, phase: 'paused', pausedAtMs: 95_000 }, {}, { phase: 'paused' }],
  [
    'paused after the goal',
    { ...RUNNING, phase: 'paused', pausedAtMs: 95_000 },
    { reached: REACHED },
    { phase: 'reached' },
  ],
  ['seen here only', RUNNING, { reachedHere: true }, { phase: 'checking' }],
  ['said by the server', RUNNING, { reachedHere: true, reached: REACHED }, { phase: 'reached' }],
  ['time is up', { ...RUNNING, endsAtMs: NOW_MS }, {}, { phase: 'time-up' }],
])('[BE1] in play: %s', (_, clock, mine, play) => {
  const face = benchFace({ ...aLive(), view: aView(clock), mine: { ...aTry(), ...mine } }, NO_CHOICES, NOW_MS)
  expect(face.kind === 'playing' && face.play).toEqual(play)
})

test('[BE2] a pause in the countdown keeps the start hidden', () => {
  const clock: RoundClock = { phase: 'paused', startsAtMs: 96_500, endsAtMs: null, pausedAtMs: 95_000 }
  const face = benchFace({ ...aLive(), view: aView(clock) }, NO_CHOICES, NOW_MS)
  expect(face.kind === 'playing' && face.play).toEqual({ phase: 'countdown', seconds: 2 })
})

// Rows: what was chosen, where the round stands, which face.
test.each<[string, Partial<OwnChoices>, RoundClock, CubeInHand, string]>([
  ['real cubes, dealt', {}, { phase: 'ready' }, 'real', 'setting-up'],
  ['real cubes, dealt, and ready', { ready: true }, { phase: 'ready' }, 'real', 'set-up'],
  ['real cubes, running, late', {}, RUNNING, 'real', 'setting-up'],
  ['real cubes, running, ready', { ready: true }, RUNNING, 'real', 'writing'],
  ['real cubes, running, the setup once more', { ready: false }, RUNNING, 'real', 'setting-up'],
  ['as each likes, dealt', {}, { phase: 'ready' }, 'either', 'which-cube'],
  ['as each likes, running', {}, RUNNING, 'either', 'which-cube'],
  ['as each likes, the screen, dealt', { cube: 'screen' }, { phase: 'ready' }, 'either', 'waiting'],
  ['as each likes, the screen, running', { cube: 'screen' }, RUNNING, 'either', 'playing'],
  ['as each likes, the own cube', { cube: 'own' }, RUNNING, 'either', 'setting-up'],
  ['as each likes, ended', {}, ENDED, 'either', 'ended'],
])('[BE11] %s', (_, own, clock, cube, kind) => {
  const view = aView(clock)
  const round = { ...view.round, settings: { ...DEFAULT_ROUND_SETTINGS, cube } } as RoundView
  const live = { ...aLive(), view: { ...view, round } }
  expect(benchFace(live, { ...NO_CHOICES, ...own }, NOW_MS).kind).toBe(kind)
})

// Rows: the round that was picked, the one at hand, which face.
test.each<[string, string | null, RoundClock | null, string]>([
  ['none picked', null, RUNNING, 'rounds'],
  ['picked', 'r', RUNNING, 'playing'],
  ['another is at hand than was picked', 'q', RUNNING, 'rounds'],
  ['picked, over', 'r', ENDED, 'ended'],
  ['none picked, over', null, ENDED, 'rounds'],
  ['no round at hand', null, null, 'rounds'],
])('[BE13] at home: %s', (_, pickedRound, clock, kind) => {
  const view = aView(clock)
  const live = { ...aLive(), view: { ...view, room: { ...view.room, deadlineMs: NOW_MS + 1 } } }
  expect(benchFace(live, { ...NO_CHOICES, pickedRound }, NOW_MS).kind).toBe(kind)
})

function aView(clock: RoundClock | null): BenchView {
  const round =
    clock === null
      ? null
      : ({ id: 'r', number: 1, settings: DEFAULT_ROUND_SETTINGS, start: '', clock } as unknown as RoundView)
  return {
    kind: 'bench',
    room: { code: 'RAMKET', closed: false, pretend: false, deadlineMs: null },
    me: { seatId: 's', name: 'Mila', late: false, asksForHelp: false, ready: false },
    round,
    mine: null,
    lanes: [{ seatId: 's', name: 'Mila' }],
    nReached: 0,
    nStudents: 1,
  } as unknown as BenchView
}

function aTry(): LocalTry {
  return {
    ...anEmptyTry(solvedCube(), 1),
    reachedHere: false,
    nWaiting: 0,
  }
}

function aLive(): BenchLive {
  return {
    status: 'seated',
    view: aView(RUNNING),
    mine: aTry(),
    gone: null,
    outOfDate: false,
    cameTooLate: false,
    turnedAway: false,
    lastCode: null,
    refusal: null,
  }
}
