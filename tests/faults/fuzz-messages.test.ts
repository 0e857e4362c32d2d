/**
 * Everything that may come from a browser and should not: every message with mutated payloads from every kind of speaker,
 * and frames that no page sends. Whatever comes is answered or hung up on; nothing of it is stored or shown; the process and
 * everybody else go on. The seed is fixed, so that a find can be looked at again. Rules: tests/RULES.md.
 */

import { randomBytes } from 'node:crypto'
import { connect as connectTcp } from 'node:net'
import fc from 'fast-check'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { FROM_BROWSER, type MessageName } from '../../engine/wire/from-browser.ts'
import { MESSAGE_BYTES_MAX } from '../../engine/wire/limits.ts'
import { SOCKET_PATH } from '../../engine/wire/places.ts'
import { TestDisk } from '../server/support/a-disk.ts'
import { aPlan, aRoster, rosterAtDoor } from '../server/support/a-roster.ts'
import { aServer, type TestServer } from '../server/support/a-server.ts'
import { expectSameAfterRestart } from '../server/support/after-restart.ts'
import {
  aStudent,
  aTeacher,
  connect,
  mustAsk,
  type Student,
  sendEverybodyHome,
  signIn,
  startRound,
  type Teacher,
} from '../server/support/people.ts'
import { HELLO, RawPage } from './support/raw-page.ts'

const SEED = 20_261_125
const MUTATIONS_PER_MESSAGE = 14
const SPEAKERS = ['nobody', 'session', 'student', 'viewer', 'teacher'] as const
type Speaker = (typeof SPEAKERS)[number]

/** Values that programs stumble over, as JSON. */
const NASTY = [
  'null',
  'true',
  '""',
  '"\\u0000"',
  '"\\ud800"',
  '"\\u202e\\u200d\\ufeff"',
  '"__proto__"',
  '"constructor"',
  '"toString"',
  '0',
  '-0',
  '-1',
  '1e308',
  '1e400',
  '9007199254740993',
  '0.1',
  '"0"',
  '[]',
  '[[]]',
  '{}',
  '{"__proto__":{"ok":true}}',
  '{"constructor":{"prototype":{"x":1}}}',
  '{"toJSON":1}',
  '{"length":1000000000}',
  '{"_placeholder":true,"num":0}',
  `"${'x'.repeat(3_000)}"`,
  `"${'ﷺ'.repeat(60)}"`,
  `${'['.repeat(900)}${']'.repeat(900)}`,
  `${'{"a":'.repeat(400)}1${'}'.repeat(400)}`,
  `[${'0,'.repeat(1_000)}0]`,
  `[${'"R",'.repeat(64)}"R"]`,
  '["R","U\'","take-back"]',
  '["Q"]',
  '{"valueOf":null,"then":{}}',
] // prettier-ignore

let disk: TestDisk
let server: TestServer
let session: string
let planId: string
let rosterId: string
let klass: { teacher: Teacher; ada: Student; bo: Student; roundId: string }
const uncaught: unknown[] = []
const note = (fault: unknown) => uncaught.push(fault)

beforeAll(async () => {
  process.on('uncaughtException', note)
  process.on('unhandledRejection', note)
  disk = new TestDisk()
  server = await aServer({ wrapRecord: disk.wrap, unlimited: true })
  session = await signIn(server)
})
afterAll(async () => {
  sendEverybodyHome()
  await server.end()
  process.off('uncaughtException', note)
  process.off('unhandledRejection', note)
})
afterEach(() => {
  sendEverybodyHome()
  expect(uncaught).toEqual([])
})

async function aRunningClass(): Promise<typeof klass> {
  const teacher = await aTeacher(server, { timeLimitMs: null }, session)
  const [ada, bo] = [await aStudent(server, teacher.code, 'Ada'), await aStudent(server, teacher.code, 'Bo')]
  const roundId = await startRound(server, teacher)
  await ada.turn(roundId, 0, ['R', 'U'])
  rosterId = await rosterAtDoor(teacher, ['Di'])
  await mustAsk(teacher.client, 'room:entry', {
    roomId: teacher.roomId,
    entry: { names: 'typed', rosterId: null, approve: false },
  })
  planId = (await mustAsk(teacher.client, 'plan:keep', { planId: null, plan: aPlan({}, {}) as never })).planId
  return { teacher, ada, bo, roundId }
}

/** A page of this kind, and the payloads that it could honestly send. */
async function aPage(speaker: Speaker): Promise<RawPage> {
  const needsCookie = speaker === 'session' || speaker === 'teacher'
  const page = await RawPage.open(server.url, needsCookie ? { cookie: session } : {})
  if (speaker === 'student') await page.ask('seat:resume', JSON.stringify({ token: klass.bo.token }))
  if (speaker === 'viewer') await page.ask('viewer:enter', JSON.stringify({ key: klass.teacher.viewerKey }))
  if (speaker === 'teacher') await page.ask('desk:enter', '{}')
  return page
}

