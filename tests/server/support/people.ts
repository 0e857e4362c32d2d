/** People of a test, on real Socket.IO clients: a teacher, students, a viewer. */

import { randomBytes } from 'node:crypto'
import { io, type Socket } from 'socket.io-client'
import type { RoomId, RoundId } from '../../../engine/contest/ids.ts'
import type { RoundSettings } from '../../../engine/contest/round-settings.ts'
import type { StepName } from '../../../engine/contest/steps.ts'
import type { Answer, Answers, BrowserEvents, MessageName, Sent } from '../../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../../engine/wire/from-server.ts'
import { DESK_ENTER_PATH, SOCKET_PATH } from '../../../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../../../engine/wire/version.ts'
import type { BenchView, BoardView, DeskView } from '../../../engine/wire/views.ts'
import type { TestServer } from './a-server.ts'

export type Client = Socket<ServerEvents, BrowserEvents>

const open = new Set<Client>()

export function connect(
  server: { url: string },
  wishes: { cookie?: string; auth?: object; origin?: string } = {},
): Client {
  const headers: Record<string, string> = {}
  if (wishes.cookie !== undefined) headers.cookie = wishes.cookie
  if (wishes.origin !== undefined) headers.origin = wishes.origin
  const client: Client = io(server.url, {
    path: SOCKET_PATH,
    transports: ['websocket'],
    forceNew: true,
    reconnectionDelay: 50,
    reconnectionDelayMax: 200,
    auth: wishes.auth ?? { protocol: PROTOCOL_VERSION },
    extraHeaders: headers,
  })
  open.add(client)
  return client
}

/** To be called after each test. */
export function sendEverybodyHome(): void {
  for (const client of open) client.disconnect()
  open.clear()
}

export async function ask<Name extends MessageName>(
  client: Client,
  name: Name,
  message: Sent<Name>,
): Promise<Answer<Answers[Name]>> {
  return (await untyped(client).timeout(10_000).emitWithAck(name, message)) as Answer<Answers[Name]>
}

/** For messages that the types would not let through. */
export function untyped(client: Client): Socket {
  return client as unknown as Socket
}

/** Asks, and fails the test when refused. */
export async function mustAsk<Name extends MessageName>(
  client: Client,
  name: Name,
  message: Sent<Name>,
): Promise<Answers[Name]> {
  const answer = await ask(client, name, message)
  if (!answer.ok) throw new Error(`${name} was refused: ${JSON.stringify(answer.error)}`)
  return answer.value
}

export type Teacher = {
  client: Client
  cookie: string
  roomId: RoomId
  code: string
  viewerKey: string
  view: () => DeskView
  round: () => RoundId
}

/** A server in this process, or one in a process of its own. */
type Desk = { url: string; linkKey?: string; app?: TestServer['app'] }

/** Signs in with the one-time link. */
export async function signIn(server: Desk): Promise<string> {
  const response = await fetch(server.url + DESK_ENTER_PATH, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ key: server.linkKey ?? server.app?.link.key }),
  })
  const cookie = response.headers.get('set-cookie')
  if (cookie === null) throw new Error(`the desk link was refused: ${await response.text()}`)
  return cookie.split(';')[0]
}

/** A teacher at the desk of a new room. `session`: of a teacher who has signed in already. */
export async function aTeacher(
  server: Desk,
  settings: Partial<RoundSettings> = {},
  session?: string,
): Promise<Teacher> {
  const cookie = session ?? (await signIn(server))
  const client = connect(server, { cookie })
  await mustAsk(client, 'desk:enter', {})
  const { desk } = await mustAsk(client, 'room:open', {})
  const seen = followDesk(client, desk)
  const roomId = desk.room.id
  if (Object.keys(settings).length > 0) {
    const { cases, ...others } = { ...desk.settings, ...settings }
    await mustAsk(client, 'room:set', { roomId, settings: { ...others, cases: cases === null ? null : [...cases] } })
  }
  const round = () => {
    const id = seen().round?.id
    if (id === undefined) throw new Error('no round yet')
    return id
  }
  return { client, cookie, roomId, code: desk.room.code, viewerKey: desk.room.viewerKey, view: seen, round }
}

function followDesk(client: Client, first: DeskView): () => DeskView {
  let view = first
  client.on('desk', (next) => {
    view = next
  })
  client.on('desk:tick', (tick) => {
    const changed = new Map(tick.lanes.map((lane) => [lane.seatId, lane]))
    const cells = new Map(tick.cells.map((cell) => [cell.seatId, cell]))
    view = {
      ...view,
      version: tick.version,
      lanes: view.lanes.map((lane) => changed.get(lane.seatId) ?? lane),
      cells: view.cells.map((cell) => cells.get(cell.seatId) ?? cell),
    }
  })
  return () => view
}

