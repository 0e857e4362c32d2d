/** Builds the whole server from its parts and returns what can be started and stopped. Knows no environment and no port. */

import { randomBytes } from 'node:crypto'
import { createServer, type Server as HttpServer } from 'node:http'
import express from 'express'
import { nanoid } from 'nanoid'
import type { Logger } from 'pino'
import { Server } from 'socket.io'
import { chachaSource } from '../engine/chance/chacha-source.ts'
import { helloSchema } from '../engine/wire/hello.ts'
import { SOCKET_PATH } from '../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../engine/wire/version.ts'
import { DeskLink, serveDeskSession, teacherOfCookies } from './http/desk-session.ts'
import { setHeaders, setLiveHeaders } from './http/headers.ts'
import { serveHealth } from './http/health.ts'
import { refuseBrokenRequests, serveLastWord } from './http/last-word.ts'
import { OpenSockets } from './http/open-sockets.ts'
import { isScriptPolling, makeIsOwnOrigin } from './http/own-origin.ts'
import { servePages } from './http/pages.ts'
import { leaveDoor, leaveSeat } from './live/change-role.ts'
import { type ConnectionData, hangUp, type LiveServer } from './live/connection.ts'
import { deskMessages } from './live/desk-messages.ts'
import { startForgettingNames } from './live/forget-names.ts'
import { listenToConnection, TRANSPORT_BYTES_MAX } from './live/gateway.ts'
import { lessonMessages } from './live/lesson-messages.ts'
import { type DelayTimes, startMeasuringDelays } from './live/measure-delays.ts'
import { MessageLimits } from './live/message-limits.ts'
import type { LiveParts } from './live/parts.ts'
import { PretendClasses } from './live/pretend/pretend-classes.ts'
import { Rooms } from './live/rooms.ts'
import { prepareGuides } from './live/round-guide.ts'
import { seatMessages } from './live/seat-messages.ts'
import { shelfMessages } from './live/shelf-messages.ts'
import { Standstills, type StandstillWatch } from './live/standstill.ts'
import { TeacherShelf } from './live/teacher-shelf.ts'
import { startTicker } from './live/ticker.ts'
import { viewerMessages } from './live/viewer-messages.ts'
import type { SearchPool } from './search/search-pool.ts'
import { newSecret, sameSecret } from './secrets.ts'
import type { DurableRecord } from './store/record.ts'

/** A connection that has neither come in nor entered the desk is let go after this; its page connects again when needed. */
const NOBODY_MS_MAX = 60_000
/** Who has not hung up by then does not read any more. */
const GOODBYE_MS_MAX = 1_500
const ID_LENGTH = 16

export type AppParts = {
  record: DurableRecord
  search: Pick<SearchPool, 'shortest' | 'setup'>
  log: Logger
  nowMs: () => number
  standstill: StandstillWatch
  webDir: string
  publicUrl: URL | null
  addresses: () => readonly string[]
  /** Tests that say more than fingers can bring their own. */
  limits?: MessageLimits
  /** How often pages are asked how far away they are, and how long they may take; tests ask more often. */
  delays?: DelayTimes
}

export type App = {
  http: HttpServer
  link: DeskLink
  /** To be called before the server listens: rooms are read back, so that nobody who comes at once finds a closed door. */
  restore(): Promise<void>
  /** To be called once the server listens. `ownUrl`: where it reaches itself. */
  begin(ownUrl: string): void
  /** Tells every page, commits what is under way, lets go. */
  stop(): Promise<void>
}