function honest(name: MessageName): Record<string, unknown> {
  const { teacher, ada, roundId } = klass
  const { roomId } = teacher
  const values: Record<string, unknown> = {
    code: teacher.code,
    name: 'Cy',
    token: ada.token,
    key: teacher.viewerKey,
    roomId,
    roundId,
    seatId: ada.view().me.seatId,
    tryNumber: 1,
    from: 0,
    steps: ['R', "U'"],
    wanted: true,
    shown: true,
    locked: false,
    seated: false,
    number: 2,
    addedMs: 60_000,
    settings: { ...teacher.view().settings, cases: null },
    pupilId: 'pupil-ada',
    moves: true,
    kept: true,
    written: false,
    ready: true,
    entry: { names: 'typed', rosterId: null, approve: false },
    plan: aPlan({}, {}),
    planId,
    roster: aRoster(['Ada', 'Bo']),
    rosterId,
    rounds: [{ ...teacher.view().settings, cases: null }],
    deadlineMs: Date.now() + 86_400_000,
    knockId: 'nobody',
    letIn: true,
    to: 'all',
    nudge: { kind: 'point', piece: 'UF' },
    at: name === 'room:plan-at' ? 1 : { at: 1, chosen: 0, pointer: 'DFR' },
  }
  if (name === 'show:whole') {
    const start = teacher.view().round?.start
    values.shown = { kind: 'cube', title: 'Look', start, baseColour: 'white', turns: ['R', "U'"] }
  }
  const honestly = Object.fromEntries(Object.keys(FROM_BROWSER[name].shape).map((key) => [key, values[key]]))
  for (const [key, value] of Object.entries(honestly)) if (value === undefined) throw new Error(`${name} has ${key}`)
  return honestly
}

/** Something wrong in a place further in: one field of one of the objects or lists inside. */
function wrongInside(honestly: Record<string, unknown>, any: fc.Arbitrary<string>): fc.Arbitrary<string> | null {
  const places: (string | number)[][] = []
  const walk = (value: unknown, place: (string | number)[]) => {
    if (typeof value !== 'object' || value === null) return
    for (const [key, each] of Object.entries(value)) {
      if (place.length > 0) places.push([...place, Array.isArray(value) ? Number(key) : key])
      walk(each, [...place, Array.isArray(value) ? Number(key) : key])
    }
  }
  walk(honestly, [])
  if (places.length === 0) return null
  const MARK = 'replaced-here'
  return fc.tuple(fc.constantFrom(...places), any).map(([place, wrong]) => {
    const copy = structuredClone(honestly)
    let inner = copy as Record<string | number, unknown>
    for (const key of place.slice(0, -1)) inner = inner[key] as typeof inner
    inner[place[place.length - 1]] = MARK
    return JSON.stringify(copy).replace(`"${MARK}"`, () => wrong)
  })
}

/** The honest payload with something wrong in it, as JSON text. */
function mutated(honestly: Record<string, unknown>): fc.Arbitrary<string> {
  const text = (value: unknown) => JSON.stringify(value)
  const nasty = fc.constantFrom(...NASTY)
  const any = fc.oneof({ weight: 3, arbitrary: nasty }, { weight: 1, arbitrary: fc.json({ maxDepth: 3 }) })
  const fields = (changed: Record<string, string>) =>
    `{${Object.entries({
      ...Object.fromEntries(Object.entries(honestly).map(([key, value]) => [key, text(value)])),
      ...changed,
    })
      .map(([key, value]) => `${text(key)}:${value}`)
      .join(',')}}`
  const keys = Object.keys(honestly)
  const oneWrong = fc
    .tuple(fc.constantFrom(...(keys.length > 0 ? keys : ['x'])), any)
    .map(([key, value]) => fields({ [key]: value }))
  const oneMore = fc
    .tuple(fc.constantFrom('x', '__proto__', 'constructor', 'seatId', 'atMs', 'late', 'momentMs'), any)
    .map(([key, value]) => `{${text(key)}:${value}${fields({}) === '{}' ? '' : `,${fields({}).slice(1, -1)}`}}`)
  const oneLess = fc.constantFrom(...(keys.length > 0 ? keys : ['x'])).map((key) => {
    const { [key]: _left, ...rest } = honestly
    return text(rest)
  })
  const several = fc.tuple(any, any).map(([a, b]) => `${a},${b}`)
  const inside = wrongInside(honestly, any)
  return fc.oneof(
    oneWrong,
    oneWrong,
    ...(inside === null ? [oneWrong] : [inside, inside]),
    oneMore,
    oneLess,
    any,
    several,
    fc.constant(''),
  )
}

