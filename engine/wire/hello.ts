/** What a page says when it connects, in Socket.IO's `auth`. */

import { z } from 'zod'
import { PROTOCOL_VERSION } from './version.ts'

export const helloSchema = z.object({ protocol: z.literal(PROTOCOL_VERSION) })

/** Name of the cookie that holds a teacher's session; set by the server, unreadable for scripts. */
export const DESK_COOKIE = 'fairturn_desk'

/** Path of the endpoint that trades the one-time link for a session, and of Socket.IO. */
export const DESK_ENTER_PATH = '/api/desk/enter'
export const SOCKET_PATH = '/live'
