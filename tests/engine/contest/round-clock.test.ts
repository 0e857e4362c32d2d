/** The clock of a round through everything a teacher may do to it. Rules RO: tests/RULES.md. */

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type ClockEvent, changeClock } from '../../../engine/contest/change-clock.ts'
import { countdownMs, leftMs, playedMs } from '../../../engine/contest/round-clock.ts'
import type { Round } from '../../../engine/contest/round-state.ts'
import { SEED } from '../cube/arbitraries.ts'
import { aRound } from './a-round.ts'

function changed(round: Round, ...events: ClockEvent[]): Round {
  return events.reduce((now, event) => {
    const changed = changeClock(now, event)
    if (!changed.ok) throw new Error(`${event.kind}: ${changed.error.code}`)
    return changed.value
  }, round)
}

const paused = (atMs: number): ClockEvent => ({ kind: 'paused', atMs })
const resumed = (atMs: number): ClockEvent => ({ kind: 'resumed', atMs })

describe('the clock', () => {
  test('[RO6] counts down to the signal, then from the limit to nothing', () => {
    const { clock } = changed(aRound({ phase: 'ready' }), { kind: 'started', startsAtMs: 3_000 })
    expect([countdownMs(clock, 1_000), playedMs(clock, 1_000), leftMs(clock, 1_000)]).toEqual([2_000, 0, 60_000])
    expect([countdownMs(clock, 13_000), playedMs(clock, 13_000), leftMs(clock, 13_000)]).toEqual([0, 10_000, 50_000])
    expect([playedMs(clock, 99_000), leftMs(clock, 99_000)]).toEqual([60_000, 0])
  })

  test('[RO6] a round without a limit counts upwards only', () => {
    const { clock } = aRound({ settings: { timeLimitMs: null } })
    expect([playedMs(clock, 7_000), leftMs(clock, 7_000)]).toEqual([7_000, null])
  })

  test('[RO7] a pause stands still and is taken out, in the countdown too', () => {
    const still = changed(aRound(), paused(10_000))
    expect([playedMs(still.clock, 40_000), leftMs(still.clock, 40_000)]).toEqual([10_000, 50_000])
    const goesOn = changed(still, resumed(40_000)).clock
    expect([playedMs(goesOn, 41_000), leftMs(goesOn, 41_000)]).toEqual([11_000, 49_000])
    const beforeSignal = changed(aRound({ phase: 'ready' }), { kind: 'started', startsAtMs: 3_000 }, paused(1_000))
    expect([playedMs(beforeSignal.clock, 9_000), leftMs(beforeSignal.clock, 9_000)]).toEqual([0, 60_000])
    const early = changed(beforeSignal, resumed(11_000)).clock
    expect([countdownMs(early, 11_000), leftMs(early, 11_000)]).toEqual([2_000, 60_000])
  })

  test('[RO3] the signal keeps its moment through later pauses, so who came in after it stays late', () => {
    const begun = changed(aRound({ phase: 'ready' }), { kind: 'started', startsAtMs: 3_000 })
    expect(changed(begun, paused(10_000), resumed(40_000)).signalAtMs).toBe(3_000)
    expect(changed(begun, { kind: 'outage', fromMs: 10_000, toMs: 40_000 }).signalAtMs).toBe(3_000)
    // A pause in the countdown puts the signal itself off.
    expect(changed(begun, paused(1_000), resumed(11_000)).signalAtMs).toBe(13_000)
    expect(changed(begun, { kind: 'outage', fromMs: 1_000, toMs: 11_000 }).signalAtMs).toBe(13_000)
  })

  test('[RO8] an outage is taken out like a pause; during a pause it changes nothing', () => {
    const { clock } = changed(aRound(), { kind: 'outage', fromMs: 10_000, toMs: 70_000 })
    expect([playedMs(clock, 71_000), leftMs(clock, 71_000)]).toEqual([11_000, 49_000])
    const still = changed(aRound(), paused(10_000))
    expect(changed(still, { kind: 'outage', fromMs: 20_000, toMs: 30_000 }).clock).toEqual(still.clock)
  })

  test('[RO9] it ends at its own moment however late that is noticed, and where it stood when it ends in a pause', () => {
    expect(changed(aRound(), { kind: 'ended', atMs: 60_400, reason: 'time' }).clock).toMatchObject({
      endedAtMs: 60_000,
    })
    expect(changed(aRound(), { kind: 'ended', atMs: 20_000, reason: 'teacher' }).clock).toMatchObject({
      endedAtMs: 20_000,
    })
    expect(changed(aRound(), paused(5_000), { kind: 'ended', atMs: 20_000, reason: 'teacher' }).clock).toMatchObject({
      endedAtMs: 5_000,
    })
  })

  test('[RO9] a pause that comes after the end, before that is noticed, finds nothing left to play', () => {
    const tooLate = changed(aRound(), paused(60_050))
    expect([playedMs(tooLate.clock, 70_000), leftMs(tooLate.clock, 70_000)]).toEqual([60_000, 0])
    expect(changed(tooLate, { kind: 'ended', atMs: 80_000, reason: 'teacher' }).clock).toMatchObject({
      endedAtMs: 60_000,
    })
    expect(leftMs(changed(tooLate, resumed(90_000)).clock, 90_000)).toBe(0)
  })

  test('[RO10] whatever pauses and outages there are, the whole limit is played, no more and no less', () => {
    const gap = fc.integer({ min: 1, max: 100_000 })
    const breaks = fc.array(
      fc.record({ playMs: fc.integer({ min: 0, max: 4_000 }), awayMs: gap, isOutage: fc.boolean() }),
      { maxLength: 10 },
    )
    fc.assert(
      fc.property(breaks, (all) => {
        let round = aRound()
        let nowMs = 0
        for (const { playMs, awayMs, isOutage } of all) {
          nowMs += playMs
          round = isOutage
            ? changed(round, { kind: 'outage', fromMs: nowMs, toMs: nowMs + awayMs })
            : changed(round, paused(nowMs), resumed(nowMs + awayMs))
          nowMs += awayMs
        }
        expect(playedMs(round.clock, nowMs) + (leftMs(round.clock, nowMs) ?? 0)).toBe(60_000)
        expect(playedMs(round.clock, nowMs)).toBe(all.reduce((sum, each) => sum + each.playMs, 0))
      }),
      { seed: SEED },
    )
  })

  const events: Record<ClockEvent['kind'], ClockEvent> = {
    started: { kind: 'started', startsAtMs: 1 },
    paused: paused(10),
    resumed: resumed(20),
    'time-added': { kind: 'time-added', addedMs: 60_000 },
    ended: { kind: 'ended', atMs: 30, reason: 'teacher' },
    voided: { kind: 'voided', atMs: 30 },
    outage: { kind: 'outage', fromMs: 1, toMs: 2 },
  }
  const rounds = {
    ready: aRound({ phase: 'ready' }),
    running: aRound(),
    paused: changed(aRound(), events.paused),
    ended: changed(aRound(), events.ended),
    void: changed(aRound(), events.voided),
  }
  const ALLOWED: Record<keyof typeof rounds, ClockEvent['kind'][]> = {
    ready: ['started', 'voided'],
    running: ['paused', 'time-added', 'ended', 'voided', 'outage'],
    paused: ['resumed', 'time-added', 'ended', 'voided', 'outage'],
    ended: ['voided'],
    void: [],
  }
  test.each(Object.keys(rounds) as (keyof typeof rounds)[])(
    '[RO11] a round that is %s allows what it should and refuses the rest',
    (phase) => {
      const allowed = Object.values(events).filter((event) => changeClock(rounds[phase], event).ok)
      expect(allowed.map((event) => event.kind)).toEqual(
        Object.keys(events).filter((kind) => ALLOWED[phase].includes(kind as ClockEvent['kind'])),
      )
      for (const event of Object.values(events)) {
        const changed = changeClock(rounds[phase], event)
        if (!changed.ok) expect(changed.error).toEqual({ code: 'contest/wrong-phase', phase })
      }
    },
  )

  test('[RO11] time cannot be added to a round without a limit', () => {
    expect(changeClock(aRound({ settings: { timeLimitMs: null } }), events['time-added']).ok).toBe(false)
  })
})
