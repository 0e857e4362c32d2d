/**
 * What this page leaves on the device so that a reload loses nothing: the seat's token and the turns that the server has
 * not heard of. Gone on leaving, and never read after twelve hours: devices in schools are shared. A browser may forbid
 * storing; then only a reload is poorer for it.
 */

import { STEP_NAMES } from '../../engine/contest/steps.ts'
import type { HeldTry, Outbox } from './local-try.ts'

const SEAT = 'fairturn.seat'
const TURNS = 'fairturn.turns'
const KNOCK = 'fairturn.knock'
const KEPT_MS_MAX = 12 * 60 * 60_000
/** A seat in a take-home room is kept until the room closes, and a day longer. */
const DAY_MS = 24 * 60 * 60_000

export type RememberedSeat = {
  readonly token: string
  readonly code: string
  /** Of a take-home room, which is played for days. */
  readonly deadlineMs: number | null
}

export function rememberSeat(seat: RememberedSeat): void {
  write(SEAT, seat)
}

export function rememberedSeat(): RememberedSeat | null {
  const seat = read(SEAT, deadlineOf) as Partial<RememberedSeat> | null
  return typeof seat?.token === 'string' && typeof seat.code === 'string'
    ? { token: seat.token, code: seat.code, deadlineMs: deadlineOf(seat) }
    : null
}

/** What was said at the door at which this page waits, with the secret of the seat that it waits for. */
export type RememberedKnock = { readonly wish: { readonly code: string }; readonly secret: string }

/** @param knock null when the page waits no longer */
export function rememberKnock(knock: RememberedKnock | null): void {
  if (knock !== null) write(KNOCK, knock)
  else forget(KNOCK)
}

export function rememberedKnock(): RememberedKnock | null {
  const knock = read(KNOCK, () => null) as Partial<RememberedKnock> | null
  return typeof knock?.secret === 'string' && typeof knock.wish?.code === 'string'
    ? { wish: knock.wish, secret: knock.secret }
    : null
}

export function rememberTurns(outbox: Outbox): void {
  write(TURNS, outbox)
}

/** @returns null as well when what was kept makes no sense, for another version of this page may have written it */
export function rememberedTurns(): Outbox | null {
  const deadlineMs = rememberedSeat()?.deadlineMs ?? null
  const kept = read(TURNS, () => deadlineMs)
  return isOutbox(kept) ? kept : null
}

export function forgetEverything(): void {
  for (const name of [SEAT, TURNS, KNOCK]) forget(name)
}

function forget(name: string): void {
  try {
    localStorage.removeItem(name)
  } catch {
    // Nothing could be kept, so nothing has to go.
  }
}

function write(name: string, value: unknown): void {
  try {
    localStorage.setItem(name, JSON.stringify({ atMs: Date.now(), value }))
  } catch {
    // Full or forbidden: see above.
  }
}

/** @param deadlineOfValue until when it is kept at least, where a value says so */
function read(name: string, deadlineOfValue: (value: unknown) => number | null): unknown {
  try {
    const kept = JSON.parse(localStorage.getItem(name) ?? 'null') as { atMs: number; value: unknown } | null
    if (kept === null) return null
    const deadlineMs = deadlineOfValue(kept.value)
    const keptUntilMs = Math.max(kept.atMs + KEPT_MS_MAX, deadlineMs === null ? 0 : deadlineMs + DAY_MS)
    // Compared so that a moment that is no number counts as long ago.
    return Date.now() <= keptUntilMs ? kept.value : null
  } catch {
    return null
  }
}

function deadlineOf(kept: unknown): number | null {
  const { deadlineMs } = (kept ?? {}) as Partial<RememberedSeat>
  return typeof deadlineMs === 'number' ? deadlineMs : null
}

function isOutbox(kept: unknown): kept is Outbox {
  const { roundId, tries } = (kept ?? {}) as Partial<Outbox>
  return typeof roundId === 'string' && Array.isArray(tries) && tries.every(isHeldTry)
}

function isHeldTry(kept: unknown): kept is HeldTry {
  const { number, steps, nHeld, isOpen, kept: isKept, written } = (kept ?? {}) as Partial<HeldTry>
  const isCount = (value: unknown, max: number) => Number.isInteger(value) && 0 <= Number(value) && Number(value) <= max
  return (
    isCount(number, Number.MAX_SAFE_INTEGER) &&
    Array.isArray(steps) &&
    steps.every((step) => isCount(step, STEP_NAMES.length - 1)) &&
    isCount(nHeld, steps.length) &&
    typeof isOpen === 'boolean' &&
    typeof isKept === 'boolean' &&
    typeof written === 'boolean'
  )
}
