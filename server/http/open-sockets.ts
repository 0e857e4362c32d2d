/** Lets go of whoever does not hang up by itself: a phone that is out of reach, a request that never ends. */

import type { Server } from 'node:http'
import type { Socket } from 'node:net'

export class OpenSockets {
  readonly #open = new Set<Socket>()

  constructor(http: Server) {
    http.on('connection', (socket) => {
      this.#open.add(socket)
      socket.once('close', () => this.#open.delete(socket))
    })
  }

  /** Waits for what is `closing`, but for those that are still open after `mostMs` no longer. */
  async end(closing: Promise<unknown>, mostMs: number): Promise<void> {
    const timer = setTimeout(() => {
      for (const socket of this.#open) socket.destroy()
    }, mostMs)
    await closing.finally(() => clearTimeout(timer))
  }
}
