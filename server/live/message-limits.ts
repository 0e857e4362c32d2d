/**
 * How much one connection may say. Limits count by seat first, the address last and generously: a whole school sits behind
 * one address, and one pupil's mischief must not lock out the class. Who holds a seat already is never held up by them.
 */

import { RateLimiterMemory, type RateLimiterRes } from 'rate-limiter-flexible'
import type { Connection } from './connection.ts'

/** Ten turns a second for a while, and an outage's queue sent again, fit well within. */
const STUDENT = { points: 160, duration: 4 }
const TEACHER = { points: 60, duration: 5 }
const NOBODY = { points: 20, duration: 10 }
/** By hand nobody types so many wrong codes; a script is slowed to a share of 2^20 codes that takes weeks. */
const WRONG_CODES_OF_CONNECTION = { points: 8, duration: 60 }
/** A page comes in once; a few more for a name that was taken or a seat that was left. */
const JOINS_OF_CONNECTION = { points: 10, duration: 60 }
/** Only a flood by script meets this one, and nobody waits long for it to pass: one pupil's guessing must not lock a school out. */
const WRONG_CODES_OF_ADDRESS = { points: 200, duration: 10 }

export class MessageLimits {
  readonly #messages = {
    student: new RateLimiterMemory(STUDENT),
    teacher: new RateLimiterMemory(TEACHER),
    viewer: new RateLimiterMemory(NOBODY),
    nobody: new RateLimiterMemory(NOBODY),
  }
  readonly #joins = new RateLimiterMemory(JOINS_OF_CONNECTION)
  readonly #wrongOfConnection = new RateLimiterMemory(WRONG_CODES_OF_CONNECTION)
  readonly #wrongOfAddress = new RateLimiterMemory(WRONG_CODES_OF_ADDRESS)

  /** @returns null when the message may pass, else the milliseconds to wait */
  async waitMs(connection: Connection): Promise<number | null> {
    const { who } = connection.data
    const key = who.role === 'student' ? who.seatId : connection.id
    return refusedFor(this.#messages[who.role].consume(key))
  }

  /** Milliseconds to wait before this connection may come in again, or null. */
  joinWaitMs(connection: Connection): Promise<number | null> {
    return refusedFor(this.#joins.consume(connection.id))
  }

  /** Milliseconds to wait before another code may be tried, or null. */
  async codeWaitMs(connection: Connection): Promise<number | null> {
    const own = await this.#wrongOfConnection.get(connection.id)
    const address = await this.#wrongOfAddress.get(connection.handshake.address)
    if (own !== null && own.consumedPoints >= WRONG_CODES_OF_CONNECTION.points) return own.msBeforeNext
    if (address !== null && address.consumedPoints >= WRONG_CODES_OF_ADDRESS.points) return address.msBeforeNext
    return null
  }

  async countWrongCode(connection: Connection): Promise<void> {
    await refusedFor(this.#wrongOfConnection.consume(connection.id))
    await refusedFor(this.#wrongOfAddress.consume(connection.handshake.address))
  }
}

async function refusedFor(consumed: Promise<RateLimiterRes>): Promise<number | null> {
  try {
    await consumed
    return null
  } catch (refusal) {
    if (refusal instanceof Error) throw refusal
    return Math.max(1, (refusal as RateLimiterRes).msBeforeNext)
  }
}
