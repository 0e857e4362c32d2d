/**
 * Notices that the server stood still: the machine slept, or the process was frozen. Nobody could play meanwhile, so the
 * time is taken out of every round that all play together, by the same event that takes out the time after a crash.
 *
 * The server's clock stands still while the machine sleeps (`steady-clock.ts`); it is then put ahead, so that deadlines of
 * take-home rooms stay days on the calendar. Pages follow that clock: after a leap they have to ask the time again.
 */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoundId } from '../../engine/contest/ids.ts'
import { isOpen } from '../../engine/contest/round-clock.ts'
import type { LiveServer } from './connection.ts'
import type { LiveRoom } from './live-room.ts'
import type { LiveParts } from './parts.ts'
import type { Rooms } from './rooms.ts'

/** A tick comes a hundred times a second. A garbage collection or a slow disk never takes so long; a closed lid does. */
const STANDSTILL_MS = 5_000
/** Two clocks read one after the other differ by less; some systems tell their uptime in whole seconds. */
const SLEPT_MS_MIN = 1_000

/** What a watch reads, and what it puts right. */
export type WatchedClocks = {
  /** The server's clock. */
  readonly nowMs: () => number
  /** Milliseconds since anything, by a clock that goes on while the machine sleeps. */
  readonly goingOnMs: () => number
  /** Puts the server's clock ahead. */
  readonly catchUp: (byMs: number) => void
}

/** Between these moments of the server's clock nobody could play. */
export type Stood = { readonly fromMs: number; readonly toMs: number; readonly hasLeapt: boolean }

/** Is asked with every tick; the time between two askings is the time in which the server may have stood still. */
export class StandstillWatch {
  readonly #clocks: WatchedClocks
  #last: { readonly nowMs: number; readonly goingOnMs: number } | null = null

  constructor(clocks: WatchedClocks) {
    this.#clocks = clocks
  }

  /** Whether a tick is missing, as far as the server's clock knows. Cheap: asked before every message. */
  get isOverdue(): boolean {
    return this.#last !== null && this.#clocks.nowMs() - this.#last.nowMs > STANDSTILL_MS
  }

  /** @returns how long the server stood still since it was asked last, its clock put right; null when it did not */
  ask(): Stood | null {
    const { nowMs, goingOnMs, catchUp } = this.#clocks
    const before = this.#last
    const here = { nowMs: nowMs(), goingOnMs: goingOnMs() }
    this.#last = here
    if (before === null) return null
    const wentOnMs = here.goingOnMs - before.goingOnMs
    if (wentOnMs <= STANDSTILL_MS) return null
    const sleptMs = wentOnMs - (here.nowMs - before.nowMs)
    const hasLeapt = sleptMs >= SLEPT_MS_MIN
    if (hasLeapt) {
      catchUp(Math.round(sleptMs))
      this.#last = { ...here, nowMs: nowMs() }
    }
    return { fromMs: before.nowMs, toMs: this.#last.nowMs, hasLeapt }
  }
}

type Outage = { readonly room: LiveRoom; readonly roundId: RoundId; readonly event: ClockEvent; isUnderWay: boolean }

/** Takes standstills out of the rounds. */
export class Standstills {
  readonly #live: LiveServer
  readonly #rooms: Rooms
  readonly #parts: LiveParts
  /** Not yet stored: until then the clock of that round says too little. */
  readonly #outages = new Set<Outage>()

  constructor(live: LiveServer, rooms: Rooms, parts: LiveParts) {
    this.#live = live
    this.#rooms = rooms
    this.#parts = parts
  }

  /** To be called before a message is judged: what came in meanwhile may be read before the next tick. */
  lookBeforeMessage(): void {
    if (this.#parts.standstill.isOverdue) this.look()
  }

  /** To be called first thing in every tick. Rounds are put right at once, and shown so when that is stored. */
  look(): void {
    const stood = this.#parts.standstill.ask()
    if (stood !== null) this.#takeOut(stood)
    if (this.#outages.size === 0 || !this.#parts.record.saving) return
    for (const outage of this.#outages) if (!outage.isUnderWay) void this.#store(outage)
  }

  /** Whether the end of this round cannot be told yet. */
  isUnsettled(roundId: RoundId): boolean {
    for (const outage of this.#outages) if (outage.roundId === roundId) return true
    return false
  }

  #takeOut({ fromMs, toMs, hasLeapt }: Stood): void {
    this.#parts.log.warn({ forMs: toMs - fromMs, hasLeapt }, 'the server stood still')
    for (const room of this.#rooms.all()) {
      for (const { id: roundId, clock, settings } of room.closed ? [] : room.heldRounds) {
        // A deadline is a day on the calendar: it does not move.
        if (!isOpen(clock) || settings.pace === 'alone') continue
        this.#outages.add({ room, roundId, event: { kind: 'outage', fromMs, toMs }, isUnderWay: false })
      }
    }
    // A page whose connection ends comes back by itself, and asks the time.
    if (hasLeapt) for (const connection of this.#live.sockets.sockets.values()) connection.conn.close()
  }

  async #store(outage: Outage): Promise<void> {
    const { room, roundId, event } = outage
    outage.isUnderWay = true
    try {
      const changed = await room.changeClock(roundId, event)
      // Of a round that is not under way nothing has to be taken out; while the disk refuses it is tried again.
      if (changed.ok || changed.error.code !== 'store/saving-paused') this.#outages.delete(outage)
    } catch (fault) {
      this.#outages.delete(outage)
      this.#parts.log.error({ round: roundId, fault: (fault as Error).stack }, 'a standstill could not be taken out')
    } finally {
      outage.isUnderWay = false
    }
  }
}