export function createApp(parts: AppParts): App {
  const { record, log, nowMs } = parts
  const isSecure = parts.publicUrl?.protocol === 'https:'
  const isOwnOrigin = makeIsOwnOrigin(parts.publicUrl)
  const link = new DeskLink()
  let phase: 'starting' | 'serving' | 'stopping' = 'starting'

  const web = express()
  if (isSecure) web.set('trust proxy', 1)
  setHeaders(web, isSecure)
  serveHealth(web, () => phase === 'serving' && record.saving)
  serveDeskSession(web, { link, record, nowMs, isSecure, isOwnOrigin })
  servePages(web, parts.webDir)
  serveLastWord(web, log)

  const http = createServer(web)
  const sockets = new OpenSockets(http)
  refuseBrokenRequests(http)
  const live: LiveServer = new Server(http, {
    path: SOCKET_PATH,
    serveClient: false,
    maxHttpBufferSize: TRANSPORT_BYTES_MAX,
    // Our own resume does the work; see DEVELOPERS.md, "Truth and order".
    connectionStateRecovery: undefined as never,
    pingInterval: 10_000,
    pingTimeout: 15_000,
    connectTimeout: 10_000,
    allowRequest: (request, decide) => {
      decide(null, !isScriptPolling(request.url) && isOwnOrigin(request.headers.origin, request.headers.host))
    },
  })
  setLiveHeaders(http, SOCKET_PATH)
  const newId = () => nanoid(ID_LENGTH)
  const shelf = new TeacherShelf({ record, nowMs, newId })
  const liveParts: LiveParts = {
    nowMs,
    record,
    search: parts.search,
    shelf,
    standstill: parts.standstill,
    log,
    newRandom: () => chachaSource(randomBytes(32)),
    newId,
    addresses: parts.addresses,
  }
  const pretendKey = newSecret()
  const rooms = new Rooms(liveParts)
  const standstills = new Standstills(live, rooms, liveParts)
  const limits = parts.limits ?? new MessageLimits()
  const pretend = new PretendClasses(liveParts, pretendKey)
  const handlers = {
    ...viewerMessages(rooms, liveParts),
    ...seatMessages(live, rooms, limits),
    ...deskMessages(live, rooms, pretend, liveParts),
    ...lessonMessages(rooms, liveParts),
    ...shelfMessages(live, liveParts),
  }

  /** Transports that have said hello. One that says it again before it is answered would be given a connection each time. */
  const greeted = new WeakSet<object>()
  live.use((connection, next) => {
    const refuse = (data: object) => next(Object.assign(new Error('refused'), { data }))
    if (greeted.has(connection.conn)) return hangUp(connection)
    greeted.add(connection.conn)
    if (phase !== 'serving') return refuse({ code: 'server/going-away' })
    const hello = helloSchema.safeParse(connection.handshake.auth)
    if (!hello.success) return refuse({ code: 'wire/out-of-date', server: PROTOCOL_VERSION })
    const { pretendKey: given } = connection.handshake.auth as { pretendKey?: unknown }
    teacherOfCookies(connection.handshake.headers.cookie, record, nowMs()).then(
      (teacherId) => {
        const isPretend = typeof given === 'string' && sameSecret(given, pretendKey)
        const data: ConnectionData = { who: { role: 'nobody' }, teacherId, isPretend, waitsAt: null }
        Object.assign(connection.data, data)
        next()
      },
      (fault: unknown) => {
        log.error({ fault: String(fault) }, 'a session could not be read')
        refuse({ code: 'server/fault' })
      },
    )
  })

  live.on('connection', (connection) => {
    listenToConnection(connection, { handlers, limits, log, beforeEach: () => standstills.lookBeforeMessage() })
    const nobody = setTimeout(() => {
      const { who, waitsAt } = connection.data
      if (who.role === 'nobody' && waitsAt === null) connection.disconnect(true)
    }, NOBODY_MS_MAX)
    connection.on('disconnect', () => {
      clearTimeout(nobody)
      leaveSeat(connection)
      leaveDoor(connection)
    })
  })

  let stopTicker = () => {}
  let stopForgetting = () => {}
  let stopMeasuring = () => {}
  return {
    http,
    link,
    async restore() {
      await prepareGuides(liveParts)
      await shelf.restore()
      await rooms.restore()
      phase = 'serving'
    },
    begin(ownUrl) {
      pretend.url = ownUrl
      stopTicker = startTicker(live, rooms, standstills, liveParts)
      stopForgetting = startForgettingNames(liveParts)
      stopMeasuring = startMeasuringDelays(live, rooms, parts.delays)
      for (const room of rooms.all()) {
        pretend.comeBack(room).catch((fault) => log.warn({ fault: String(fault) }, 'a pretend class did not come back'))
      }
    },
    async stop() {
      phase = 'stopping'
      live.emit('server:going-away', {})
      stopTicker()
      stopForgetting()
      stopMeasuring()
      pretend.stop()
      // Pages see the transport close, not a goodbye, so they come back by themselves.
      if (http.listening) await sockets.end(live.close(), GOODBYE_MS_MAX)
      await record.close()
    },
  }
}
