/** What a connection is, and what it stops being when it becomes something else. */

import { boardGroup, type Connection, deskGroup, homeGroup, teacherGroup, type Who } from './connection.ts'
import type { LiveRoom } from './live-room.ts'

/** Makes a connection what it now is. The seat that it held is empty, and what it heard before it hears no more. */
export function become(connection: Connection, who: Who): void {
  leaveSeat(connection)
  leaveDoor(connection)
  for (const group of groupsOf(connection.data.who)) void connection.leave(group)
  connection.data.who = who
  for (const group of groupsOf(who)) void connection.join(group)
}

/** A connection ended or becomes something else. A stale one changes nothing: the seat has long been somebody else's. */
export function leaveSeat(connection: Connection): void {
  const { who } = connection.data
  if (who.role !== 'student') return
  const seat = who.room.seats.get(who.seatId)
  if (seat === undefined || seat.connection !== connection.id) return
  seat.connection = null
  who.room.changes.views = true
}

/** Whoever waits at the door of a room is still nobody there. */
export function waitAtDoor(connection: Connection, room: LiveRoom): void {
  if (connection.data.waitsAt !== room) leaveDoor(connection)
  connection.data.waitsAt = room
}

/** Waits no longer: seated, gone, or somewhere else. */
export function leaveDoor(connection: Connection): void {
  connection.data.waitsAt?.entrance.leaveDoor(connection.id)
  connection.data.waitsAt = null
}

function groupsOf(who: Who): string[] {
  if (who.role === 'viewer') return [boardGroup(who.room)]
  if (who.role !== 'teacher') return []
  const teacher = teacherGroup(who.teacherId)
  return [teacher, who.watching === null ? homeGroup(who.teacherId) : deskGroup(who.watching)]
}
