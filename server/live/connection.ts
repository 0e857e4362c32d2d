/** One browser connection and what it is allowed to be. */

import type { Server, Socket } from 'socket.io'
import type { SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { BrowserEvents } from '../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../engine/wire/from-server.ts'
import type { LiveRoom } from './live-room.ts'

export type Who =
  | { role: 'nobody' }
  | { role: 'student'; room: LiveRoom; seatId: SeatId }
  | { role: 'viewer'; room: LiveRoom }
  | { role: 'teacher'; teacherId: TeacherId; watching: LiveRoom | null }

export type ConnectionData = {
  who: Who
  /** From the session cookie of the handshake; a right only once the page asks for the desk. */
  teacherId: TeacherId | null
  /** A simulated student of our own. */
  isPretend: boolean
  /** Since when the other end has not been reading; null while it reads. */
  laggingSinceMs: number | null
}

export type Connection = Socket<BrowserEvents, ServerEvents, Record<never, never>, ConnectionData>
export type LiveServer = Server<BrowserEvents, ServerEvents, Record<never, never>, ConnectionData>

/** Names of the groups that a room sends to. */
export const deskGroup = (room: LiveRoom) => `desk ${room.facts.id}`
export const homeGroup = (teacherId: TeacherId) => `home ${teacherId}`
export const boardGroup = (room: LiveRoom) => `board ${room.facts.id}`
