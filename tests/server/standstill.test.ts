/** A machine that sleeps, or a process that is frozen, while a class plays. Rules RO: tests/RULES.md. */

import { describe, expect, test } from 'vitest'
import { playedMs, type RoundClock } from '../../engine/contest/round-clock.ts'
import { DEFAULT_ROUND_SETTINGS } from '../../engine/contest/round-settings.ts'
import type { DeskView } from '../../engine/wire/views.ts'
import { StandstillWatch } from '../../server/live/standstill.ts'
import { TestDisk } from './support/a-disk.ts'
import { expectSameAfterRestart } from './support/after-restart.ts'
import { beginServer, eachTestBeginsAServer, server } from './support/each-test.ts'
import {
  aReturningStudent,
  aStudent,
  aTeacher,
  connect,
  mustAsk,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

eachTestBeginsAServer()

const HOURS = 3_600_000
/** Two clocks that are read one after the other. */
const A_LITTLE_MS = 100
const nowMs = () => Date.now() + server.aheadMs()
/** Long enough for some ticks. */
const aWhile = (ms = 100) => new Promise((resolve) => setTimeout(resolve, ms))

/** The desk's view now, on a connection of its own: a leap of the clock ends those before. */
async function deskOf(teacher: Teacher): Promise<DeskView> {
  const { cookie, roomId } = teacher
  const client = connect(server, { cookie })
  try {
    await mustAsk(client, 'desk:enter', {})
    const { desk } = await mustAsk(client, 'room:watch', { roomId })
    return desk
  } catch (fault) {
    // Came in between the sleep and the tick that notices it: ended like those before, and comes back as a page does.
    if (!/disconnected/.test(String(fault))) throw fault
    return deskOf(teacher)
  } finally {
    client.disconnect()
  }
}

/** What its clock says once it says this. */
async function clockWhen(teacher: Teacher, isSo: (clock: RoundClock) => boolean): Promise<RoundClock> {
  for (let looks = 0; looks < 100; looks++) {
    const clock = (await deskOf(teacher)).round?.clock
    if (clock !== undefined && isSo(clock)) return clock
    await aWhile(30)
  }
  throw new Error('the clock never said so')
}
const isRunning = (clock: RoundClock) => clock.phase === 'running'
const endOf = (clock: RoundClock) => (clock.phase === 'running' ? (clock.endsAtMs ?? Number.NaN) : Number.NaN)

describe('the watch', () => {
  function aWatch() {
    const at = { nowMs: 1_000, goingOnMs: 50 }
    const caughtUp: number[] = []
    const watch = new StandstillWatch({
      nowMs: () => at.nowMs,
      goingOnMs: () => at.goingOnMs,
      catchUp: (byMs) => {
        caughtUp.push(byMs)
        at.nowMs += byMs
      },
    })
    const pass = (nowMs: number, goingOnMs = nowMs) => {
      at.nowMs += nowMs
      at.goingOnMs += goingOnMs
      return watch.ask()
    }
    return { watch, pass, caughtUp }
  }

  test('[RO14] five seconds between two ticks are a slow machine; more are a standstill, from the last tick to now', () => {
    const { watch, pass } = aWatch()
    expect(pass(90_000)).toBeNull()
    expect([pass(10), pass(5_000)]).toEqual([null, null])
    expect(watch.isOverdue).toBe(false)
    expect(pass(5_001)).toEqual({ fromMs: 96_010, toMs: 101_011, hasLeapt: false })
    expect(pass(10)).toBeNull()
  })

  test("[RO14] what the machine slept the server's clock is put ahead by, once", () => {
    const { pass, caughtUp } = aWatch()
    pass(0)
    expect(pass(7, 1_200_007)).toEqual({ fromMs: 1_000, toMs: 1_201_007, hasLeapt: true })
    expect([pass(10), caughtUp]).toEqual([null, [1_200_000]])
  })

  test('[RO14] a clock that is put back or ahead by somebody is no standstill', () => {
    const { pass, caughtUp } = aWatch()
    pass(0)
    expect([pass(3_600_000, 10), pass(-7_200_000, 10), caughtUp]).toEqual([null, null, []])
  })
})

describe.each(['frozen', 'asleep'] as const)('%s for a while', (how) => {
  test('[RO14] the time is taken out of a round that all play together, and turns count from where it stood', async () => {
    await beginServer()
    const teacher = await aTeacher(server, { timeLimitMs: 60_000 })
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    server.advance(20_000)
    await aWhile()
    const ends = endOf(await clockWhen(teacher, isRunning))
    server.standStill(HOURS, how)
    const clock = await clockWhen(teacher, (now) => endOf(now) > ends)
    expect(endOf(clock) - ends).toBeGreaterThan(HOURS - A_LITTLE_MS)
    expect(endOf(clock) - ends).toBeLessThan(HOURS + 2_000)
    const played = playedMs(clock, nowMs())
    expect(played).toBeGreaterThanOrEqual(20_000)
    expect(played).toBeLessThan(25_000)
    const back = await aReturningStudent(server, ada.token)
    expect(back.view().me.late).toBe(false)
    expect(await back.turn(roundId, 0, ['R', 'U'])).toMatchObject({ ok: true, value: { held: 2 } })
    await expectSameAfterRestart(server, teacher, [ada.token])
    server.advance(41_000)
    const ended = await clockWhen(teacher, ({ phase }) => phase === 'ended')
    expect(ended).toMatchObject({ reason: 'time', endedAtMs: endOf(clock) })
  })

  test('[RO14] a countdown goes on where it stood', async () => {
    await beginServer()
    const teacher = await aTeacher(server)
    await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    await aWhile()
    server.standStill(HOURS, how)
    const clock = await clockWhen(teacher, (now) => now.phase === 'running' && now.startsAtMs > nowMs())
    expect(clock.phase === 'running' && clock.startsAtMs - nowMs()).toBeLessThanOrEqual(3_000)
  })

  test('[RO14] a pause stays a pause, and is taken out as a whole', async () => {
    await beginServer()
    const teacher = await aTeacher(server)
    const { roomId, cookie } = teacher
    const roundId = await startRound(server, teacher)
    server.advance(10_000)
    await mustAsk(teacher.client, 'round:pause', { roomId, roundId })
    server.standStill(HOURS, how)
    await aWhile(300)
    expect((await deskOf(teacher)).round?.clock.phase).toBe('paused')
    const desk = connect(server, { cookie })
    await mustAsk(desk, 'desk:enter', {})
    await mustAsk(desk, 'round:resume', { roomId, roundId })
    const played = playedMs(await clockWhen(teacher, isRunning), nowMs())
    expect(played).toBeGreaterThanOrEqual(10_000)
    expect(played).toBeLessThan(15_000)
  })

  test('[TH5] the deadline of a take-home room does not move, and is kept by the calendar', async () => {
    await beginServer()
    const teacher = await aTeacher(server)
    const deadlineMs = nowMs() + 2 * HOURS
    const rounds = [{ ...DEFAULT_ROUND_SETTINGS, cases: null }]
    await mustAsk(teacher.client, 'room:take-home', { roomId: teacher.roomId, rounds, deadlineMs })
    await aWhile()
    server.standStill(HOURS, how)
    await aWhile(300)
    expect(endOf(await clockWhen(teacher, isRunning))).toBe(deadlineMs)
    server.standStill(HOURS + 1_000, how)
    const ended = await clockWhen(teacher, ({ phase }) => phase === 'ended')
    expect(ended).toMatchObject({ reason: 'time', endedAtMs: deadlineMs })
  })
})

test('[RO14] turns that were on their way are judged after the standstill is taken out, before any tick', async () => {
  await beginServer()
  const teacher = await aTeacher(server, { timeLimitMs: 60_000 })
  const ada = await aStudent(server, teacher.code, 'Ada')
  const roundId = await startRound(server, teacher)
  await aWhile()
  // Frozen as a whole, so that the turn is read in the same breath in which the server wakes.
  const turned = ada.turn(roundId, 0, ['R'])
  const wokenAt = performance.now() + 200
  server.standStill(HOURS, 'frozen')
  while (performance.now() < wokenAt);
  expect(await turned).toMatchObject({ ok: true, value: { held: 1 } })
})

test('[RO14] while the disk refuses, the round does not end by a clock that says too little', async () => {
  const disk = new TestDisk()
  await beginServer({ wrapRecord: disk.wrap })
  const teacher = await aTeacher(server, { timeLimitMs: 60_000 })
  await startRound(server, teacher)
  await aWhile()
  disk.hold()
  server.standStill(HOURS, 'frozen')
  await aWhile(300)
  disk.failWhatWaits()
  const clock = await clockWhen(teacher, (now) => now.phase === 'ended' || endOf(now) > nowMs())
  expect([clock.phase, playedMs(clock, nowMs()) < 10_000]).toEqual(['running', true])
})

test('[RO14] when the clock has leapt, pages are made to come back, and with it to ask the time', async () => {
  await beginServer()
  const teacher = await aTeacher(server)
  const ada = await aStudent(server, teacher.code, 'Ada')
  const lost: string[] = []
  ada.client.on('disconnect', (reason) => lost.push(reason))
  await aWhile()
  server.standStill(HOURS, 'frozen')
  await aWhile(200)
  expect(lost).toEqual([])
  server.standStill(HOURS, 'asleep')
  await until('the page lost its connection', () => lost.length === 1)
  await until('and came back by itself', () => ada.client.connected)
  const { serverMs } = await mustAsk(ada.client, 'clock:ask', {})
  expect(serverMs - Date.now()).toBeGreaterThan(2 * HOURS - A_LITTLE_MS)
})
