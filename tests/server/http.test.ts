/** What comes over HTTP, proper and improper. Rules: tests/RULES.md. */

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { connect as connectTcp } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { DESK_COOKIE, DESK_ENTER_PATH, SOCKET_PATH } from '../../engine/wire/places.ts'
import { TestDisk } from './support/a-disk.ts'
import { aServer, type TestServer } from './support/a-server.ts'
import { ask, connect, sendEverybodyHome, signIn } from './support/people.ts'

type Answer = { status: number; headers: Record<string, string | undefined>; body: string }

let webDir: string
let disk: TestDisk
let server: TestServer
beforeAll(async () => {
  webDir = mkdtempSync(join(tmpdir(), 'fairturn-pages-'))
  mkdirSync(join(webDir, 'assets'))
  writeFileSync(join(webDir, 'index.html'), '<!doctype html><title>page</title>')
  writeFileSync(join(webDir, 'assets', 'page-1.js'), 'export {}')
  writeFileSync(join(webDir, '..', 'fairturn-not-for-you.txt'), 'canary')
  disk = new TestDisk()
  server = await aServer({ webDir, wrapRecord: disk.wrap })
})
afterAll(async () => {
  sendEverybodyHome()
  await server.end()
  rmSync(webDir, { recursive: true, force: true })
  rmSync(join(tmpdir(), 'fairturn-not-for-you.txt'), { force: true })
})

function fetchAs(method: string, path: string, headers: Record<string, string> = {}, body?: string): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const sent = request(`${server.url}`, { method, path, headers }, (response) => {
      let text = ''
      response.on('data', (part) => (text += part))
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers as Answer['headers'], body: text }),
      )
    })
    sent.on('error', reject)
    sent.end(body)
  })
}

/** Bytes that are no HTTP, as they are. */
function say(bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connectTcp(Number(new URL(server.url).port), '127.0.0.1', () => socket.write(bytes))
    let text = ''
    socket.on('data', (part) => (text += part))
    socket.on('close', () => resolve(text))
    socket.on('error', (fault: NodeJS.ErrnoException) => (fault.code === 'ECONNRESET' ? resolve(text) : reject(fault)))
  })
}

const JSON_TYPE = { 'content-type': 'application/json' }
const HTML = { accept: 'text/html' }
const poll = `${SOCKET_PATH}/?EIO=4&transport=polling`

describe('headers', () => {
  test.each([
    ['the page', 'GET', '/', HTML, 200],
    ['a page behind it', 'GET', '/desk', HTML, 200],
    ['a file', 'GET', '/assets/page-1.js', {}, 200],
    ['a file that is not there', 'GET', '/assets/page-2.js', {}, 404],
    ['a folder', 'GET', '/assets/', {}, 404],
    ['something that is no page', 'GET', '/nothing.json', { accept: 'application/json' }, 404],
    ['an address that cannot be read', 'GET', '/%', HTML, 400],
    ['an address of zeros', 'GET', '/assets/%00', HTML, 400],
    ['a way out of the folder', 'GET', '/assets/../../fairturn-not-for-you.txt', {}, 403],
    ['the same in disguise', 'GET', '/assets/%2e%2e/%2e%2e/fairturn-not-for-you.txt', {}, 403],
    ['the same in another disguise', 'GET', '/..%5c..%5cfairturn-not-for-you.txt', {}, 200],
    ['health', 'GET', '/healthz', {}, 200],
    ['readiness', 'GET', '/readyz', {}, 200],
    ['the desk link by GET', 'GET', DESK_ENTER_PATH, { accept: 'application/json' }, 404],
    ['the desk link without a key', 'POST', DESK_ENTER_PATH, JSON_TYPE, 401],
    ['something sent where nothing is', 'POST', '/', JSON_TYPE, 404],
    ['something put', 'PUT', '/index.html', {}, 404],
    ['something deleted', 'DELETE', '/index.html', {}, 404],
    ['TRACE', 'TRACE', '/', {}, 404],
    ['OPTIONS', 'OPTIONS', DESK_ENTER_PATH, {}, 404],
    ['a greeting of the live connection', 'GET', poll, {}, 200],
    ['one by script', 'GET', `${poll}&j=0`, {}, 403],
    ['one of another site', 'GET', poll, { origin: 'https://evil.example' }, 403],
    ['one of an old version', 'GET', poll.replace('EIO=4', 'EIO=3'), {}, 400],
    ['one with an identifier that is not there', 'GET', `${poll}&sid=made-up`, {}, 400],
    ['one by an unknown way', 'GET', poll.replace('polling', 'pigeon'), {}, 400],
    ['the path of the live connection alone', 'GET', SOCKET_PATH, HTML, 200],
    ['the library of the live connection', 'GET', `${SOCKET_PATH}/socket.io.js`, {}, 400],
  ] as [string, string, string, Record<string, string>, number][])(
    '[WI8] %s: %s %s carries the protective headers',
    async (_what, method, path, headers, status) => {
      const answer = await fetchAs(method, path, headers)
      expect([answer.status, answer.headers['x-content-type-options'], answer.headers['referrer-policy']]).toEqual([
        status,
        'nosniff',
        'no-referrer',
      ])
      expect(answer.headers['content-security-policy']).toContain("default-src 'none'")
      expect(answer.headers['content-security-policy']).toContain("frame-ancestors 'none'")
      expect(answer.headers['x-powered-by']).toBeUndefined()
      expect(answer.body).not.toMatch(/canary|node_modules|<pre>|\bat .*:\d+:\d+/)
    },
  )

  test.each([
    ['no HTTP at all', 'HELO school\r\n\r\n', 400],
    ['headers without end', `GET / HTTP/1.1\r\nHost: a\r\nX: ${'x'.repeat(40_000)}\r\n\r\n`, 431],
    ['two lengths', 'POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab', 400],
    ['no host', 'GET / HTTP/1.1\r\n\r\n', 400],
  ])('[WI8] %s is refused with them too', async (_what, bytes, status) => {
    const answer = await say(bytes)
    expect(answer).toContain(`HTTP/1.1 ${status} `)
    if (!bytes.startsWith('GET / HTTP/1.1\r\n\r\n')) expect(answer).toContain('X-Content-Type-Options: nosniff')
  })

  test.each(['%6a=0', '%6A=x', 'x=1&j', 'j=1', 'x=%3F&j=2'])(
    '[WI8] polling by script is refused however it is spelled: %s',
    async (query) => {
      expect((await fetchAs('GET', `${poll}&${query}`)).status).toBe(403)
    },
  )
})