const stored = () => disk.asked.filter((entry) => entry.kind !== 'alive').length

describe.each(SPEAKERS)('messages of a %s', (speaker) => {
  test('[WI10] whatever is wrong in it, every message is answered, and what is refused changes nothing', async () => {
    klass = await aRunningClass()
    let nRefused = 0
    for (const [index, name] of (Object.keys(FROM_BROWSER) as MessageName[]).entries()) {
      const page = await aPage(speaker)
      const payloads = fc.sample(mutated(honest(name)), { seed: SEED + index, numRuns: MUTATIONS_PER_MESSAGE })
      for (const payload of payloads.filter((each) => each.length < MESSAGE_BYTES_MAX)) {
        const nBefore = stored()
        const answer = await page.ask(name, payload)
        if (answer.ok) continue
        nRefused++
        expect([name, payload, answer.error?.code]).not.toEqual([name, payload, 'server/fault'])
        expect(answer.error?.code).toMatch(/^[a-z]+\/[a-z-]+$/)
        expect([name, payload, stored()]).toEqual([name, payload, nBefore])
      }
      page.socket.close()
    }
    expect(nRefused).toBeGreaterThan(150)
    await expectSameAfterRestart(server, klass.teacher, [klass.ada.token])
  })
})

/** Frames that no page sends. */
const FRAMES: readonly (string | Uint8Array)[] = [
  '',
  '0',
  '1',
  '2',
  '2probe',
  '3',
  '3probe',
  '4',
  '5',
  '6',
  '7',
  '9',
  'x',
  'b',
  'bAAAA',
  'b!!!!',
  '\u0000',
  '40',
  '40{',
  '40"x"',
  '40[]',
  '40null',
  '40/other,{}',
  '40/,{}',
  '41',
  '41/other,',
  '42',
  '42[]',
  '42[1]',
  '42[null]',
  '42[{}]',
  '42["a"',
  '42{"a":1}',
  '42"x"',
  '42null',
  '420[]',
  '42/other,["clock:ask",{}]',
  '42-1["clock:ask",{}]',
  '4299999999999999999999["clock:ask",{}]',
  '42["disconnect"]',
  '42["connect"]',
  '42["connect_error"]',
  '42["disconnecting"]',
  '42["error",{}]',
  '42["newListener",{}]',
  '42["removeListener"]',
  '42["__proto__",{}]',
  '42["constructor",{}]',
  '42["clock:ask"]',
  '42["turns:send",null]',
  '43',
  '43[]',
  '430[1]',
  '43999[]',
  '43-1[]',
  '44',
  '44{"message":"x"}',
  '45',
  '45-["a"]',
  '45-1-["a"]',
  '450-["a"]',
  '451-["clock:ask",{"_placeholder":true,"num":0}]',
  '451-["clock:ask",{"_placeholder":true,"num":-1}]',
  '451-["clock:ask",{"_placeholder":true,"num":"__proto__"}]',
  '452-["a",{"_placeholder":true,"num":0},{"_placeholder":true,"num":0}]',
  '4599999999999-["a"]',
  '451-5["seat:join",{"_placeholder":true,"num":0}]',
  '46',
  '461-0[{"_placeholder":true,"num":0}]',
  '46-0[]',
  '47',
  '48',
  '4:',
  `42["clock:ask",${'['.repeat(1_500)}${']'.repeat(1_500)}]`,
  `451-["clock:ask",${'['.repeat(1_500)}{"_placeholder":true,"num":0}${']'.repeat(1_500)}]`,
  `40${'['.repeat(2_000)}`,
  `42["${'x'.repeat(4_000)}",{}]`,
  new Uint8Array(0),
  new Uint8Array([0]),
  new Uint8Array([4, 52, 50]),
  new Uint8Array(4_000),
] // prettier-ignore

