/** Whether what the screens are shown is what the record holds: the same views come from a server on a copy of the data. */

import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect } from 'vitest'
import { aServer, type TestServer } from './a-server.ts'
import { ask, connect, mustAsk, type Teacher } from './people.ts'

/** What does not outlive the server: presence, tick numbers, wishes, knocks, what is shown, and what is searched for again. */
const PASSING = [
  'version',
  'here',
  'asksForHelp',
  'ready',
  'nReady',
  'delayMs',
  'knocks',
  'showing',
  'nShowings',
  'addresses',
  'savingPaused',
  'setup',
  'noSetup',
]

/** Of a screen, all that outlives the server; of a clock its length, not its place. */
function lasting(view: unknown): unknown {
  const text = JSON.stringify(view, (key, value) => {
    if (PASSING.includes(key)) return undefined
    if (key === 'clock') {
      const { startsAtMs, endsAtMs, endedAtMs, pausedAtMs, ...clock } = value as Record<string, number>
      return {
        ...clock,
        lastsMs: (endsAtMs ?? endedAtMs ?? Number.NaN) - startsAtMs,
        isPaused: pausedAtMs !== undefined,
      }
    }
    return value
  })
  return JSON.parse(text)
}

async function screensOf(server: { url: string }, teacher: Teacher, tokens: readonly string[]): Promise<unknown[]> {
  const desk = connect(server, { cookie: teacher.cookie })
  const { shelf } = await mustAsk(desk, 'desk:enter', {})
  let watched = await ask(desk, 'room:watch', { roomId: teacher.roomId })
  // Par is worked out anew, beside the event loop.
  for (
    let looks = 0;
    looks < 40 && watched.ok && watched.value.desk.round !== null && watched.value.desk.par === null;
    looks++
  ) {
    await new Promise((resolve) => setTimeout(resolve, 25))
    watched = await ask(desk, 'room:watch', { roomId: teacher.roomId })
  }
  const viewed = await ask(connect(server), 'viewer:enter', { key: teacher.viewerKey })
  // A room that was closed is shown as closed until the server ends; afterwards it is not there any more.
  if (!watched.ok || watched.value.desk.room.closed) return ['closed']
  const reviews = []
  for (const { id: roundId } of watched.value.desk.rounds)
    reviews.push(await ask(desk, 'review:ask', { roomId: teacher.roomId, roundId }))
  const benches = []
  for (const token of tokens) benches.push(await ask(connect(server), 'seat:resume', { token }))
  return [shelf, watched, viewed, ...reviews, ...benches].map(lasting)
}

/** Fails unless every screen of the room is the same after a restart. `tokens`: of the students whose benches are compared. */
export async function expectSameAfterRestart(
  server: TestServer,
  teacher: Teacher,
  tokens: readonly string[],
): Promise<void> {
  const live = await screensOf(server, teacher, tokens)
  const copy = mkdtempSync(join(tmpdir(), 'fairturn-copy-'))
  cpSync(server.dataDir, copy, { recursive: true })
  const restarted = await aServer({ dataDir: copy, aheadMs: server.aheadMs() })
  try {
    expect(await screensOf(restarted, teacher, tokens)).toEqual(live)
  } finally {
    await restarted.stop()
    rmSync(copy, { recursive: true, force: true })
  }
}
