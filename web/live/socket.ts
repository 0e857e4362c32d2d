/** The one connection of this page. Only the files of this folder touch it. */

import { io, type Socket } from 'socket.io-client'
import type { Answer, Answers, BrowserEvents, MessageName, Sent } from '../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../engine/wire/from-server.ts'
import { SOCKET_PATH } from '../../engine/wire/hello.ts'
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

/** Sends a message and waits for its answer. No answer is an answer too: `server/going-away`, and nothing is known of what became of it. */
export async function ask<Name extends MessageName>(name: Name, message: Sent<Name>): Promise<Answer<Answers[Name]>> {
  try {
    const emit = socket.timeout(ANSWER_MS_MAX).emitWithAck as unknown as (
      name: Name,
      message: Sent<Name>,
    ) => Promise<Answer<Answers[Name]>>
    return await emit.call(socket.timeout(ANSWER_MS_MAX), name, message)
  } catch {
    return { ok: false, error: { code: 'server/going-away' } }
  }
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
    const code = (fault as { data?: { code?: string } }).data?.code
    if (code === 'wire/out-of-date') {
      onOutOfDate()
      return
    }
    onLost()
    // A refused handshake is not tried again by itself.
    if (!socket.active) setTimeout(() => socket.connect(), BACK_SOON_MS)
  })
}
