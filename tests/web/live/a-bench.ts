/** A bench on a device of its own, its connection and its clock in the hands of the test. */

import { expect, vi } from 'vitest'
import type { RoomCode, RoundId, SeatId } from '../../../engine/contest/ids.ts'
import type { RoundClock } from '../../../engine/contest/round-clock.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import { type StepName, stepName, stepOf } from '../../../engine/contest/steps.ts'
import { formatStickers } from '../../../engine/cube/stickers.ts'
import type { BenchView, TryView } from '../../../engine/wire/views.ts'
import { aRound } from '../../engine/contest/a-round.ts'
import { aLine } from './a-line.ts'

const CODE = 'RAMKET' as RoomCode
export const RUNNING = { phase: 'running', startsAtMs: 0, endsAtMs: 60_000 } as const satisfies RoundClock

export function aView(
  wishes: {
    roundId?: string
    clock?: RoundClock
    mine?: Partial<TryView> | null
    settings?: Partial<RoundSettings>
  } = {},
): BenchView {
  const round = aRound(wishes.settings === undefined ? {} : { settings: wishes.settings })
  const mine = wishes.mine ?? null
  return {
    kind: 'bench',
    room: { code: CODE, closed: false, pretend: false, deadlineMs: null },
    me: { seatId: 'ada' as SeatId, name: 'Ada', late: false, asksForHelp: false, ready: false },
    rounds: [],
    setup: null,
    noSetup: false,
    nudges: { hint: null, words: null, point: null },
    handedIn: null,
    showing: null,
    round: {
      id: (wishes.roundId ?? 'round-1') as RoundId,
      number: 1,
      settings: round.settings,
      start: formatStickers(round.start),
      clock: wishes.clock ?? RUNNING,
    },
    mine: mine === null ? null : { number: 1, steps: [], reached: null, best: null, ...mine },
    par: null,
    lanes: [],
    nReached: 0,
    nStudents: 1,
  }
}

/** What a device keeps; a page that is loaded again finds it. */
export function aDevice(): Storage {
  const kept = new Map<string, string>()
  return {
    get length() {
      return kept.size
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, value) => void kept.set(name, value),
    removeItem: (name) => void kept.delete(name),
    clear: () => kept.clear(),
  }
}

/** Loads the page anew on this device; nothing of an earlier page is left but what the device kept. */
export async function loadBench(device: Storage, code: string | null = null) {
  vi.resetModules()
  vi.stubGlobal('localStorage', device)
  const { standIn, line } = aLine()
  vi.doMock('../../../web/live/socket.ts', () => standIn)
  vi.doMock('../../../web/live/server-clock.ts', () => ({ followServerClock: () => {}, serverNowMs: () => Date.now() }))
  const { beginBench, benchActs, useBench } = await import('../../../web/live/bench-live.ts')
  beginBench(code)
  await Promise.resolve()
  return {
    line,
    acts: benchActs,
    live: () => useBench.getState(),
    turn: (...names: StepName[]) => benchActs.turn(names.map(stepOf)),
    shown: () => useBench.getState().mine?.steps.map(stepName),
    async wait(ms: number) {
      await vi.advanceTimersByTimeAsync(ms)
    },
  }
}

export type BenchOnTest = Awaited<ReturnType<typeof loadBench>>

/** A page with a seat in a round that runs. */
export async function aSeatedBench(device: Storage = aDevice(), view: BenchView = aView()): Promise<BenchOnTest> {
  const bench = await loadBench(device)
  await comeIn(bench, view, 'token')
  return bench
}

export async function comeIn(bench: BenchOnTest, view: BenchView, token: string): Promise<void> {
  const joined = bench.acts.join({ code: 'ram-ket', name: 'Ada' })
  await bench.line.answer('seat:join', { kind: 'in', token, bench: view })
  expect(await joined).toBeNull()
}
