/** What a restart makes of the record, whenever the server died and whatever the machine's clock did. Rules: tests/RULES.md. */

import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { playedMs } from '../../engine/contest/round-clock.ts'
import { TestDisk } from './support/a-disk.ts'
import { beginServer, eachTestBeginsAServer, restartServer, server } from './support/each-test.ts'
import {
  aReturningStudent,
  aStudent,
  ask,
  aTeacher,
  connect,
  mustAsk,
  sendEverybodyHome,
  startRound,
  type Teacher,
  until,
} from './support/people.ts'

eachTestBeginsAServer()

/** Starts again on the same data, `awayMs` later by the machine's clock. */
async function restart(awayMs: number): Promise<void> {
  const aheadMs = server.aheadMs() + awayMs
  sendEverybodyHome()
  await restartServer({ aheadMs })
}

async function deskOf({ cookie, roomId }: Teacher) {
  const desk = connect(server, { cookie })
  await mustAsk(desk, 'desk:enter', {})
  return { desk, view: (await mustAsk(desk, 'room:watch', { roomId })).desk }
}

const serverNowMs = () => Date.now() + server.aheadMs()

describe('a restart', () => {
  test.each([
    ['a minute later', 60_000],
    ['a day later', 24 * 3_600_000],
    ['at once', 0],
    ['with the clock set back by an hour', -3_600_000],
  ])('[RO8] %s: the round goes on where it stood, and turns are taken', async (_what, awayMs) => {
    await beginServer()
    const teacher = await aTeacher(server, { timeLimitMs: 300_000 })
    const ada = await aStudent(server, teacher.code, 'Ada')
    const roundId = await startRound(server, teacher)
    server.advance(100_000)
    await ada.turn(roundId, 0, ['R'])
    await restart(awayMs)
    const back = await aReturningStudent(server, ada.token)
    const { view } = await deskOf(teacher)
    const clock = view.round!.clock
    expect(clock.phase).toBe('running')
    const played = playedMs(clock, serverNowMs())
    expect(played).toBeGreaterThanOrEqual(100_000)
    expect(played).toBeLessThan(110_000)
    expect(await back.turn(roundId, 1, ['U'])).toMatchObject({ ok: true, value: { held: 2 } })
  })

  test('[RO8] the time before the round, or of a pause, is not taken for time in which the server was away', async () => {
    const disk = new TestDisk()
    await beginServer({ wrapRecord: disk.wrap })
    const teacher = await aTeacher(server, { timeLimitMs: 300_000 })
    const roundId = await startRound(server, teacher)
    await until('a sign of life', () => disk.asked.some((entry) => entry.kind === 'alive'))
    // No further sign of life is stored: the server dies right after the class goes on.
    disk.drop('alive')
    await mustAsk(teacher.client, 'round:pause', { roomId: teacher.roomId, roundId })
    server.advance(1_800_000)
    await mustAsk(teacher.client, 'round:resume', { roomId: teacher.roomId, roundId })
    await restart(10_000)
    const { clock } = (await deskOf(teacher)).view.round!
    const played = playedMs(clock, serverNowMs())
    expect(clock.phase).toBe('running')
    // At most what was played; never a start that lies in the future by the length of the pause.
    if (clock.phase === 'running') expect(clock.startsAtMs).toBeLessThan(serverNowMs() + 3_000)
    expect(played).toBeLessThan(10_000)
  })

  test('[RO8] killed in the countdown, the rest of it is counted down', async () => {
    await beginServer()
    const teacher = await aTeacher(server)
    await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    server.advance(1_000)
    await restart(600_000)
    const { clock } = (await deskOf(teacher)).view.round!
    if (clock.phase !== 'running') throw new Error('it runs')
    expect(clock.startsAtMs - serverNowMs()).toBeGreaterThan(500)
    expect(clock.startsAtMs - serverNowMs()).toBeLessThan(3_000)
  })

  test('[RO8] killed in a pause, it is still paused, and the pause is taken out', async () => {
    await beginServer()
    const teacher = await aTeacher(server)
    const roundId = await startRound(server, teacher)
    server.advance(20_000)
    await mustAsk(teacher.client, 'round:pause', { roomId: teacher.roomId, roundId })
    await restart(600_000)
    const { desk, view } = await deskOf(teacher)
    expect(view.round!.clock.phase).toBe('paused')
    await mustAsk(desk, 'round:resume', { roomId: teacher.roomId, roundId })
    const played = playedMs((await deskOf(teacher)).view.round!.clock, serverNowMs())
    expect(played).toBeGreaterThanOrEqual(20_000)
    expect(played).toBeLessThan(25_000)
  })

  test('[RO8] a round without a limit goes on too, and can be ended', async () => {
    await beginServer()
    const teacher = await aTeacher(server, { timeLimitMs: null })
    const roundId = await startRound(server, teacher)
    server.advance(3 * 3_600_000)
    await restart(3_600_000)
    const { desk, view } = await deskOf(teacher)
    expect(view.round!.clock).toMatchObject({ phase: 'running', endsAtMs: null })
    await mustAsk(desk, 'round:end', { roomId: teacher.roomId, roundId })
    expect((await deskOf(teacher)).view.round!.clock.phase).toBe('ended')
  })

  test('[RO4] killed between the dealing and the signal, the round waits for the next press of start', async () => {
    const disk = new TestDisk()
    await beginServer({ wrapRecord: disk.wrap })
    const teacher = await aTeacher(server)
    disk.refuseAt(2)
    await ask(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    await restart(1_000)
    const { desk, view } = await deskOf(teacher)
    expect(view).toMatchObject({ nRounds: 1, round: { clock: { phase: 'ready' } } })
    const { roundId } = await mustAsk(desk, 'round:start', { roomId: teacher.roomId, number: view.nRounds + 1 })
    expect(roundId).toBe(view.round!.id)
  })

  test('[PR4] a day after a room was closed, a server that runs or starts has forgotten its names', async () => {
    const disk = new TestDisk()
    await beginServer({ wrapRecord: disk.wrap })
    const forgets = disk.asked.filter((entry) => entry.kind === 'names-forgotten')
    expect(forgets).toHaveLength(1)
    const [{ closedBeforeMs }] = forgets as { closedBeforeMs: number }[]
    expect(Date.now() - closedBeforeMs).toBeLessThan(23 * 3_600_000)
  })

  test('[DU18] a room whose record makes no sense costs only its own class anything', async () => {
    await beginServer()
    const teacher = await aTeacher(server)
    const other = await aTeacher(server, {}, teacher.cookie)
    const ada = await aStudent(server, other.code, 'Ada')
    const roundId = await startRound(server, teacher)
    await server.stop()
    const database = new Database(join(server.dataDir, 'fairturn.sqlite'))
    database.prepare("UPDATE round SET start = 'nonsense' WHERE id = ?").run(roundId)
    database.close()
    await restart(0)
    expect((await aReturningStudent(server, ada.token)).view().me.name).toBe('Ada')
    expect((await deskOf(other)).view.seats).toHaveLength(1)
    const desk = connect(server, { cookie: teacher.cookie })
    await mustAsk(desk, 'desk:enter', {})
    expect(await ask(desk, 'room:watch', { roomId: teacher.roomId })).toMatchObject({
      error: { code: 'room/not-yours' },
    })
  })
})
