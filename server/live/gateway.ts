/**
 * The door for messages. Every one takes the same way: known? not too fast? allowed? well formed? then act and answer.
 * Whatever happens inside, it is answered, and a fault of ours in one message never reaches another class.
 */

import type { Logger } from 'pino'
import type { Result } from '../../engine/result.ts'
import { type Answer, FROM_BROWSER, type MessageName, type Parsed } from '../../engine/wire/from-browser.ts'
import { MESSAGE_BYTES_MAX } from '../../engine/wire/limits.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { type Connection, hangUp, hasWaiting } from './connection.ts'
import type { MessageLimits } from './message-limits.ts'
import { refusalFor } from './who-may.ts'

/** One handler: the message is parsed and its sender allowed. */
export type Handler<Name extends MessageName> = (
  connection: Connection,
  message: Parsed<Name>,
) => Promise<Result<unknown, Refusal>> | Result<unknown, Refusal>

export type Handlers = { readonly [Name in MessageName]: Handler<Name> }

/** Who goes on sending without reading the answers is no page: its answers would fill the memory. */
const UNREAD_MAX = { packets: 512, bytes: 512 * 1024 }

type AnyAnswer = (answer: Answer<unknown>) => void

/** What messages pass through on their way. */
export type Gateway = {
  readonly handlers: Handlers
  readonly limits: MessageLimits
  readonly log: Logger
  /** Called before a message is looked at. */
  readonly beforeEach: () => void
}

export function listenToConnection(connection: Connection, { handlers, limits, log, beforeEach }: Gateway): void {
  // A Map, so that a message named `constructor` finds nothing.
  const table = new Map<string, Handler<MessageName>>(Object.entries(handlers) as [string, Handler<MessageName>][])

  connection.onAny((name: unknown, ...given: unknown[]) => {
    if (hasWaiting(connection, UNREAD_MAX)) return hangUp(connection)
    beforeEach()
    const last = given.at(-1)
    const answer: AnyAnswer = typeof last === 'function' ? (last as AnyAnswer) : () => undefined
    const raw = typeof last === 'function' ? given.slice(0, -1) : given
    void answerMessage(String(name), raw, answer)
  })

  /** For the log: the name of an unknown message is whatever somebody sent. */
  const nameForLog = (name: string) => (table.has(name) ? name : 'unknown')

  async function answerMessage(name: string, raw: unknown[], answer: AnyAnswer): Promise<void> {
    try {
      const result = await take(name, raw)
      if (!result.ok)
        log.debug({ connection: connection.id, message: nameForLog(name), code: result.error.code }, 'refused')
      answer(result)
    } catch (fault) {
      log.error(
        { connection: connection.id, message: nameForLog(name), fault: (fault as Error).stack },
        'a message failed',
      )
      answer({ ok: false, error: { code: 'server/fault' } })
    }
  }

  async function take(name: string, raw: unknown[]): Promise<Answer<unknown>> {
    const handler = table.get(name)
    const waitMs = await limits.waitMs(connection)
    if (waitMs !== null) return refuse({ code: 'wire/too-fast', retryAfterMs: waitMs })
    if (handler === undefined) return refuse({ code: 'wire/unknown-message' })
    const notAllowed = refusalFor(connection, name as MessageName)
    if (notAllowed !== null) return refuse(notAllowed)
    if (raw.length !== 1) return refuse({ code: 'wire/malformed', at: 'message' })
    const parsed = FROM_BROWSER[name as MessageName].safeParse(raw[0])
    if (!parsed.success)
      return refuse({ code: 'wire/malformed', at: parsed.error.issues[0]?.path.join('.') || 'message' })
    return handler(connection, parsed.data as Parsed<MessageName>)
  }
}

function refuse(error: Refusal): Answer<never> {
  return { ok: false, error }
}

/** For the transport: longer messages end the connection before they are read. Framing takes some bytes more. */
export const TRANSPORT_BYTES_MAX = MESSAGE_BYTES_MAX + 512
