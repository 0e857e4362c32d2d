/**
 * A room while it lives: what it is, and what is done in it. Behind it stand its entrance, its lesson, its rounds, its
 * taking home and its showing. All that is read here is on the disk.
 */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { TryHandedIn } from '../../engine/contest/hand-in.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Reached, Round } from '../../engine/contest/round-state.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { PlanUnderWay, RoundOnRecord } from '../store/record.ts'
import type { ListedRound } from './listed-round.ts'
import type { LiveParts } from './parts.ts'
import { RoomChanges } from './room-changes.ts'
import { RoomEntrance } from './room-entrance.ts'
import { RoomLesson } from './room-lesson.ts'
import type { Standing, TurnsOfSeat } from './room-round.ts'
import { RoomRounds } from './room-rounds.ts'
import type { Seat } from './room-seats.ts'
import { RoomShowing } from './room-showing.ts'
import { RoomTakeHome } from './room-take-home.ts'
import type { Guide, RoundSetup } from './round-guide.ts'
import { type StoreEntry, storeInRoom } from './store-entry.ts'

export type RoomFacts = {
  readonly id: RoomId
  readonly code: RoomCode
  readonly teacherId: TeacherId
  readonly viewerKey: string
  readonly openedAtMs: number
}

/** What the record held of a room, apart from its rounds and seats. */
export type RoomState = {
  readonly settings: RoundSettings
  readonly entry: RoomEntry
  readonly plan: PlanUnderWay | null
  readonly deadlineMs: number | null
}

/** Where each plays alone until a deadline, that is the clock. */
const FOR_ALL_AT_ONCE: ReadonlySet<ClockEvent['kind']> = new Set(['paused', 'resumed', 'time-added'])

export class LiveRoom {
  readonly facts: RoomFacts
  readonly changes = new RoomChanges()
  readonly entrance: RoomEntrance
  readonly lesson: RoomLesson
  readonly takeHome: RoomTakeHome
  readonly showing = new RoomShowing()
  /** Rises with every tick that is sent. */
  version = 0
  readonly #parts: LiveParts
  readonly #store: StoreEntry
  readonly #rounds: RoomRounds
  #closed = false
  #closing: Promise<Result<null, Refusal>> | null = null

  constructor(parts: LiveParts, facts: RoomFacts, { settings, entry, plan, deadlineMs }: RoomState) {
    this.#parts = parts
    this.facts = facts
    const { changes } = this
    const { id: roomId, teacherId } = facts
    const store = storeInRoom(parts, roomId)
    const rounds = new RoomRounds(parts, roomId, store, () => changes.tellEverybody())
    const isClosing = () => this.#isClosing
    this.#store = store
    this.#rounds = rounds
    this.entrance = new RoomEntrance({ live: parts, roomId, teacherId, store, changes, isClosing }, entry)
    this.lesson = new RoomLesson(roomId, store, changes, { settings, plan })
    this.takeHome = new RoomTakeHome({ nowMs: parts.nowMs, roomId, store, rounds, changes, isClosing }, deadlineMs)
  }

  /** Puts back what the record held, at boot. */
  restore(state: {
    seats: readonly Seat[]
    rounds: readonly RoundOnRecord[]
    held: readonly { standing: Standing; parShown: boolean }[]
    locked: boolean
  }): void {
    this.entrance.restore(state.seats, state.locked)
    this.#rounds.restore(state.rounds, state.held)
  }

  get seats(): ReadonlyMap<SeatId, Seat> {
    return this.entrance.seats
  }

  /** Until when a take-home room is open; null in a room where all play at once. */
  get deadlineMs(): number | null {
    return this.takeHome.deadlineMs
  }

  get closed(): boolean {
    return this.#closed
  }

  /** Closed twice is closed once. While it is being stored nobody comes in any more and no round begins. */
  close(): Promise<Result<null, Refusal>> {
    if (this.#closed) return Promise.resolve(ok(null))
    // A take-home round is nobody's clock to wait for: closing the room ends it.
    if (this.deadlineMs === null && this.#rounds.isUnderWay) return Promise.resolve(err({ code: 'room/round-open' }))
    this.#closing ??= this.#close().finally(() => {
      this.#closing = null
    })
    return this.#closing
  }

