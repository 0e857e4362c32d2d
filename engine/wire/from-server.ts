/** Every message that the server sends by itself. Views are whole; ticks change lanes of the last view. */

import type { BenchView, BoardView, DeskHome, DeskView, Tick } from './views.ts'

/** Why a connection no longer holds what it held. */
export type GoneReason = 'taken-over' | 'removed' | 'room-closed'

/** The event map that Socket.IO types this direction of the connection with. */
export type ServerEvents = {
  bench: (view: BenchView) => void
  board: (view: BoardView) => void
  desk: (view: DeskView) => void
  /** The list of the teacher's rooms changed; sent to desks that watch none. */
  'desk:home': (home: DeskHome) => void
  tick: (tick: Tick) => void
  'seat:gone': (message: { reason: GoneReason }) => void
  /** The server is closing; the page waits and comes back by itself. */
  'server:going-away': (message: Record<never, never>) => void
}
