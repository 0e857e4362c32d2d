/** Connections whose other end stops reading: the system takes nothing more of what the server writes to them. */

import type { Server } from 'node:http'
import type { Socket } from 'node:net'

type Done = (fault?: Error | null) => void
type Writes = {
  _write(chunk: unknown, encoding: string, done: Done): void
  _writev(chunks: unknown[], done: Done): void
}

export class DeafSockets {
  readonly #sockets: Socket[] = []
  readonly #held: (() => void)[] = []

  /** To be made before anybody connects. */
  constructor(http: Server) {
    http.on('connection', (socket: Socket) => this.#sockets.push(socket))
  }

  /** The newest connection is read no more. */
  async deafen(): Promise<Socket> {
    const socket = this.#sockets.at(-1)
    if (socket === undefined) throw new Error('nobody has connected')
    const { _write: write, _writev: writev } = socket as unknown as Writes
    Object.assign(socket, {
      _write: (...args: Parameters<Writes['_write']>) => this.#held.push(() => write.apply(socket, args)),
      _writev: (...args: Parameters<Writes['_writev']>) => this.#held.push(() => writev.apply(socket, args)),
      /** What is written afterwards goes out again. */
      hear: () => Object.assign(socket, { _write: write, _writev: writev }),
    })
    return socket
  }

  /** It is read again. */
  hear(socket: Socket): void {
    ;(socket as unknown as { hear(): void }).hear()
    for (const write of this.#held.splice(0)) write()
  }
}
