/** The one connection of this page. Only the files of this folder touch it. */

import { io, type Socket } from 'socket.io-client'
import type { Answer, Answers, BrowserEvents, MessageName, Sent } from '../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../engine/wire/from-server.ts'
import { SOCKET_PATH } from '../../engine/wire/places.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { PROTOCOL_VERSION } from '../../engine/wire/version.ts'

/** After this an answer is not waited for any longer; whoever asked asks again. Longer than a slow server's worst second. */
const ANSWER_MS_MAX = 8_000
/** When the server says that it is going away, it is asked again after this. */
const BACK_SOON_MS = 1_000

export const socket: Socket<ServerEvents, BrowserEvents> = io({
  path: SOCKET_PATH,
  autoConnect: false,
  // A socket first; networks that block those get long polling.
  transports: ['websocket', 'polling'],
  tryAllTransports: true,
  reconnectionDelay: 300,
  reconnectionDelayMax: 3_000,
  randomizationFactor: 0.5,
  auth: { protocol: PROTOCOL_VERSION },
})

/** `emitWithAck` with the answer of each message: Socket.IO's own type loses which belongs to which. */
type Asking = {
  emitWithAck<Name extends MessageName>(name: Name, message: Sent<Name>): Promise<Answer<Answers[Name]>>
}

const NO_ANSWER = { ok: false, error: { code: 'server/going-away' } } as const

/**
 * Sends a message and waits for its answer. No answer is an answer too: `server/going-away`, and nothing is known of what
 * became of it. Without a connection nothing is sent, not even later: it would arrive before the page has said who it is.
 */
export async function ask<Name extends MessageName>(name: Name, message: Sent<Name>): Promise<Answer<Answers[Name]>> {
  if (!socket.connected) return NO_ANSWER
  try {
    return await (socket.timeout(ANSWER_MS_MAX) as unknown as Asking).emitWithAck(name, message)
  } catch {
    return NO_ANSWER
  }
}

/** Connects, unless the page is connected already. @returns why there is no connection after a while, or null */
export function connect(): Promise<Refusal | null> {
  if (socket.connected) return Promise.resolve(null)
  return new Promise((resolve) => {
    const timer = setTimeout(() => settle(NO_ANSWER.error), ANSWER_MS_MAX)
    const onConnect = () => settle(null)
    const onRefused = (fault: Error) => {
      const refusal = refusalIn(fault)
      // Any other fault may pass; the socket goes on trying.
      if (refusal?.code === 'wire/out-of-date') settle(refusal)
    }
    function settle(outcome: Refusal | null): void {
      clearTimeout(timer)
      socket.off('connect', onConnect)
      socket.off('connect_error', onRefused)
      resolve(outcome)
    }
    socket.on('connect', onConnect)
    socket.on('connect_error', onRefused)
    // Already on its way: said hello to twice on one line, the server would hang up.
    if (!socket.active) socket.connect()
  })
}

type Listeners = {
  /** Connected, for the first time or again: say who you are. */
  onConnected: () => void
  onLost: () => void
  /** The page speaks another version than the server. */
  onOutOfDate: () => void
}

/** Tells about the connection. To be called once by the store that this page uses. */
export function followConnection({ onConnected, onLost, onOutOfDate }: Listeners): void {
  socket.on('connect', onConnected)
  socket.on('disconnect', onLost)
  socket.on('connect_error', (fault) => {
    if (refusalIn(fault)?.code === 'wire/out-of-date') {
      onOutOfDate()
      return
    }
    onLost()
    // A refused handshake is not tried again by itself.
    if (!socket.active) setTimeout(() => socket.connect(), BACK_SOON_MS)
  })
}

/** What the server said when it refused the handshake; nothing when it was never reached. */
function refusalIn(fault: Error): Refusal | undefined {
  return (fault as Error & { data?: Refusal }).data
}
