/** A page that says whatever it is told to, frame by frame. Framing: Engine.IO protocol v4, Socket.IO protocol v5. */

import WebSocket from 'ws'
import { SOCKET_PATH } from '../../../engine/wire/places.ts'
import { PROTOCOL_VERSION } from '../../../engine/wire/version.ts'

export const HELLO = `40${JSON.stringify({ protocol: PROTOCOL_VERSION })}`

export type RawAnswer = { ok: boolean; error?: { code: string }; value?: unknown }

export class RawPage {
  readonly socket: WebSocket
  readonly closed: Promise<void>
  readonly #waiting = new Map<number, (answer: RawAnswer) => void>()
  #nextId = 0
  isOpen = true

  private constructor(socket: WebSocket) {
    this.socket = socket
    this.closed = new Promise((resolve) =>
      socket.on('close', () => {
        this.isOpen = false
        resolve()
      }),
    )
    socket.on('error', () => undefined)
    socket.on('message', (data) => this.#hear(String(data)))
  }

  /** Opens the transport; with `hello` it also enters. */
  static open(url: string, wishes: { hello?: string | null; cookie?: string } = {}): Promise<RawPage> {
    const { hello = HELLO, cookie } = wishes
    return new Promise((resolve, reject) => {
      const address = `${url.replace('http', 'ws')}${SOCKET_PATH}/?EIO=4&transport=websocket`
      const socket = new WebSocket(address, cookie === undefined ? {} : { headers: { cookie } })
      const page = new RawPage(socket)
      socket.once('error', reject)
      socket.on('message', (data) => {
        const text = String(data)
        if (text.startsWith('0') && hello !== null) socket.send(hello)
        if (text.startsWith(hello === null ? '0' : '40')) resolve(page)
        if (text.startsWith('44')) reject(new Error(text))
      })
    })
  }

  /** Sends one event with an acknowledgement, its arguments as JSON text. */
  ask(name: string, json: string, withinMs = 5_000): Promise<RawAnswer> {
    const id = this.#nextId++
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error(`no answer to ${name} ${json.slice(0, 200)}`)), withinMs)
      this.#waiting.set(id, (answer) => {
        clearTimeout(timer)
        resolve(answer)
      })
      this.socket.send(`42${id}[${JSON.stringify(name)}${json === '' ? '' : `,${json}`}]`)
    })
  }

  send(frame: string | Uint8Array): void {
    if (this.socket.readyState === WebSocket.OPEN) this.socket.send(frame)
  }

  #hear(text: string): void {
    if (text === '2') this.socket.send('3')
    const answer = /^43(\d+)(\[.*)$/s.exec(text)
    if (answer === null) return
    this.#waiting.get(Number(answer[1]))?.((JSON.parse(answer[2]) as [RawAnswer])[0])
    this.#waiting.delete(Number(answer[1]))
  }
}
