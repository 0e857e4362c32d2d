/**
 * The connection of a page, in the hands of the test: it stands in for `web/live/socket.ts`. Whatever the page asks waits
 * until the test answers it, or the line is cut.
 */

import type { Answer, Answers, MessageName, Sent } from '../../../engine/wire/from-browser.ts'
import type { ServerEvents } from '../../../engine/wire/from-server.ts'
import type { Refusal } from '../../../engine/wire/refusal.ts'

type Asked = { readonly name: MessageName; readonly message: unknown; readonly settle: (answer: unknown) => void }

/** What of `web/live/socket.ts` the stores of the page use; of the socket itself only what they touch. */
type StandIn = Pick<typeof import('../../../web/live/socket.ts'), 'ask' | 'connect' | 'followConnection'> & {
  readonly socket: {
    connected: boolean
    on(event: string, listener: (message: unknown) => void): void
    connect(): void
    disconnect(): void
  }
}

const NO_ANSWER = { ok: false, error: { code: 'server/going-away' } } as const

/** @returns the line as the page has it (`standIn`), and as the test has it */
export function aLine() {
  const listeners = new Map<string, ((message: unknown) => void)[]>()
  let waiting: Asked[] = []
  let told = { onConnected: () => {}, onLost: () => {} }

  const standIn: StandIn = {
    socket: {
      connected: false,
      on(event, listener) {
        listeners.set(event, [...(listeners.get(event) ?? []), listener])
      },
      connect: () => line.join(),
      disconnect: () => void line.cut(),
    },
    ask(name, message) {
      if (!standIn.socket.connected) return Promise.resolve(NO_ANSWER)
      return new Promise((resolve) => {
        waiting.push({ name, message, settle: resolve as (answer: unknown) => void })
      })
    },
    connect() {
      if (!standIn.socket.connected) line.join()
      return Promise.resolve(null)
    },
    followConnection(listeners) {
      told = listeners
    },
  }

  const line = {
    /** Names of what the page has asked and nobody has answered, first first. */
    asked: () => waiting.map(({ name }) => name),

    /** Answers the first question of this name, which must be there. @returns what was asked */
    async answer<Name extends MessageName>(name: Name, value: Answers[Name] | Refusal): Promise<Sent<Name>> {
      await settled()
      const asked = waiting.find((each) => each.name === name)
      if (asked === undefined) throw new Error(`${name} was not asked, but ${line.asked().join()}`)
      waiting = waiting.filter((each) => each !== asked)
      const answer: Answer<unknown> = 'code' in value ? { ok: false, error: value } : { ok: true, value }
      asked.settle(answer)
      await settled()
      return asked.message as Sent<Name>
    },

    async tell<Name extends keyof ServerEvents>(name: Name, message: Parameters<ServerEvents[Name]>[0]): Promise<void> {
      for (const listener of listeners.get(name) ?? []) listener(message)
      await settled()
    },

    join(): void {
      standIn.socket.connected = true
      told.onConnected()
    },

    /** The connection is lost, and whatever was asked gets no answer. */
    async cut(): Promise<void> {
      standIn.socket.connected = false
      const lost = waiting
      waiting = []
      for (const { settle } of lost) settle(NO_ANSWER)
      told.onLost()
      await settled()
    },
  }

  return { standIn, line }
}

/** Long enough for every promise that has its answer to be done with it; no clock runs meanwhile. */
async function settled(): Promise<void> {
  for (let step = 0; step < 20; step++) await Promise.resolve()
}