describe('the desk link', () => {
  test.each([
    ['no JSON', '{"key":', JSON_TYPE, 400, 'wire/malformed'],
    ['JSON of another kind', '"key"', JSON_TYPE, 400, 'wire/malformed'],
    ['too much', JSON.stringify({ key: 'x'.repeat(5_000) }), JSON_TYPE, 413, 'wire/malformed'],
    ['an unknown encoding', '{}', { ...JSON_TYPE, 'content-encoding': 'pigeon' }, 415, 'wire/malformed'],
    ['an unknown alphabet', '{}', { 'content-type': 'application/json; charset=pigeon' }, 415, 'wire/malformed'],
    ['a form', 'key=x', { 'content-type': 'application/x-www-form-urlencoded' }, 401, 'desk/link-used'],
    ['a key too many', '{"key":"x","__proto__":{"a":1}}', JSON_TYPE, 401, 'desk/link-used'],
    ['another site', '{"key":"x"}', { ...JSON_TYPE, origin: 'https://evil.example' }, 403, 'desk/link-used'],
  ] as [string, string, Record<string, string>, number, string][])(
    '[WI2] %s is answered by a refusal with a code',
    async (_what, body, headers, status, code) => {
      const answer = await fetchAs('POST', DESK_ENTER_PATH, headers, body)
      expect([answer.status, JSON.parse(answer.body)]).toMatchObject([status, { ok: false, error: { code } }])
      expect(answer.headers['content-security-policy']).toContain("default-src 'none'")
    },
  )

  test('[AU3] a link whose session could not be stored is not used up; two at once open one desk', async () => {
    disk.refuse(true)
    const refused = await fetchAs('POST', DESK_ENTER_PATH, JSON_TYPE, JSON.stringify({ key: server.app.link.key }))
    expect([refused.status, JSON.parse(refused.body)]).toEqual([
      503,
      { ok: false, error: { code: 'store/saving-paused' } },
    ])
    disk.refuse(false)
    const both = await Promise.allSettled([signIn(server), signIn(server)])
    expect(both.map((each) => each.status).sort()).toEqual(['fulfilled', 'rejected'])
  })
})

describe('the session cookie', () => {
  const entersDesk = async (cookie: string) => {
    const answer = await ask(connect(server, { cookie }), 'desk:enter', {})
    return answer.ok ? 'in' : answer.error.code
  }

  test.each([
    '%',
    '=',
    ';;;',
    DESK_COOKIE,
    `${DESK_COOKIE}=`,
    `${DESK_COOKIE}=%E0%A4%A`,
    `${DESK_COOKIE}=${'x'.repeat(8_000)}`,
    `${DESK_COOKIE}=a; ${DESK_COOKIE}=b`,
    `__proto__=a; constructor=b; ${DESK_COOKIE}=' OR 1=1 --`,
  ])('[AU2] the cookie %j opens no desk', async (cookie) => {
    expect(await entersDesk(cookie)).toBe('desk/not-signed-in')
  })

  test('[AU6] a session ends after half a year', async () => {
    const other = await aServer()
    const cookie = await signIn(other)
    const enters = async () => (await ask(connect(other, { cookie }), 'desk:enter', {})).ok
    other.advance(179 * 24 * 3_600_000)
    expect(await enters()).toBe(true)
    other.advance(2 * 24 * 3_600_000)
    expect(await enters()).toBe(false)
    await other.end()
  })
})

test.each([
  'https://evil.example',
  'null',
  'http://127.0.0.1',
  'http://127.0.0.1:1',
  'http://localhost.evil.example',
  'HTTP://EVIL.EXAMPLE',
  'http://xn--fairturn-9xa.example',
  'file://',
  'chrome-extension://abc',
  'not an address',
  '',
])('[WI7] a page of the origin %j gets no connection, by polling neither', async (origin) => {
  const answer = await fetchAs('GET', poll, { origin })
  expect(answer.status).toBe(403)
})
