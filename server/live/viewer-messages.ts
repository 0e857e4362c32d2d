/** What the projector says, and what everybody may ask: the time. */

import { err, ok } from '../../engine/result.ts'
import { become } from './change-role.ts'
import type { Handlers } from './gateway.ts'
import type { LiveParts } from './parts.ts'
import type { Rooms } from './rooms.ts'
import { boardViewFor } from './view-for.ts'

type ViewerMessages = Pick<Handlers, 'clock:ask' | 'viewer:enter' | 'viewer:again'>

export function viewerMessages(rooms: Rooms, parts: LiveParts): ViewerMessages {
  return {
    'clock:ask': () => ok({ serverMs: parts.nowMs() }),

    'viewer:enter'(connection, message) {
      const room = rooms.byViewerKey(message.key)
      if (room === null) return err({ code: 'viewer/no-such-room' })
      become(connection, { role: 'viewer', room })
      return ok({ board: boardViewFor(room, parts.addresses()) })
    },

    'viewer:again'(connection) {
      const { who } = connection.data
      if (who.role !== 'viewer') return err({ code: 'viewer/no-such-room' })
      return ok({ board: boardViewFor(who.room, parts.addresses()) })
    },
  }
}
