/** Every message that the server sends by itself. Views are whole; ticks change lanes of the last view. */

import type { ShowingAt } from './shown.ts'
import type { BenchView, BoardView, DeskHome, DeskTick, DeskView, Shelf, Tick } from './views.ts'

/** Why a connection no longer holds what it held. */
export type GoneReason = 'taken-over' | 'removed' | 'room-closed'

/** The event map that Socket.IO types this direction of the connection with. */
export type ServerEvents = {
  bench: (view: BenchView) => void
  board: (view: BoardView) => void
  desk: (view: DeskView) => void
  /** The list of the teacher's rooms changed; sent to desks that watch none. */
  'desk:home': (home: DeskHome) => void
  /** A teacher's lesson plans and rosters changed. */
  shelf: (shelf: Shelf) => void
  tick: (tick: Tick) => void
  'desk:tick': (tick: DeskTick) => void
  /** How far the showing of this version has gone. */
  'shown:at': (message: { readonly version: number; readonly at: ShowingAt }) => void
  /** The teacher has opened the door for whoever waited there. */
  'seat:let-in': (message: { readonly token: string; readonly bench: BenchView }) => void
  /** The teacher has not. */
  'seat:turned-away': (message: Record<never, never>) => void
  /** Answered at once: how long a message is on its way to this page and back. */
  'delay:ask': (message: Record<never, never>, answer: () => void) => void
  'seat:gone': (message: { reason: GoneReason }) => void
  /** The server is closing; the page waits and comes back by itself. */
  'server:going-away': (message: Record<never, never>) => void
}
