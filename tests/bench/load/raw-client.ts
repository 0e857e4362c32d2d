/**
 * A browser as thin as it gets: Engine.IO 4 and Socket.IO 5 frames by hand over one WebSocket, so that the generator costs
 * little and measures the server, not a client library. Source of the framing: Socket.IO protocol v5, Engine.IO protocol v4.
 */

import WebSocket from 'ws'

export class RawClient {
  readonly #socket: WebSocket
  readonly #waiting = new Map<number, (value: unknown) => void>()
  #nextId = 0
  /** Hears what the server sends by itself. */
  onEvent: ((name: string, value: unknown) => void) | null = null
  onClosed: (() => void) | null = null

  private constructor(socket: WebSocket) {
    this.#socket = socket
    socket.on('message', (data) => this.#hear(String(data)))
    socket.on('close', () => this.onClosed?.())
    socket.on('error', () => this.onClosed?.())
  }

  static connect(url: string, path: string, auth: object, headers: Record<string, string> = {}): Promise<RawClient> {
    return new Promise((resolve, reject) => {
      const socket = new WebSocket(`${url.replace('http', 'ws')}${path}/?EIO=4&transport=websocket`, {
        headers,
        perMessageDeflate: false,
      })
      socket.once('error', reject)
      socket.on('message', function first(data) {
        const text = String(data)
        if (text.startsWith('0')) socket.send(`40${JSON.stringify(auth)}`)
        else if (text.startsWith('40')) {
          socket.off('message', first)
          socket.off('error', reject)
          resolve(new RawClient(socket))
        } else if (text.startsWith('44')) reject(new Error(`refused: ${text.slice(2)}`))
      })
    })
  }

  /** Sends a message and hands its answer over as soon as it is there. */
  send(name: string, message: object, onAnswer: (value: unknown) => void): void {
    const id = this.#nextId++
    this.#waiting.set(id, onAnswer)
    this.#socket.send(`42${id}${JSON.stringify([name, message])}`)
  }

  ask<T>(name: string, message: object): Promise<T> {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error(`${name} was not answered`)), 30_000)
      this.send(name, message, (value) => {
        clearTimeout(timer)
        const answer = value as { ok: boolean; value: T; error?: unknown }
        if (answer.ok) resolve(answer.value)
        else reject(new Error(`${name} was refused: ${JSON.stringify(answer.error)}`))
      })
    })
  }

  close(): void {
    this.#socket.close()
  }

  #hear(text: string): void {
    if (text === '2') {
      this.#socket.send('3')
      return
    }
    if (text.startsWith('43')) {
      const at = text.indexOf('[')
      const id = Number(text.slice(2, at))
      const answer = this.#waiting.get(id)
      this.#waiting.delete(id)
      answer?.((JSON.parse(text.slice(at)) as unknown[])[0])
      return
    }
    if (!text.startsWith('42')) return
    const at = text.indexOf('[')
    // The server asks how far away we are; a page answers at once.
    if (at > 2) this.#socket.send(`43${text.slice(2, at)}[]`)
    if (this.onEvent === null) return
    const [name, value] = JSON.parse(text.slice(at)) as [string, unknown]
    this.onEvent(name, value)
  }
}
