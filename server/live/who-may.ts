/** Who may say what: the one table that the gateway enforces and the tests walk through. A message without a row does not compile. */

import type { MessageName } from '../../engine/wire/from-browser.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Connection } from './connection.ts'

/** `session`: anyone whose connection brought a teacher's session cookie. */
export type Speaker = 'anyone' | 'student' | 'viewer' | 'session' | 'teacher'

export const WHO_MAY: Readonly<Record<MessageName, Speaker>> = {
  'clock:ask': 'anyone',
  'seat:join': 'anyone',
  'seat:resume': 'anyone',
  'turns:send': 'student',
  'help:ask': 'student',
  'seat:leave': 'student',
  'viewer:enter': 'anyone',
  'viewer:again': 'viewer',
  'desk:enter': 'session',
  'room:open': 'teacher',
  'room:watch': 'teacher',
  'room:set': 'teacher',
  'room:lock': 'teacher',
  'room:close': 'teacher',
  'seat:remove': 'teacher',
  'seat:rename': 'teacher',
  'pretend:seat': 'teacher',
  'round:start': 'teacher',
  'round:pause': 'teacher',
  'round:resume': 'teacher',
  'round:add-time': 'teacher',
  'round:show-par': 'teacher',
  'round:end': 'teacher',
  'round:void': 'teacher',
}

/** @returns null when the connection may send this message, else the refusal that says how to get there */
export function refusalFor(connection: Connection, name: MessageName): Refusal | null {
  const speaker = WHO_MAY[name]
  const { who, teacherId } = connection.data
  if (speaker === 'anyone' || speaker === who.role) return null
  if (speaker === 'session') return teacherId === null ? { code: 'desk/not-signed-in' } : null
  if (speaker === 'teacher') return { code: 'desk/not-signed-in' }
  return speaker === 'viewer' ? { code: 'viewer/no-such-room' } : { code: 'seat/none' }
}
