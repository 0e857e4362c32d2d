/** What the projector says, and what everybody may ask: the time. */

import { err, ok } from '../../engine/result.ts'
import { boardGroup } from './connection.ts'
import type { Handlers } from './gateway.ts'
import type { LiveParts } from './parts.ts'
import type { Rooms } from './rooms.ts'
import { boardViewFor } from './view-for.ts'

type ViewerMessages = Pick<Handlers, 'clock:ask' | 'viewer:enter' | 'viewer:again'>

export function viewerMessages(rooms: Rooms, parts: LiveParts): ViewerMessages {
  return {
    'clock:ask': () => ok({ serverMs: parts.nowMs() }),

    async 'viewer:enter'(connection, message) {
      const room = rooms.byViewerKey(message.key)
      if (room === null) return err({ code: 'viewer/no-such-room' })
      connection.data.who = { role: 'viewer', room }
      await connection.join(boardGroup(room))
      return ok({ board: boardViewFor(room, parts.addresses()) })
    },

    'viewer:again'(connection) {
      const { who } = connection.data
      if (who.role !== 'viewer') return err({ code: 'viewer/no-such-room' })
      return ok({ board: boardViewFor(who.room, parts.addresses()) })
    },
  }
}