  async #close(): Promise<Result<null, Refusal>> {
    const stored = await this.#store({ kind: 'room-closed', roomId: this.facts.id, atMs: this.#parts.nowMs() })
    if (!stored.ok) return stored
    this.#closed = true
    this.#rounds.stop()
    this.changes.tellEverybody()
    return ok(null)
  }

  get #isClosing(): boolean {
    return this.#closed || this.#closing !== null
  }

  // A student

  /** Came in after the signal of the round; nobody is late where each plays alone. */
  isLate(seat: Seat, round = this.round): boolean {
    if (round === null || round.settings.pace === 'alone') return false
    return round.signalAtMs !== null && round.signalAtMs < seat.joinedAtMs
  }

  askForHelp(seat: Seat, wanted: boolean): void {
    if (seat.asksForHelp === wanted) return
    seat.asksForHelp = wanted
    this.changes.views = true
  }

  /** The real cube of this student shows the start, or no longer. */
  setReady(seat: Seat, roundId: RoundId, ready: boolean): Result<null, Refusal> {
    if (this.#rounds.of(roundId) === null) return err({ code: 'contest/no-such-round' })
    seat.readyFor = ready ? roundId : null
    this.changes.views = true
    this.changes.seats.add(seat.id)
    return ok(null)
  }

  // The rounds

  /** The round that desk and board look at. */
  get round(): Round | null {
    return this.#rounds.shown
  }

  /** Every round that is in memory. */
  get heldRounds(): readonly Round[] {
    return this.#rounds.all
  }

  get roundList(): readonly ListedRound[] {
    return this.#rounds.list
  }

  get nRounds(): number {
    return this.#rounds.nRounds
  }

  /** The round that a student plays: the one of all, or in a take-home room the one that was chosen, or played last. */
  roundOf(seat: Seat): Round | null {
    if (this.deadlineMs === null) return this.round
    const chosen = seat.chosen === null ? null : this.#rounds.of(seat.chosen)
    return chosen ?? this.#rounds.playedLastBy(seat.id) ?? this.#rounds.all[0] ?? null
  }

  heldRound(roundId: RoundId): Round | null {
    return this.#rounds.of(roundId)
  }

  chooseRound(seat: Seat, roundId: RoundId): Result<null, Refusal> {
    if (this.deadlineMs === null) return err({ code: 'room/not-that-kind' })
    if (this.#rounds.of(roundId) === null) return err({ code: 'contest/no-such-round' })
    seat.chosen = roundId
    return ok(null)
  }

  lookAt(roundId: RoundId): Result<null, Refusal> {
    if (this.deadlineMs === null) return err({ code: 'room/not-that-kind' })
    const looks = this.#rounds.lookAt(roundId)
    if (looks.ok) this.changes.views = true
    return looks
  }

  start(number: number): Promise<Result<RoundId, Refusal>> {
    return this.#begin(() => this.#rounds.start(number, this.lesson.settings))
  }

  /** Deals a round for real cubes, without its signal. */
  deal(number: number): Promise<Result<RoundId, Refusal>> {
    return this.#begin(() => this.#rounds.deal(number, this.lesson.settings))
  }

  async #begin(act: () => Promise<Result<RoundId, Refusal>>): Promise<Result<RoundId, Refusal>> {
    if (this.#isClosing) return err({ code: 'room/closed' })
    if (this.takeHome.isWanted) return err({ code: 'room/not-that-kind' })
    const nBefore = this.nRounds
    const begun = await act()
    if (nBefore < this.nRounds) for (const seat of this.seats.values()) seat.asksForHelp = false
    // Also when only the dealing was stored: the desk counts that round.
    this.changes.tellEverybody()
    return begun
  }

  /** Par and ways of a round; null for a moment at its beginning. */
  guideOf(round: Round): Guide | null {
    return this.#rounds.guideOf(round.id)
  }

  setupOf(round: Round): RoundSetup | null {
    return this.#rounds.setupOf(round.id)
  }

  /** Whether the teacher shows par to the class ahead of the end. */
  isParShown(round: Round): boolean {
    return this.#rounds.isParShown(round.id)
  }

  async showPar(roundId: RoundId, isShown: boolean): Promise<Result<null, Refusal>> {
    const shown = await this.#rounds.showPar(roundId, isShown)
    if (shown.ok) this.changes.tellEverybody()
    return shown
  }

  async changeClock(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    if (this.deadlineMs !== null && FOR_ALL_AT_ONCE.has(event.kind)) return err({ code: 'room/not-that-kind' })
    const changed = await this.#rounds.change(roundId, event)
    if (!changed.ok) return changed
    if (event.kind === 'ended' || event.kind === 'voided')
      for (const seat of this.seats.values()) seat.asksForHelp = false
    this.changes.tellEverybody()
    return changed
  }

  async takeTurns(seat: Seat, sent: Omit<TurnsOfSeat, 'seatId' | 'late'>): Promise<Result<TurnsAnswer, Refusal>> {
    const late = this.isLate(seat, this.#rounds.of(sent.roundId))
    const taken = await this.#rounds.takeTurns({ ...sent, seatId: seat.id, late })
    if (!taken.ok) return taken
    this.changes.lanes.add(seat.id)
    // Whoever gets there is not stuck any more.
    if (taken.value.reached !== null) this.askForHelp(seat, false)
    return taken
  }

  async nudge(roundId: RoundId, to: 'all' | readonly SeatId[], nudge: Nudge): Promise<Result<null, Refusal>> {
    const seatIds = to === 'all' ? [...this.seats.keys()] : [...new Set(to)].filter((seatId) => this.seats.has(seatId))
    if (seatIds.length === 0) return err({ code: 'room/no-such-seat' })
    const given = await this.#rounds.nudge(roundId, seatIds, nudge)
    for (const seatId of seatIds) {
      this.changes.seats.add(seatId)
      this.changes.lanes.add(seatId)
    }
    return given
  }

  async handIn(
    seat: Seat,
    roundId: RoundId,
    sent: Omit<TryHandedIn, 'seatId'>,
  ): Promise<Result<{ reached: Reached | null }, Refusal>> {
    const judged = await this.#rounds.handIn(seat, roundId, sent)
    if (!judged.ok) return judged
    this.changes.lanes.add(seat.id)
    this.changes.seats.add(seat.id)
    return ok({ reached: judged.value })
  }
}
