/**
 * Whoever is told something by the server itself. A screen that does not read is told nothing more, so that what waits for it
 * stays small; when it has read it gets one whole view, whether or not anything else happens; and when it never reads it is
 * hung up on.
 */

import { type Connection, hangUp, hasWaiting } from './connection.ts'

/** Some ticks, or one whole view of the largest room. */
const LAGGING = { packets: 32, bytes: 128 * 1024 }
const CAUGHT_UP = { packets: 0, bytes: 0 }
const LAGGING_MS_MAX = 30_000

export class Readers {
  readonly #nowMs: () => number
  readonly #sendWholeView: (connection: Connection) => void
  /** Since when each of them has been left out. */
  readonly #lagging = new Map<Connection, number>()

  constructor(nowMs: () => number, sendWholeView: (connection: Connection) => void) {
    this.#nowMs = nowMs
    this.#sendWholeView = sendWholeView
  }

  tell(connection: Connection, send: (connection: Connection) => void): void {
    if (this.#lagging.has(connection)) return
    if (hasWaiting(connection, LAGGING)) this.#lagging.set(connection, this.#nowMs())
    else send(connection)
  }

  /** To be called with every tick. */
  lookAfter(): void {
    for (const [connection, sinceMs] of this.#lagging) {
      if (!connection.connected) this.#lagging.delete(connection)
      else if (!hasWaiting(connection, CAUGHT_UP)) {
        this.#lagging.delete(connection)
        this.#sendWholeView(connection)
      } else if (sinceMs + LAGGING_MS_MAX < this.#nowMs()) {
        this.#lagging.delete(connection)
        hangUp(connection)
      }
    }
  }
}
