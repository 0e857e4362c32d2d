/** A room while it lives: what it is, the teacher's settings, its seats and its round. All that is read here is on the disk. */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Round } from '../../engine/contest/round-state.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import { casesLeaveAStart } from '../../engine/method/draw-start.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { LiveParts } from './parts.ts'
import { RoomRound, type Standing, type TurnsOfSeat } from './room-round.ts'
import { RoomSeats, type Seat } from './room-seats.ts'
import { type Guide, RoundGuide } from './round-guide.ts'
import { type StoreEntry, storeInRoom } from './store-entry.ts'

/** What has changed since the last tick: the views of desk and board, those of all benches, or only the lanes of some seats. */
export type Changes = { views: boolean; benches: boolean; lanes: Set<SeatId> }

export type RoomFacts = {
  readonly id: RoomId
  readonly code: RoomCode
  readonly teacherId: TeacherId
  readonly viewerKey: string
  readonly openedAtMs: number
}

export class LiveRoom {
  readonly facts: RoomFacts
  readonly changes: Changes = { views: false, benches: false, lanes: new Set() }
  settings: RoundSettings
  locked = false
  closed = false
  /** Rises with every tick that is sent. */
  version = 0
  readonly #parts: LiveParts
  readonly #store: StoreEntry
  readonly #seats: RoomSeats
  readonly #round: RoomRound
  readonly #guide: RoundGuide
  /** The round whose par the teacher shows ahead of its end. */
  #parShownIn: RoundId | null = null
  #closing: Promise<Result<null, Refusal>> | null = null

  constructor(parts: LiveParts, facts: RoomFacts, settings: RoundSettings) {
    this.#parts = parts
    this.facts = facts
    this.settings = settings
    this.#store = storeInRoom(parts, facts.id)
    this.#seats = new RoomSeats(parts, facts.id, this.#store)
    this.#round = new RoomRound(parts, facts.id, this.#store)
    this.#guide = new RoundGuide(parts, () => this.#tellEverybody())
  }

  get seats(): ReadonlyMap<SeatId, Seat> {
    return this.#seats.all
  }

  get round(): Round | null {
    return this.#round.shown
  }

  get nRounds(): number {
    return this.#round.nRounds
  }

  /** Puts back what the record held, at boot. */
  restore(state: { seats: readonly Seat[]; standing: Standing | null; locked: boolean }): void {
    this.#seats.restore(state.seats)
    this.#round.restore(state.standing)
    this.locked = state.locked
    this.#followRound()
  }

  // Seats

  async join(
    typedName: string,
    pretend = false,
    ownToken?: string,
  ): Promise<Result<{ seat: Seat; token: string }, Refusal>> {
    if (this.#isClosing) return err({ code: 'room/closed' })
    if (this.locked && !pretend) return err({ code: 'room/locked' })
    const joined = await this.#seats.join(typedName, pretend, ownToken)
    if (joined.ok) this.changes.views = true
    return joined
  }

  seatOfTokenHash(tokenHash: string): Seat | null {
    return this.#seats.ofTokenHash(tokenHash)
  }

  hasPretenders(): boolean {
    return this.#seats.hasPretenders()
  }

  /** Came in after the signal of the round that is shown. */
  isLate(seat: Seat): boolean {
    const { round } = this
    return round !== null && round.signalAtMs !== null && round.signalAtMs < seat.joinedAtMs
  }

  async rename(seatId: SeatId, typedName: string): Promise<Result<null, Refusal>> {
    const renamed = await this.#seats.rename(seatId, typedName)
    if (renamed.ok) this.#tellEverybody()
    return renamed
  }

  async remove(seatId: SeatId): Promise<Result<Seat, Refusal>> {
    const removed = await this.#seats.remove(seatId)
    if (removed.ok) this.changes.views = true
    return removed
  }

  askForHelp(seat: Seat, wanted: boolean): void {
    if (seat.asksForHelp === wanted) return
    seat.asksForHelp = wanted
    this.changes.views = true
  }

  // The teacher's settings

  async set(settings: RoundSettings): Promise<Result<null, Refusal>> {
    if (settings.cases !== null && !casesLeaveAStart(settings, settings.cases))
      return err({ code: 'room/no-such-start' })
    const stored = await this.#store({ kind: 'room-settings', roomId: this.facts.id, settings })
    if (!stored.ok) return stored
    this.settings = settings
    this.changes.views = true
    return ok(null)
  }

  async lock(locked: boolean): Promise<Result<null, Refusal>> {
    const stored = await this.#store({ kind: 'room-locked', roomId: this.facts.id, locked })
    if (!stored.ok) return stored
    this.locked = locked
    this.changes.views = true
    return ok(null)
  }

  /** Closed twice is closed once. While it is being stored nobody comes in any more and no round begins. */
  close(): Promise<Result<null, Refusal>> {
    if (this.closed) return Promise.resolve(ok(null))
    if (this.#round.isUnderWay) return Promise.resolve(err({ code: 'room/round-open' }))
    this.#closing ??= this.#close().finally(() => {
      this.#closing = null
    })
    return this.#closing
  }

