/** The door: what is not a proper message of somebody who may send it goes no further. Rules: tests/RULES.md. */

import { request } from 'node:http'
import { describe, expect, test } from 'vitest'
import { FROM_BROWSER, type MessageName } from '../../engine/wire/from-browser.ts'
import { SOCKET_PATH } from '../../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../../engine/wire/version.ts'
import { type Speaker, WHO_MAY } from '../../server/live/who-may.ts'
import { eachTestHasAServer, server } from './support/each-test.ts'
import { aStudent, aTeacher, type Client, connect, mustAsk, signIn, untyped } from './support/people.ts'

eachTestHasAServer()

const raw = async (client: Client, ...message: unknown[]) => {
  const [name, ...rest] = message
  return (await untyped(client)
    .timeout(5_000)
    .emitWithAck(String(name), ...rest)) as { ok: boolean; error?: { code: string; at?: string } }
}
const refusedHandshake = (client: Client) =>
  new Promise<{ code?: string } | null>((resolve) => {
    client.on('connect_error', (fault) => resolve((fault as { data?: { code: string } }).data ?? null))
    client.on('connect', () => resolve({ code: 'connected' }))
  })

describe('messages', () => {
  test.each(['constructor', 'toString', 'hasOwnProperty', '__proto__', 'error-ish', 'turns:send '])(
    '[WI1] the unknown message %j is refused and harms nothing',
    async (name) => {
      const client = connect(server)
      expect(await raw(client, name, {})).toEqual({ ok: false, error: { code: 'wire/unknown-message' } })
      expect(await raw(client, 'clock:ask', {})).toMatchObject({ ok: true })
    },
  )

  test.each([
    ['no object', ['seat:join', 'hello'], 'message'],
    ['nothing at all', ['seat:join'], 'message'],
    ['two objects', ['clock:ask', {}, {}], 'message'],
    ['a missing field', ['seat:join', { name: 'Ada' }], 'code'],
    ['a field too many', ['clock:ask', { now: 1 }], 'message'],
    ['a number for a text', ['seat:join', { code: 1, name: 'Ada' }], 'code'],
    ['a text too long', ['seat:join', { code: 'BADBAD', name: 'x'.repeat(65) }], 'name'],
    ['null', ['seat:resume', null], 'message'],
  ])('[WI2] %s is refused, and the refusal names the field', async (_what, message, at) => {
    const client = connect(server)
    expect(await raw(client, ...message)).toEqual({ ok: false, error: { code: 'wire/malformed', at } })
  })

  test('[WI3] a message without an answer to call is taken like any other, and the process lives', async () => {
    const teacher = await aTeacher(server)
    const ada = await aStudent(server, teacher.code, 'Ada')
    untyped(ada.client).emit('help:ask', { wanted: true })
    untyped(ada.client).emit('turns:send')
    untyped(ada.client).emit('no such thing')
    expect(await raw(ada.client, 'clock:ask', {})).toMatchObject({ ok: true })
  })

  test('[WI4] an oversized message ends its connection before it is read; everybody else goes on', async () => {
    const [loud, quiet] = [connect(server), connect(server)]
    await raw(quiet, 'clock:ask', {})
    const ended = new Promise((resolve) => loud.once('disconnect', resolve))
    untyped(loud).emit('seat:join', { code: 'x'.repeat(100_000), name: '' })
    expect(await ended).toBeTruthy()
    expect(await raw(quiet, 'clock:ask', {})).toMatchObject({ ok: true })
  })

  test('[WI5] who says more than fingers can is told how long to wait, and nobody else is', async () => {
    const [fast, calm] = [connect(server), connect(server)]
    const answers = await Promise.all(Array.from({ length: 40 }, () => raw(fast, 'clock:ask', {})))
    const refused = answers.filter((answer) => !answer.ok)
    expect(refused.length).toBe(20)
    expect(refused[0]).toMatchObject({ error: { code: 'wire/too-fast', retryAfterMs: expect.any(Number) } })
    expect(await raw(calm, 'clock:ask', {})).toMatchObject({ ok: true })
  })
})

