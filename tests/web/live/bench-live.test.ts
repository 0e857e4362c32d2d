/** The bench over a bad network, reloads, other tabs and pauses. Rules PG: tests/RULES.md. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { TRY_STEPS_MAX } from '../../../engine/contest/limits.ts'
import type { StepName } from '../../../engine/contest/steps.ts'
import { SOLUTION } from '../../engine/contest/a-round.ts'
import { aDevice, aSeatedBench, aView, comeIn, loadBench, RUNNING } from './a-bench.ts'

beforeEach(() => void vi.useFakeTimers({ now: 1_000 }))
afterEach(() => void vi.useRealTimers())

const PAUSED = aView({ clock: { ...RUNNING, phase: 'paused', pausedAtMs: 900 } })
const held = (n: number, tryNumber = 1) => ({ tryNumber, held: n, reached: null })

describe('the seat', () => {
  test('[PG4] a page that is loaded again takes its seat, and sends what the device kept', async () => {
    const device = aDevice()
    const before = await aSeatedBench(device)
    before.turn('R', 'U')
    const bench = await loadBench(device)
    expect(bench.live().status).toBe('connecting')
    expect(await bench.line.answer('seat:resume', { bench: aView({ mine: { steps: ['R'] } }) })).toEqual({
      token: 'token',
    })
    expect(bench.live().status).toBe('seated')
    expect(bench.shown()).toEqual(['R', 'U'])
    expect(await bench.line.answer('turns:send', held(2))).toMatchObject({ from: 1, steps: ['U'] })
    expect(bench.live().mine?.nWaiting).toBe(0)
  })

  test('[PG4] without a connection turning goes on; the seat is taken before the turns are sent', async () => {
    const bench = await aSeatedBench()
    await bench.line.cut()
    bench.turn('R')
    expect(bench.live()).toMatchObject({ status: 'away', mine: { turns: 1, nWaiting: 1 } })
    bench.line.join()
    expect(bench.line.asked()).toEqual(['seat:resume'])
    await bench.line.answer('seat:resume', { bench: aView() })
    expect(await bench.line.answer('turns:send', held(1))).toMatchObject({ from: 0, steps: ['R'] })
  })

  test('[PG4] what was on its way when the connection was lost is sent again', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.cut()
    bench.line.join()
    await bench.line.answer('seat:resume', { bench: aView() })
    await bench.wait(1_000)
    expect(await bench.line.answer('turns:send', held(1))).toMatchObject({ from: 0, steps: ['R'] })
    expect(bench.line.asked()).toEqual([])
  })

  test('[PG4] a seat that cannot be taken yet is asked for again, one at a time, after the pause that the server names', async () => {
    const device = aDevice()
    await aSeatedBench(device)
    const bench = await loadBench(device)
    await bench.line.answer('seat:resume', { code: 'wire/too-fast', retryAfterMs: 2_500 })
    await bench.wait(2_400)
    expect(bench.line.asked()).toEqual([])
    await bench.wait(100)
    expect(bench.line.asked()).toEqual(['seat:resume'])
    await bench.wait(10_000)
    expect(bench.line.asked()).toEqual(['seat:resume'])
    await bench.line.answer('seat:resume', { bench: aView() })
    await bench.wait(10_000)
    expect([bench.live().status, bench.line.asked()]).toEqual(['seated', []])
  })

  test('[PG4] a seat that is no more leads to the way in; a closed room says so', async () => {
    const device = aDevice()
    await aSeatedBench(device)
    const removed = await loadBench(device)
    await removed.line.answer('seat:resume', { code: 'seat/gone' })
    expect(removed.live().status).toBe('seatless')
    expect((await loadBench(device)).live().status).toBe('seatless')

    await aSeatedBench(device)
    const closed = await loadBench(device)
    await closed.line.answer('seat:resume', { code: 'room/closed' })
    expect(closed.live()).toMatchObject({ status: 'gone', gone: 'room-closed' })
  })

  test('[PG4] an answer that comes after leaving seats nobody, and a last view is not shown', async () => {
    const device = aDevice()
    await aSeatedBench(device)
    const bench = await loadBench(device)
    bench.acts.leave()
    await bench.line.answer('seat:resume', { bench: aView() })
    await bench.line.tell('bench', aView())
    expect(bench.live()).toMatchObject({ status: 'seatless', view: null, mine: null })
  })

  test('[PG5] who comes in anew on a device sends nothing of who was there before', async () => {
    const device = aDevice()
    const before = await aSeatedBench(device)
    before.turn('R', 'U')
    const bench = await loadBench(device, 'OTHERS')
    expect(bench.live().status).toBe('seatless')
    await comeIn(bench, aView(), 'another')
    expect([bench.shown(), bench.line.asked()]).toEqual([[], []])
  })

  test('[PG5] a device that kept nonsense is taken to have kept nothing', async () => {
    const device = aDevice()
    await aSeatedBench(device)
    const nonsense = [
      '{',
      '7',
      'null',
      '{}',
      '{"atMs":1000}',
      '{"atMs":1000,"value":{"roundId":"round-1"}}',
      '{"atMs":1000,"value":{"roundId":"round-1","tries":[{}]}}',
      '{"atMs":1000,"value":{"roundId":"round-1","tries":[{"number":1,"steps":[99],"nHeld":0,"isOpen":true}]}}',
      '{"atMs":"x","value":{"roundId":"round-1","tries":[{"number":1,"steps":[1],"nHeld":0,"isOpen":true}]}}',
    ]
    for (const kept of nonsense) {
      device.setItem('fairturn.turns', kept)
      const bench = await loadBench(device)
      await bench.line.answer('seat:resume', { bench: aView({ mine: { steps: ['R'] } }) })
      expect([bench.shown(), bench.line.asked()]).toEqual([['R'], []])
    }
  })
})

describe('another tab', () => {
  test('[PG6] it takes the seat over: this page sends nothing more and gives nothing up', async () => {
    const device = aDevice()
    const bench = await aSeatedBench(device)
    bench.turn('R', 'U')
    await bench.line.tell('seat:gone', { reason: 'taken-over' })
    const kept = device.getItem('fairturn.turns')
    await bench.line.answer('turns:send', { code: 'seat/none' })
    expect(device.getItem('fairturn.turns')).toBe(kept)
    expect([bench.live().refusal, bench.line.asked()]).toEqual([null, []])
    bench.turn('F')
    expect(bench.shown()).toEqual(['R', 'U'])
  })

  test('[PG6] taken back, the page goes on from what the server holds, with what it still has for it', async () => {
    const bench = await aSeatedBench()
    bench.turn('R', 'U')
    await bench.line.tell('seat:gone', { reason: 'taken-over' })
    await bench.line.answer('turns:send', { code: 'seat/none' })
    bench.acts.takeSeatBack()
    await bench.line.answer('seat:resume', { bench: aView({ mine: { steps: ['R'] } }) })
    expect(bench.live()).toMatchObject({ status: 'seated', gone: null })
    expect(await bench.line.answer('turns:send', held(2))).toMatchObject({ from: 1, steps: ['U'] })
  })

  test('[PG6] where the other tab went another way, the page takes that', async () => {
    const bench = await aSeatedBench()
    bench.turn('R', 'U')
    await bench.line.tell('seat:gone', { reason: 'taken-over' })
    await bench.line.answer('turns:send', { code: 'seat/none' })
    bench.acts.takeSeatBack()
    await bench.line.answer('seat:resume', { bench: aView({ mine: { steps: ['L'] } }) })
    expect([bench.shown(), bench.line.asked()]).toEqual([['L'], []])
  })

  test('[PG6] a lost connection does not win the seat back from it', async () => {
    const bench = await aSeatedBench()
    await bench.line.tell('seat:gone', { reason: 'taken-over' })
    await bench.line.cut()
    bench.line.join()
    expect([bench.live().status, bench.line.asked()]).toEqual(['gone', []])
  })
})

describe('at the door', () => {
  test('[PG9] a page that is loaded anew while it waits at a door waits on, with the same secret, until it is seated', async () => {
    const device = aDevice()
    const bench = await loadBench(device)
    const joined = bench.acts.join({ code: 'RAMKET', name: 'Ada' })
    const first = await bench.line.answer('seat:join', { kind: 'waiting' })
    expect([await joined, bench.live().status]).toEqual([null, 'waiting'])
    const again = await loadBench(device)
    expect(again.live().status).toBe('waiting')
    expect(await again.line.answer('seat:join', { kind: 'waiting' })).toEqual(first)
    await again.line.tell('seat:let-in', { token: 'token', bench: aView() })
    expect(again.live().status).toBe('seated')
    const third = await loadBench(device)
    expect(third.line.asked()).toEqual(['seat:resume'])
  })

  test('[PG9] whoever gives up, or is sent away, waits no longer when the page is loaded anew', async () => {
    for (const ends of ['give-up', 'sent-away'] as const) {
      const device = aDevice()
      const bench = await loadBench(device)
      const joined = bench.acts.join({ code: 'RAMKET', name: 'Ada' })
      await bench.line.answer('seat:join', { kind: 'waiting' })
      await joined
      if (ends === 'give-up') bench.acts.giveUp()
      else await bench.line.tell('seat:turned-away', {})
      expect((await loadBench(device)).live()).toMatchObject({ status: 'seatless' })
    }
  })
})

describe('turns that are refused', () => {
  test('[PG7] in a pause they wait, and go out with the view that says that the round goes on', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.tell('bench', PAUSED)
    await bench.line.answer('turns:send', { code: 'contest/paused' })
    await bench.wait(60_000)
    expect(bench.line.asked()).toEqual([])
    await bench.line.tell('bench', aView({ clock: { phase: 'running', startsAtMs: 60_000, endsAtMs: 120_000 } }))
    expect(await bench.line.answer('turns:send', held(1))).toMatchObject({ steps: ['R'] })
  })

  test('[PG7] after the end they are given up, and the page says that they came too late', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.answer('turns:send', held(1))
    bench.turn('U')
    await bench.line.answer('turns:send', { code: 'contest/round-over' })
    expect([bench.shown(), bench.live().cameTooLate, bench.line.asked()]).toEqual([['R'], true, []])
    await bench.line.tell('bench', aView({ roundId: 'round-2' }))
    expect(bench.live().cameTooLate).toBe(false)
  })

  test('[PG7] when the class has gone on meanwhile, what was turned without a connection goes to its own round', async () => {
    const bench = await aSeatedBench()
    await bench.line.cut()
    bench.turn('R', 'U')
    bench.line.join()
    await bench.line.answer('seat:resume', { bench: aView({ roundId: 'round-2' }) })
    const late = await bench.line.answer('turns:send', { code: 'contest/no-such-round' })
    expect(late).toMatchObject({ roundId: 'round-1', from: 0, steps: ['R', 'U'], kept: true })
    const handedIn = await bench.line.answer('turns:hand-in', { reached: null })
    expect(handedIn).toEqual({ roundId: 'round-1', tryNumber: 1, steps: ['R', 'U'] })
    expect([bench.shown(), bench.live().refusal, bench.line.asked()]).toEqual([[], null, []])
  })

  test('[PG7] a try that was opened too late is given up, and not asked for again', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.answer('turns:send', held(1))
    bench.acts.startAgain()
    expect(bench.live().mine?.number).toBe(2)
    await bench.line.answer('turns:send', { code: 'contest/round-over' })
    await bench.line.tell('bench', aView({ mine: { steps: ['R'] } }))
    expect(bench.live()).toMatchObject({ mine: { number: 1, turns: 1 }, cameTooLate: false })
    expect(bench.line.asked()).toEqual([])
  })

  test('[PG7] a fault of the server is waited for; only turns that it never takes are given up', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.answer('turns:send', { code: 'server/fault' })
    expect(bench.shown()).toEqual(['R'])
    await bench.wait(1_000)
    await bench.line.answer('turns:send', held(1))
    bench.turn('U')
    for (let time = 1; time <= 3; time++) {
      await bench.line.answer('turns:send', { code: 'server/fault' })
      await bench.wait(1_000)
    }
    expect(bench.live().refusal).toEqual({ code: 'server/fault' })
    await bench.line.answer('seat:resume', { bench: aView({ mine: { steps: ['R'] } }) })
    expect([bench.shown(), bench.line.asked()]).toEqual([['R'], []])
  })

  test('[PG7] while saving is paused they are sent again every second; that is said once, and no longer when it is over', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.answer('turns:send', { code: 'store/saving-paused' })
    expect(bench.live().refusal).toEqual({ code: 'store/saving-paused' })
    bench.acts.dismiss()
    await bench.wait(1_000)
    await bench.line.answer('turns:send', { code: 'store/saving-paused' })
    expect(bench.live().refusal).toBeNull()
    await bench.wait(1_000)
    await bench.line.answer('turns:send', held(1))
    bench.turn('U')
    await bench.line.answer('turns:send', { code: 'store/saving-paused' })
    await bench.wait(1_000)
    await bench.line.answer('turns:send', held(2))
    expect(bench.live()).toMatchObject({ refusal: null, mine: { nWaiting: 0 } })
  })

  test('[PG7] a gap is filled from what the server holds', async () => {
    const bench = await aSeatedBench()
    bench.turn('R', 'U')
    await bench.line.answer('turns:send', held(2))
    bench.turn('F')
    await bench.line.answer('turns:send', { code: 'contest/gap', held: 1 })
    await bench.wait(0)
    expect(await bench.line.answer('turns:send', held(3))).toMatchObject({ from: 1, steps: ['U', 'F'] })
  })

  test('[PG7] an answer about the round before does not hold up the turns of the next one', async () => {
    const bench = await aSeatedBench()
    bench.turn('R')
    await bench.line.tell('bench', aView({ roundId: 'round-2' }))
    bench.turn('U')
    expect(bench.line.asked()).toEqual(['turns:send'])
    await bench.line.answer('turns:send', { code: 'contest/no-such-round' })
    expect(await bench.line.answer('turns:send', held(1))).toMatchObject({ roundId: 'round-2', steps: ['U'] })
  })

  test('[PG7] a step too many for one try is not made', async () => {
    const bench = await aSeatedBench()
    const filler = Array.from({ length: TRY_STEPS_MAX }, (_, index): StepName => (index % 2 === 0 ? 'R' : "R'"))
    bench.turn(...filler)
    bench.turn('U')
    expect(bench.shown()?.length).toBe(TRY_STEPS_MAX)
    expect(bench.live().refusal).toEqual({
      code: 'contest/too-many-turns',
      max: TRY_STEPS_MAX,
      held: TRY_STEPS_MAX,
    })
  })
})

describe('what a child sees and says', () => {
  test('[PG7] the best try is right with the answer; after the goal nothing turns until the next try', async () => {
    const bench = await aSeatedBench()
    bench.turn(...SOLUTION, 'R')
    expect(bench.live().mine).toMatchObject({ reachedHere: true, turns: 6 })
    const reached = { turns: 6, momentMs: 1_000 }
    await bench.line.answer('turns:send', { tryNumber: 1, held: 6, reached })
    expect(bench.live()).toMatchObject({ mine: { reached }, view: { mine: { best: reached } } })
    bench.turn('U')
    expect([bench.shown(), bench.line.asked()]).toEqual([SOLUTION, []])
    bench.acts.startAgain()
    bench.turn('U')
    expect(bench.live().mine).toMatchObject({ number: 2, turns: 1, reached: null })
  })

  test('[PG8] a wish for help without a connection is said when the seat is taken again', async () => {
    const bench = await aSeatedBench()
    await bench.line.cut()
    bench.acts.askForHelp(true)
    expect(bench.live().view?.me.asksForHelp).toBe(true)
    bench.line.join()
    expect(bench.line.asked()).toEqual(['seat:resume'])
    await bench.line.answer('seat:resume', { bench: aView() })
    expect(await bench.line.answer('help:ask', {})).toEqual({ wanted: true })
    expect(bench.live()).toMatchObject({ refusal: null, view: { me: { asksForHelp: true } } })
  })

  test('[PG8] a wish for help ends with its round', async () => {
    const bench = await aSeatedBench()
    await bench.line.cut()
    bench.acts.askForHelp(true)
    bench.line.join()
    await bench.line.answer('seat:resume', { bench: aView({ roundId: 'round-2' }) })
    expect([bench.live().view?.me.asksForHelp, bench.line.asked()]).toEqual([false, []])
  })
})