  async #close(): Promise<Result<null, Refusal>> {
    const stored = await this.#store({ kind: 'room-closed', roomId: this.facts.id, atMs: this.#parts.nowMs() })
    if (!stored.ok) return stored
    this.closed = true
    this.#guide.stop()
    this.#tellEverybody()
    return ok(null)
  }

  get #isClosing(): boolean {
    return this.closed || this.#closing !== null
  }

  // The round

  async start(number: number): Promise<Result<RoundId, Refusal>> {
    if (this.#isClosing) return err({ code: 'room/closed' })
    const { settings } = this
    const nBefore = this.nRounds
    const started = await this.#round.start(number, settings)
    if (nBefore < this.nRounds) for (const seat of this.seats.values()) seat.asksForHelp = false
    this.#followRound()
    // Also when only the dealing was stored: the desk counts that round.
    this.#tellEverybody()
    return started
  }

  /** Par and ways of the round that is shown, for the desk; null without a round, and for a moment at its beginning. */
  get guide(): Guide | null {
    const { round } = this
    return round === null ? null : this.#guide.of(round.id)
  }

  /** Whether the teacher shows par to the class ahead of the end. */
  get isParShown(): boolean {
    return this.#parShownIn !== null && this.#parShownIn === this.round?.id
  }

  showPar(roundId: RoundId, isShown: boolean): Result<null, Refusal> {
    if (this.round?.id !== roundId) return err({ code: 'contest/no-such-round' })
    this.#parShownIn = isShown ? roundId : null
    this.#tellEverybody()
    return ok(null)
  }

  #followRound(): void {
    const { round } = this
    if (round !== null && round.clock.phase !== 'void') this.#guide.follow(round)
  }

  async changeClock(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    const changed = await this.#round.change(roundId, event)
    if (!changed.ok) return changed
    if (event.kind === 'voided') this.#guide.stop()
    if (event.kind === 'ended' || event.kind === 'voided')
      for (const seat of this.seats.values()) seat.asksForHelp = false
    this.#tellEverybody()
    return changed
  }

  async takeTurns(seat: Seat, sent: Omit<TurnsOfSeat, 'seatId' | 'late'>): Promise<Result<TurnsAnswer, Refusal>> {
    const taken = await this.#round.takeTurns({ ...sent, seatId: seat.id, late: this.isLate(seat) })
    if (!taken.ok) return taken
    this.changes.lanes.add(seat.id)
    // Whoever gets there is not stuck any more.
    if (taken.value.reached !== null) this.askForHelp(seat, false)
    return taken
  }

  #tellEverybody(): void {
    this.changes.views = true
    this.changes.benches = true
  }
}