describe('the handshake', () => {
  test.each([[{}], [{ protocol: 0 }], [{ protocol: 99 }], [{ protocol: '1' }]])(
    '[WI6] a page of another protocol (%j) is told that it is out of date',
    async (auth) => {
      expect(await refusedHandshake(connect(server, { auth }))).toEqual({
        code: 'wire/out-of-date',
        server: PROTOCOL_VERSION,
      })
    },
  )

  test.each([
    'https://evil.example',
    'http://127.0.0.1.evil.example',
    'null',
    'http://127.0.0.1:1',
    'file://',
    'http://[::1]:80',
  ])('[WI7] a page from the origin %j gets no connection', async (origin) => {
    expect((await refusedHandshake(connect(server, { origin })))?.code).not.toBe('connected')
  })

  test('[WI7] our own pages do', async () => {
    expect((await refusedHandshake(connect(server, { origin: server.url })))?.code).toBe('connected')
  })

  test('[WI8] polling by script tag (JSONP) is refused, and answers of the live connection carry the headers of all others', async () => {
    const jsonp = await get(`${SOCKET_PATH}/?EIO=4&transport=polling&j=0`)
    expect(jsonp.status).toBe(403)
    const polling = await get(`${SOCKET_PATH}/?EIO=4&transport=polling`)
    expect(polling.status).toBe(200)
    expect(polling.headers['x-content-type-options']).toBe('nosniff')
    expect(polling.headers['content-security-policy']).toContain("default-src 'none'")
  })

  const get = (path: string) =>
    new Promise<{ status: number; headers: Record<string, unknown> }>((resolve, reject) => {
      request(`${server.url}${path}`, (response) => {
        response.resume()
        resolve({ status: response.statusCode ?? 0, headers: response.headers })
      })
        .on('error', reject)
        .end()
    })
})

describe('who may say what', () => {
  /** For each kind of speaker, which rows of the table open. */
  const OPENS: Record<'nobody' | 'session' | 'student' | 'viewer' | 'teacher', readonly Speaker[]> = {
    nobody: ['anyone'],
    session: ['anyone', 'session'],
    student: ['anyone', 'student'],
    viewer: ['anyone', 'viewer'],
    teacher: ['anyone', 'session', 'teacher'],
  }

  test.each(Object.keys(OPENS) as (keyof typeof OPENS)[])('[AU1] %s: every message of the table', async (speaker) => {
    const teacher = await aTeacher(server)
    let client = await speak(speaker, teacher)
    for (const [index, name] of (Object.keys(FROM_BROWSER) as MessageName[]).entries()) {
      // Fewer messages on one connection than its limit; only a student's limit follows the seat.
      if (index % 10 === 9 && speaker !== 'student' && speaker !== 'teacher') client = await speak(speaker, teacher)
      const mayPass = OPENS[speaker].includes(WHO_MAY[name])
      // An empty message is malformed or, where it is not, harmless; what counts is whether it got past the table.
      const answer = name === 'seat:leave' || name === 'room:open' ? null : await raw(client, name, { bad: true })
      if (answer === null) continue
      const refusedAtTheTable = ['desk/not-signed-in', 'seat/none', 'viewer/no-such-room'].includes(
        answer.error?.code ?? '',
      )
      expect([name, !refusedAtTheTable]).toEqual([name, mayPass])
    }
  })

  async function speak(speaker: keyof typeof OPENS, teacher: Awaited<ReturnType<typeof aTeacher>>): Promise<Client> {
    if (speaker === 'teacher') return teacher.client
    if (speaker === 'student') return (await aStudent(server, teacher.code, 'Ada')).client
    const client = connect(server, speaker === 'session' ? { cookie: teacher.cookie } : {})
    if (speaker === 'viewer') await mustAsk(client, 'viewer:enter', { key: teacher.viewerKey })
    return client
  }

  test('[AU2] a cookie that was made up, or of another server, opens no desk', async () => {
    const client = connect(server, { cookie: 'fairturn_desk=made-up' })
    expect(await raw(client, 'desk:enter', {})).toEqual({ ok: false, error: { code: 'desk/not-signed-in' } })
  })

  test('[AU3] the desk link works once', async () => {
    await signIn(server)
    await expect(signIn(server)).rejects.toThrow('desk/link-used')
  })

  test('[AU4] a room is found only by its own teacher', async () => {
    const teacher = await aTeacher(server)
    expect(await raw(teacher.client, 'room:watch', { roomId: 'somebody-elses' })).toEqual({
      ok: false,
      error: { code: 'room/not-yours' },
    })
  })
})

describe('what is sent', () => {
  test('[AU5] neither the board nor a bench is ever sent a token, a viewer key, or a lane that is covered', async () => {
    const teacher = await aTeacher(server, { boardSeenBy: 'teacher' })
    const viewer = connect(server)
    const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
    const seen: unknown[] = []
    for (const client of [viewer, ada.client]) client.onAny((...message) => seen.push(message))
    seen.push(await mustAsk(viewer, 'viewer:enter', { key: teacher.viewerKey }))
    const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number: 1 })
    server.advance(3_000)
    await bo.turn(roundId, 0, ['R'])
    await new Promise((resolve) => setTimeout(resolve, 300))
    const text = JSON.stringify(seen)
    expect(seen.length).toBeGreaterThan(2)
    for (const secret of [ada.token, bo.token, teacher.viewerKey, teacher.cookie.split('=')[1]])
      expect(text).not.toContain(secret)
    const lanes = (seen.flat() as { lanes?: { name: string }[] }[]).flatMap((message) => message?.lanes ?? [])
    expect(lanes.every((lane) => lane.name === 'Ada')).toBe(true)
  })
})
