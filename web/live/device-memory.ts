/**
 * What this page leaves on the device so that a reload loses nothing: the seat's token and the turns that the server has
 * not heard of. Gone on leaving, and never read after twelve hours: devices in schools are shared. A browser may forbid
 * storing; then only a reload is poorer for it.
 */

const SEAT = 'fairturn.seat'
const TURNS = 'fairturn.turns'
const KEPT_MS_MAX = 12 * 60 * 60_000

export type RememberedSeat = { readonly token: string; readonly code: string }

export function rememberSeat(seat: RememberedSeat): void {
  write(SEAT, seat)
}

export function rememberedSeat(): RememberedSeat | null {
  const seat = read(SEAT) as Partial<RememberedSeat> | null
  return typeof seat?.token === 'string' && typeof seat.code === 'string'
    ? { token: seat.token, code: seat.code }
    : null
}

export function rememberTurns(turns: unknown): void {
  write(TURNS, turns)
}

export function rememberedTurns(): unknown {
  return read(TURNS)
}

export function forgetEverything(): void {
  try {
    localStorage.removeItem(SEAT)
    localStorage.removeItem(TURNS)
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

function read(name: string): unknown {
  try {
    const kept = JSON.parse(localStorage.getItem(name) ?? 'null') as { atMs: number; value: unknown } | null
    if (kept === null || Date.now() - kept.atMs > KEPT_MS_MAX) return null
    return kept.value
  } catch {
    return null
  }
}