describe('frames that no page sends', () => {
  /** Somebody else, who must not notice anything. */
  async function expectOthersToGoOn(bystander: RawPage): Promise<void> {
    expect(bystander.isOpen).toBe(true)
    expect(await bystander.ask('clock:ask', '{}')).toMatchObject({ ok: true })
    const newcomer = connect(server)
    expect(await mustAsk(newcomer, 'clock:ask', {})).toMatchObject({ serverMs: expect.any(Number) })
    newcomer.disconnect()
  }

  test.each([
    ['before hello', null],
    ['after hello', HELLO],
  ])('[WI10] one at a time, %s', async (_when, hello) => {
    klass = await aRunningClass()
    const bystander = await aPage('student')
    const nBefore = stored()
    for (const frame of FRAMES) {
      const page = await RawPage.open(server.url, { hello })
      page.send(frame)
      page.send(new Uint8Array([1, 2, 3]))
      page.send(frame)
      if (page.isOpen) page.send('42["clock:ask",{}]')
      await new Promise((resolve) => setTimeout(resolve, 3))
      page.socket.terminate()
    }
    expect(stored()).toBe(nBefore)
    await expectOthersToGoOn(bystander)
  })

  test('[WI10] random bytes, cut packets and frames that are no WebSocket frames', async () => {
    const bystander = await aPage('student')
    const sample = fc.sample(
      fc.oneof(
        fc.uint8Array({ maxLength: 200 }),
        fc
          .constantFrom(...FRAMES.filter((frame) => typeof frame === 'string'))
          .chain((frame) => fc.integer({ min: 0, max: frame.length }).map((at) => frame.slice(0, at))),
      ),
      { seed: SEED, numRuns: 200 },
    )
    for (const frame of sample) {
      const page = await RawPage.open(server.url)
      page.send(frame)
      // Below the frames: what is written here is not masked, not framed, or never ends.
      const { _socket: tcp } = page.socket as unknown as {
        _socket: { write(bytes: Uint8Array): void; destroy(): void }
      }
      tcp.write(typeof frame === 'string' ? Buffer.from(frame) : frame)
      tcp.destroy()
    }
    await expectOthersToGoOn(bystander)
  })

  test.each([
    ['greetings', HELLO, 3_000],
    ['packets that wait for an attachment', '451-["clock:ask",{"_placeholder":true,"num":0}]', 3_000],
    ['acknowledgements of nothing', '430[1]', 5_000],
    ['messages without an answer', '42["clock:ask",{}]', 5_000],
    ['pings', '2', 5_000],
    ['other places', '40/other,{}', 3_000],
  ])('[WI10] a flood of %s', async (_what, frame, times) => {
    const bystander = await aPage('student')
    const page = await RawPage.open(server.url, { hello: frame === HELLO ? null : HELLO })
    for (let sent = 0; sent < times && page.isOpen; sent++) page.send(frame)
    await expectOthersToGoOn(bystander)
    page.socket.terminate()
  })

  test('[WI11] a page that says hello many times before it is answered is hung up on', async () => {
    const page = await RawPage.open(server.url, { hello: null })
    for (let sent = 0; sent < 200; sent++) page.send(HELLO)
    await page.closed
  })

  test('[WI10] polling with bodies that no page sends', async () => {
    const bystander = await aPage('student')
    const poll = `${server.url}${SOCKET_PATH}/?EIO=4&transport=polling`
    const opened = await (await fetch(poll)).text()
    const { sid } = JSON.parse(opened.slice(1)) as { sid: string }
    const bodies = [
      '',
      '\u001e',
      '\u001e'.repeat(4_000),
      HELLO,
      '4',
      `${HELLO}\u001e${HELLO}`,
      'bAAAA',
      '6',
      '1',
      'x'.repeat(10_000),
    ]
    for (const body of bodies) {
      for (const type of [
        'text/plain;charset=UTF-8',
        'application/octet-stream',
        'application/x-www-form-urlencoded',
      ]) {
        const answer = await fetch(`${poll}&sid=${sid}`, { method: 'POST', body, headers: { 'content-type': type } })
        expect(answer.status).toBeLessThan(500)
      }
    }
    for (const method of ['PUT', 'DELETE', 'OPTIONS']) {
      expect((await fetch(`${poll}&sid=${sid}`, { method })).status).toBeLessThan(500)
    }
    await expectOthersToGoOn(bystander)
  })

  test('[WI10] connections that break off in the middle of a handshake', async () => {
    const bystander = await aPage('student')
    const { port } = new URL(server.url)
    const head = `GET ${SOCKET_PATH}/?EIO=4&transport=websocket HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n`
    const endings = [
      '',
      '\r\n',
      'Sec-WebSocket-Version: 13\r\n\r\n',
      'Sec-WebSocket-Version: 99\r\nSec-WebSocket-Key: x\r\n\r\n',
      `Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: ${randomBytes(16).toString('base64')}\r\n\r\n\u0081`,
    ]
    for (let time = 0; time < 40; time++) {
      const tcp = connectTcp(Number(port), '127.0.0.1')
      tcp.on('error', () => undefined)
      tcp.write(head + endings[time % endings.length])
      await new Promise((resolve) => setTimeout(resolve, 3))
      tcp.destroy()
    }
    await expectOthersToGoOn(bystander)
  })
})
