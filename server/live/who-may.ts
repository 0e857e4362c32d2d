/** Who may say what: the one table that the gateway enforces and the tests walk through. A message without a row does not compile. */

import type { MessageName } from '../../engine/wire/from-browser.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Connection } from './connection.ts'

/** `session`: anyone whose connection brought a teacher's session cookie. */
export type Speaker = 'anyone' | 'student' | 'viewer' | 'session' | 'teacher'

export const WHO_MAY: Readonly<Record<MessageName, Speaker>> = {
  'clock:ask': 'anyone',
  'room:ask': 'anyone',
  'seat:join': 'anyone',
  'seat:resume': 'anyone',
  'seat:give-up': 'anyone',
  'turns:send': 'student',
  'turns:hand-in': 'student',
  'cube:ready': 'student',
  'round:choose': 'student',
  'help:ask': 'student',
  'seat:leave': 'student',
  'viewer:enter': 'anyone',
  'viewer:again': 'viewer',
  'desk:enter': 'session',
  'room:open': 'teacher',
  'room:watch': 'teacher',
  'room:set': 'teacher',
  'room:lock': 'teacher',
  'room:entry': 'teacher',
  'room:use-plan': 'teacher',
  'room:plan-at': 'teacher',
  'room:take-home': 'teacher',
  'room:look-at': 'teacher',
  'room:close': 'teacher',
  'seat:remove': 'teacher',
  'seat:rename': 'teacher',
  'knock:answer': 'teacher',
  'seat:look': 'teacher',
  'nudge:send': 'teacher',
  'plan:keep': 'teacher',
  'plan:remove': 'teacher',
  'roster:keep': 'teacher',
  'roster:remove': 'teacher',
  'show:whole': 'teacher',
  'show:at': 'teacher',
  'review:ask': 'teacher',
  'pretend:seat': 'teacher',
  'round:deal': 'teacher',
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
