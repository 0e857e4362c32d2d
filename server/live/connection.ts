/** One browser connection and what it is allowed to be. */

import type { Server, Socket } from 'socket.io'
import type { SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { BrowserEvents } from '../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../engine/wire/from-server.ts'
import type { LiveRoom } from './live-room.ts'

export type Who =
  | { readonly role: 'nobody' }
  | { readonly role: 'student'; readonly room: LiveRoom; readonly seatId: SeatId }
  | { readonly role: 'viewer'; readonly room: LiveRoom }
  | { readonly role: 'teacher'; readonly teacherId: TeacherId; readonly watching: LiveRoom | null }

export type ConnectionData = {
  who: Who
  /** From the session cookie of the handshake; a right only once the page asks for the desk. */
  teacherId: TeacherId | null
  /** A simulated student of our own. */
  isPretend: boolean
  /** The room at whose door this page waits. */
  waitsAt: LiveRoom | null
}

export type Connection = Socket<BrowserEvents, ServerEvents, Record<never, never>, ConnectionData>
export type LiveServer = Server<BrowserEvents, ServerEvents, Record<never, never>, ConnectionData>

/** Names of the groups that a room sends to. */
export const deskGroup = (room: LiveRoom) => `desk ${room.facts.id}`
export const homeGroup = (teacherId: TeacherId) => `home ${teacherId}`
/** All desks of a teacher, whatever they watch. */
export const teacherGroup = (teacherId: TeacherId) => `teacher ${teacherId}`
export const boardGroup = (room: LiveRoom) => `board ${room.facts.id}`

/** Whether more than this waits for the other end to read. On a healthy connection nothing waits. */
export function hasWaiting(connection: Connection, most: { packets: number; bytes: number }): boolean {
  const { writeBuffer } = connection.conn as unknown as { writeBuffer: { data?: string | Buffer }[] }
  if (writeBuffer.length > most.packets) return true
  let bytes = 0
  for (const { data } of writeBuffer) bytes += data?.length ?? 0
  return bytes > most.bytes
}

/** Ends a connection whose other end does not read, and throws away what waits for it. A page comes back by itself. */
export function hangUp(connection: Connection): void {
  // Without `true` it would first wait until everything is read.
  connection.conn.close(true)
}
