/** What a page says when it connects, in Socket.IO's `auth`. */

import { z } from 'zod'
import { PROTOCOL_VERSION } from './version.ts'

export const helloSchema = z.object({ protocol: z.literal(PROTOCOL_VERSION) })
