/**
 * How a teacher gets to the desk. Each start of the server prints a link that works once; opening it trades the key in it
 * for a session, whose token lives in a cookie that scripts cannot read and other sites cannot use. The record keeps its hash.
 * The key stands behind the `#` of the link, so that it reaches neither logs nor whoever sees the request.
 */

import express, { type Express } from 'express'
import { z } from 'zod'
import type { TeacherId } from '../../engine/contest/ids.ts'
import { SECRET_LENGTH_MAX } from '../../engine/wire/limits.ts'
import { DESK_COOKIE, DESK_ENTER_PATH } from '../../engine/wire/places.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { hashSecret, newSecret, sameSecret } from '../secrets.ts'
import type { DurableRecord } from '../store/record.ts'

/** One teacher's house for now: every desk link leads to the same rooms. */
const HOUSE_TEACHER = 'house' as TeacherId
const SESSION_MS = 180 * 24 * 60 * 60_000

export class DeskLink {
  #key: string | null = newSecret()

  /** The key of the link that is printed; null once it has been used. */
  get key(): string | null {
    return this.#key
  }

  /** @returns true once, for the right key, until it is given back */
  take(key: string): boolean {
    if (this.#key === null || !sameSecret(this.#key, key)) return false
    this.#key = null
    return true
  }

  /** The session could not be stored: the link works again. */
  giveBack(key: string): void {
    this.#key = key
  }
}

const enterSchema = z.strictObject({ key: z.string().min(1).max(SECRET_LENGTH_MAX) })

export function serveDeskSession(
  app: Express,
  parts: {
    link: DeskLink
    record: DurableRecord
    nowMs: () => number
    isSecure: boolean
    isOwnOrigin: (origin: string | undefined, host: string | undefined) => boolean
  },
): void {
  app.post(DESK_ENTER_PATH, express.json({ limit: '2kb' }), async (request, response) => {
    const refuse = (status: number, refusal: Refusal) => response.status(status).json({ ok: false, error: refusal })
    if (!parts.isOwnOrigin(request.get('origin'), request.get('host'))) {
      refuse(403, { code: 'desk/link-used' })
      return
    }
    const message = enterSchema.safeParse(request.body)
    if (!message.success || !parts.link.take(message.data.key)) {
      refuse(401, { code: 'desk/link-used' })
      return
    }
    const token = newSecret()
    const entry = { kind: 'desk-session', tokenHash: hashSecret(token), teacherId: HOUSE_TEACHER } as const
    try {
      await parts.record.write({ ...entry, atMs: parts.nowMs() })
    } catch (fault) {
      parts.link.giveBack(message.data.key)
      throw fault
    }
    response.cookie(DESK_COOKIE, token, {
      httpOnly: true,
      sameSite: 'strict',
      secure: parts.isSecure,
      maxAge: SESSION_MS,
      path: '/',
    })
    response.json({ ok: true, value: {} })
  })
}

/** The teacher whose session cookie came with a handshake, or null. */
export async function teacherOfCookies(
  cookies: string | undefined,
  record: DurableRecord,
  nowMs: number,
): Promise<TeacherId | null> {
  for (const cookie of (cookies ?? '').split(';')) {
    const [name, value] = cookie.trim().split('=')
    if (name === DESK_COOKIE && value !== undefined && value.length <= SECRET_LENGTH_MAX)
      return record.teacherOfSession(hashSecret(value), nowMs - SESSION_MS)
  }
  return null
}
