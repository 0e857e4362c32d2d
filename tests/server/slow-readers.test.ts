/** Screens that stop reading: a phone in a pocket, a frozen laptop, somebody who means harm. Rules: tests/RULES.md. */

import type { Socket } from 'node:net'
import { beforeEach, expect, test } from 'vitest'
import { DeafSockets } from './support/deaf-sockets.ts'
import { eachTestHasAServer, server } from './support/each-test.ts'
import {
  aStudent,
  ask,
  aTeacher,
  type Client,
  connect,
  mustAsk,
  startRound,
  type Teacher,
  until,
  untyped,
} from './support/people.ts'

/** Packets that may wait for one screen, and what was under way when it stopped reading. */
const WAITING_MAX = 40

eachTestHasAServer()
let sockets: DeafSockets
beforeEach(() => {
  sockets = new DeafSockets(server.app.http)
})

/** Pauses and goes on, so that every screen is told, until `times` ticks have gone out. */
async function keepTelling(teacher: Teacher, times: number): Promise<void> {
  const message = { roomId: teacher.roomId, roundId: teacher.round() }
  const first = teacher.view().version
  for (let isPaused = false; teacher.view().version < first + times; isPaused = !isPaused) {
    const answer = await ask(teacher.client, isPaused ? 'round:resume' : 'round:pause', message)
    // At the desk's own limit of messages it waits a little.
    await new Promise((resolve) => setTimeout(resolve, answer.ok ? 95 : 500))
  }
  await ask(teacher.client, 'round:pause', message)
}

type Screen = { client: Client; socket: Socket; heard: [string, { round?: { clock?: unknown } }][] }

async function aDeafScreen(become: (client: Client) => Promise<unknown>, cookie?: string): Promise<Screen> {
  const client = connect(server, cookie === undefined ? {} : { cookie })
  await become(client)
  const heard: Screen['heard'] = []
  client.onAny((name, value) => heard.push([name, value]))
  return { client, socket: await sockets.deafen(), heard }
}

test('[WI13] a desk, a board and a bench that stop reading are told no more; when they read again, each gets one whole view', async () => {
  const teacher = await aTeacher(server, { timeLimitMs: null })
  await startRound(server, teacher)
  const { roomId, code, viewerKey, cookie } = teacher
  const desk = await aDeafScreen(async (client) => {
    await mustAsk(client, 'desk:enter', {})
    await mustAsk(client, 'room:watch', { roomId })
  }, cookie)
  const board = await aDeafScreen((client) => mustAsk(client, 'viewer:enter', { key: viewerKey }))
  const bench = await aDeafScreen((client) => mustAsk(client, 'seat:join', { code, name: 'Ada' }))
  await keepTelling(teacher, 60)
  await until('the desk knows the last pause', () => teacher.view().round?.clock.phase === 'paused')
  // Nothing changes any more while they catch up.
  for (const [name, screen] of Object.entries({ desk, board, bench })) {
    sockets.hear(screen.socket)
    const clock = teacher.view().round?.clock
    await until(`the ${name} shows what is so`, () => {
      const last = screen.heard.at(-1)
      return last?.[0] === name && JSON.stringify(last[1].round?.clock) === JSON.stringify(clock)
    })
    expect(screen.heard.length).toBeLessThan(WAITING_MAX)
  }
})

test('[WI13] a screen that has not read for half a minute is hung up on, and its seat is empty', async () => {
  const teacher = await aTeacher(server, { timeLimitMs: null })
  await startRound(server, teacher)
  await aDeafScreen((client) => mustAsk(client, 'seat:join', { code: teacher.code, name: 'Ada' }))
  await until('Ada is here', () => teacher.view().seats[0]?.here)
  await keepTelling(teacher, 45)
  expect(teacher.view().seats[0].here).toBe(true)
  server.advance(31_000)
  await until('Ada is away', () => !teacher.view().seats[0].here)
})

test('[WI13] who goes on sending without reading the answers is hung up on', async () => {
  const teacher = await aTeacher(server)
  const ada = await aStudent(server, teacher.code, 'Ada')
  await sockets.deafen()
  const sending = setInterval(() => {
    for (let sent = 0; sent < 100; sent++) untyped(ada.client).emit('clock:ask', {}, () => undefined)
  }, 20)
  await until('Ada is away', () => teacher.view().seats[0]?.here === false).finally(() => clearInterval(sending))
})