export type Student = {
  client: Client
  token: string
  view: () => BenchView
  /** Sends turns of a try as a page would. */
  turn: (
    roundId: RoundId,
    from: number,
    steps: StepName[],
    tryNumber?: number,
  ) => Promise<Answer<Answers['turns:send']>>
}

export async function aStudent(server: { url: string }, code: string, name: string): Promise<Student> {
  const client = connect(server)
  const joined = await mustAsk(client, 'seat:join', { code, name })
  if (joined.kind !== 'in') throw new Error('the door is open')
  return student(client, joined.token, joined.bench)
}

export async function aReturningStudent(server: { url: string }, token: string): Promise<Student> {
  const client = connect(server)
  const { bench } = await mustAsk(client, 'seat:resume', { token })
  return student(client, token, bench)
}

/** How somebody comes to a door: see the message. */
type DoorWish = Omit<Sent<'seat:join'>, 'code'>

export type Knocker = {
  client: Client
  wish: DoorWish
  /** What the door said. */
  answer: Answer<Answers['seat:join']>
  /** What the teacher said since, in order. */
  heard: readonly ('let-in' | 'turned-away' | 'gone')[]
  /** Once seated, by the door or by the teacher. */
  seated: () => Student | null
}

/** Comes to the door of a room with a secret of its own, and waits there if it has to. */
export async function atTheDoor(
  server: { url: string },
  code: string,
  wish: DoorWish,
  client = connect(server),
): Promise<Knocker> {
  const own = { token: newOwnToken(), ...wish }
  const heard: Knocker['heard'][number][] = []
  let seated: Student | null = null
  client.on('seat:let-in', ({ token, bench }) => {
    heard.push('let-in')
    seated = student(client, token, bench)
  })
  client.on('seat:turned-away', () => heard.push('turned-away'))
  client.on('seat:gone', () => heard.push('gone'))
  const answer = await ask(client, 'seat:join', { code, ...own })
  if (answer.ok && answer.value.kind === 'in') seated = student(client, answer.value.token, answer.value.bench)
  return { client, wish: own, answer, heard, seated: () => seated }
}

/** As a page makes the secret of its seat. */
function newOwnToken(): string {
  return randomBytes(32).toString('base64url')
}

/** A projector in front of a room; its view is followed. */
export async function aBoard(server: { url: string }, { viewerKey }: Teacher): Promise<() => BoardView> {
  const client = connect(server)
  let { board } = await mustAsk(client, 'viewer:enter', { key: viewerKey })
  client.on('board', (next) => {
    board = next
  })
  client.on('tick', (tick) => {
    const changed = new Map(tick.lanes.map((lane) => [lane.seatId, lane]))
    board = { ...board, version: tick.version, lanes: board.lanes.map((lane) => changed.get(lane.seatId) ?? lane) }
  })
  client.on('shown:at', ({ version, at }) => {
    if (board.showing?.version === version) board = { ...board, showing: { ...board.showing, at } }
  })
  return () => board
}

function student(client: Client, token: string, first: BenchView): Student {
  let view = first
  client.on('bench', (next) => {
    view = next
  })
  client.on('shown:at', ({ version, at }) => {
    if (view.showing?.version === version) view = { ...view, showing: { ...view.showing, at } }
  })
  return {
    client,
    token,
    view: () => view,
    turn: (roundId, from, steps, tryNumber = 1) => ask(client, 'turns:send', { roundId, tryNumber, from, steps }),
  }
}

/** Waits until something is so; the test fails when it does not become so. */
export async function until<T>(what: string, look: () => T | null | undefined | false, withinMs = 10_000): Promise<T> {
  const endMs = Date.now() + withinMs
  for (;;) {
    const seen = look()
    if (seen) return seen
    if (Date.now() > endMs) throw new Error(`waited in vain until ${what}`)
    await new Promise((resolve) => setTimeout(resolve, 10))
  }
}

/** Starts the next round and moves the server's clock past the countdown. */
export async function startRound(server: TestServer, teacher: Teacher): Promise<RoundId> {
  const number = teacher.view().nRounds + 1
  const { roundId } = await mustAsk(teacher.client, 'round:start', { roomId: teacher.roomId, number })
  await until('the desk shows the round', () => teacher.view().round?.id === roundId)
  server.advance(3_000)
  return roundId
}
