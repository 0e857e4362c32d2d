/**
 * A room while it lives: its seats, its settings and its round.
 *
 * The round is held twice. `applied` has everything that was accepted; `durable` only what is on the disk. Both are made
 * by the same pure functions from the same events, `durable` when the record says so. Whoever is shown or told anything is
 * shown `durable`, so a crash can never undo what somebody has seen. When the disk refuses, `applied` falls back to it.
 */

import { type ClockEvent, changeClock } from '../../engine/contest/change-clock.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import { COUNTDOWN_MS, ROOM_ROUNDS_MAX, ROOM_SEATS_MAX } from '../../engine/contest/limits.ts'
import { isOpen } from '../../engine/contest/round-clock.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { aNewRound, type Round } from '../../engine/contest/round-state.ts'
import { nameKey, readStudentName } from '../../engine/contest/student-name.ts'
import { playSteps, type TurnsAnswer, type TurnsSent, takeTurns } from '../../engine/contest/take-turns.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import { casesLeaveAStart, drawStart } from '../../engine/method/draw-start.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { hashSecret, newSecret } from '../secrets.ts'
import { type Entry, type Outcome, SavingPaused } from '../store/record.ts'
import type { LiveParts } from './parts.ts'

export type Seat = {
  readonly id: SeatId
  name: string
  readonly tokenHash: string
  readonly pretend: boolean
  readonly joinedAtMs: number
  /** Identifier of the connection that holds the seat now; the newest always wins. */
  connection: string | null
  asksForHelp: boolean
}

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
  readonly seats = new Map<SeatId, Seat>()
  readonly changes: Changes = { views: false, benches: false, lanes: new Set() }
  settings: RoundSettings
  locked = false
  closed = false
  nRounds = 0
  /** Rises with every tick that is sent. */
  version = 0
  readonly #parts: LiveParts
  #applied: Round | null = null
  #durable: Round | null = null
  #nClockEvents = 0
  readonly #seatOfTokenHash = new Map<string, Seat>()
  #starting: Promise<Result<RoundId, Refusal>> | null = null

  constructor(parts: LiveParts, facts: RoomFacts, settings: RoundSettings) {
    this.#parts = parts
    this.facts = facts
    this.settings = settings
  }

  /** The round as it is on the disk: the only one that may be shown. */
  get round(): Round | null {
    return this.#durable
  }

  /** Puts back what the record held, at boot. */
  restore(state: {
    seats: readonly Seat[]
    round: Round | null
    nClockEvents: number
    nRounds: number
    locked: boolean
  }): void {
    for (const seat of state.seats) this.#seat(seat)
    this.#applied = state.round
    this.#durable = state.round
    this.#nClockEvents = state.nClockEvents
    this.nRounds = state.nRounds
    this.locked = state.locked
  }

  // Seats

  async join(typedName: string, pretend = false): Promise<Result<{ seat: Seat; token: string }, Refusal>> {
    if (this.closed) return err({ code: 'room/closed' })
    if (this.locked && !pretend) return err({ code: 'room/locked' })
    if (this.seats.size >= ROOM_SEATS_MAX) return err({ code: 'room/full', max: ROOM_SEATS_MAX })
    const name = this.#freeName(typedName)
    if (!name.ok) return name
    const token = newSecret()
    const seat: Seat = {
      id: this.#parts.newId() as SeatId,
      name: name.value,
      tokenHash: hashSecret(token),
      pretend,
      joinedAtMs: this.#parts.nowMs(),
      connection: null,
      asksForHelp: false,
    }
    // Seated before the commit, so that two of one name cannot slip in together; taken out again should the disk refuse.
    this.#seat(seat)
    const { id: seatId, tokenHash, joinedAtMs: atMs } = seat
    const stored = await this.#store({
      kind: 'seat-joined',
      seatId,
      roomId: this.facts.id,
      name: seat.name,
      tokenHash,
      pretend,
      atMs,
    })
    if (!stored.ok) {
      this.#unseat(seat)
      return stored
    }
    this.changes.views = true
    return ok({ seat, token })
  }

  seatOfTokenHash(tokenHash: string): Seat | null {
    return this.#seatOfTokenHash.get(tokenHash) ?? null
  }

  /** Came in after the signal of the round that is shown. */
  isLate(seat: Seat): boolean {
    const clock = this.#durable?.clock
    return clock !== undefined && 'startsAtMs' in clock && clock.startsAtMs < seat.joinedAtMs
  }

  async rename(seatId: SeatId, typedName: string): Promise<Result<null, Refusal>> {
    const seat = this.seats.get(seatId)
    if (seat === undefined) return err({ code: 'room/no-such-seat' })
    const name = this.#freeName(typedName, seatId)
    if (!name.ok) return name
    const stored = await this.#store({ kind: 'seat-renamed', seatId, name: name.value })
    if (!stored.ok) return stored
    seat.name = name.value
    this.changes.views = true
    this.changes.benches = true
    return ok(null)
  }

  /** Gives the seat up; its name leaves the record, its turns stay without one. */
  async remove(seatId: SeatId): Promise<Result<Seat, Refusal>> {
    const seat = this.seats.get(seatId)
    if (seat === undefined) return err({ code: 'room/no-such-seat' })
    this.#unseat(seat)
    this.changes.views = true
    const stored = await this.#store({ kind: 'seat-removed', seatId, atMs: this.#parts.nowMs() })
    if (!stored.ok) {
      this.#seat(seat)
      return stored
    }
    return ok(seat)
  }

  #seat(seat: Seat): void {
    this.seats.set(seat.id, seat)
    this.#seatOfTokenHash.set(seat.tokenHash, seat)
  }

  #unseat(seat: Seat): void {
    this.seats.delete(seat.id)
    this.#seatOfTokenHash.delete(seat.tokenHash)
  }

  askForHelp(seat: Seat, wanted: boolean): void {
    if (seat.asksForHelp === wanted) return
    seat.asksForHelp = wanted
    this.changes.views = true
  }

  #freeName(typedName: string, except?: SeatId): Result<string, Refusal> {
    const name = readStudentName(typedName)
    if (!name.ok) return name
    const key = nameKey(name.value)
    for (const seat of this.seats.values()) {
      if (seat.id !== except && nameKey(seat.name) === key) return err({ code: 'name/taken' })
    }
    return name
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

  async close(): Promise<Result<null, Refusal>> {
    const round = this.#applied
    if (round !== null && (round.clock.phase === 'running' || round.clock.phase === 'paused'))
      return err({ code: 'room/round-open' })
    const stored = await this.#store({ kind: 'room-closed', roomId: this.facts.id, atMs: this.#parts.nowMs() })
    if (!stored.ok) return stored
    this.closed = true
    this.changes.views = true
    this.changes.benches = true
    return ok(null)
  }

  // Rounds

  /**
   * Deals a start and gives the signal in COUNTDOWN_MS.
   *
   * @param number the round that the desk means; pressing twice, or from two tabs, starts one round
   */
  start(number: number): Promise<Result<RoundId, Refusal>> {
    if (number === this.nRounds && this.#applied !== null) return this.#giveSignal(this.#applied)
    this.#starting ??= this.#start(number).finally(() => {
      this.#starting = null
    })
    return this.#starting
  }

  async #start(number: number): Promise<Result<RoundId, Refusal>> {
    if (this.closed) return err({ code: 'room/closed' })
    if (number !== this.nRounds + 1) return err({ code: 'contest/wrong-phase', phase: 'other-round' })
    if (number > ROOM_ROUNDS_MAX) return err({ code: 'room/too-many-rounds', max: ROOM_ROUNDS_MAX })
    if (this.#applied !== null && isOpen(this.#applied.clock)) return err({ code: 'room/round-open' })
    const { settings } = this
    if (this.#hasPretenders() && settings.from < 4) return err({ code: 'room/pretend-stage' })
    const span = { from: settings.from, to: settings.to }
    const start = drawStart({
      span,
      random: this.#parts.newRandom(),
      ...(settings.cases === null ? {} : { cases: settings.cases }),
    })
    const id = this.#parts.newId() as RoundId
    const drawn = aNewRound({ id, number, settings, start })
    const drawnAtMs = this.#parts.nowMs()
    const stored = await this.#store({
      kind: 'round-drawn',
      roundId: id,
      roomId: this.facts.id,
      number,
      settings,
      start: formatStickers(start),
      atMs: drawnAtMs,
    })
    if (!stored.ok) return stored
    this.#applied = drawn
    this.#durable = drawn
    this.#nClockEvents = 0
    this.nRounds = number
    for (const seat of this.seats.values()) seat.asksForHelp = false
    return this.#giveSignal(drawn)
  }

  async #giveSignal(round: Round): Promise<Result<RoundId, Refusal>> {
    if (round.clock.phase !== 'ready') return ok(round.id)
    const started = await this.changeClock(round.id, {
      kind: 'started',
      startsAtMs: this.#parts.nowMs() + COUNTDOWN_MS,
    })
    return started.ok ? ok(round.id) : started
  }

  /** Pause, resume, add time, end, void, outage: applied, stored, then shown. Asking again for what is so is no fault. */
  async changeClock(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    const round = this.#applied
    if (round === null || round.id !== roundId) return err({ code: 'contest/no-such-round' })
    if (isAlreadySo(round, event)) return ok(null)
    const changed = changeClock(round, event)
    if (!changed.ok) return changed
    this.#applied = changed.value
    const order = this.#nClockEvents++
    const stored = await this.#store({ kind: 'clock-event', roundId, order, event, atMs: this.#parts.nowMs() })
    if (!stored.ok) {
      this.#nClockEvents = Math.min(this.#nClockEvents, order)
      return stored
    }
    if (this.#durable?.id === roundId) {
      const durable = changeClock(this.#durable, event)
      if (durable.ok) this.#durable = durable.value
    }
    this.changes.views = true
    this.changes.benches = true
    return ok(null)
  }

  /** Checks and stores the turns of a seat; resolves when they are on the disk. */
  async takeTurns(
    seat: Seat,
    sent: Omit<TurnsSent, 'seatId' | 'late' | 'atMs'> & { roundId: RoundId },
  ): Promise<Result<TurnsAnswer, Refusal>> {
    const round = this.#applied
    if (round === null || round.id !== sent.roundId) return err({ code: 'contest/no-such-round' })
    const event: TurnsSent = { ...sent, seatId: seat.id, late: this.isLate(seat), atMs: this.#parts.nowMs() }
    const taken = takeTurns(round, event)
    if (!taken.ok) return taken
    const { fresh, answer } = taken.value
    if (fresh === null) return this.#answerWhenDurable(sent.roundId, seat.id, answer)
    this.#applied = taken.value.round
    const momentMs = momentOf(round, event.atMs)
    const stored = await this.#store({
      kind: 'steps',
      roundId: round.id,
      seatId: seat.id,
      tryNumber: fresh.tryNumber,
      from: fresh.from,
      steps: fresh.steps,
      late: event.late,
      momentMs,
      atMs: event.atMs,
    })
    if (!stored.ok) return stored
    if (this.#durable?.id === round.id) {
      const durable = playSteps(this.#durable, { ...event, from: fresh.from, steps: fresh.steps, momentMs })
      if (durable.ok) this.#durable = durable.value.round
    }
    this.changes.lanes.add(seat.id)
    return ok(answer)
  }

  /** Steps that were sent again may still be on their way to the disk; their second answer waits with the first. */
  async #answerWhenDurable(
    roundId: RoundId,
    seatId: SeatId,
    answer: TurnsAnswer,
  ): Promise<Result<TurnsAnswer, Refusal>> {
    const durable = this.#durable?.id === roundId ? this.#durable.players.get(seatId) : undefined
    const isDurable =
      durable !== undefined &&
      (answer.tryNumber < durable.current.number || answer.held <= durable.current.steps.length)
    if (isDurable) return ok(answer)
    const stored = await this.#store({ kind: 'alive', atMs: this.#parts.nowMs() })
    return stored.ok ? ok(answer) : stored
  }

  /** Stores an entry. When that fails, what was accepted but not stored is given up; the benches still hold it and send it again. */
  async #store(entry: Entry): Promise<Result<Outcome, Refusal>> {
    try {
      const outcome = await this.#parts.record.write(entry)
      if (outcome === 'stored') return ok(outcome)
      this.#applied = this.#durable
      this.#parts.log.error({ room: this.facts.id, entry: entry.kind, outcome }, 'the record disagrees')
      return err(outcome === 'closed' ? { code: 'contest/round-over' } : { code: 'server/fault' })
    } catch (fault) {
      if (!(fault instanceof SavingPaused)) throw fault
      this.#applied = this.#durable
      this.#parts.log.error({ room: this.facts.id, entry: entry.kind, reason: fault.message }, 'saving is paused')
      return err({ code: 'store/saving-paused' })
    }
  }

  #hasPretenders(): boolean {
    for (const seat of this.seats.values()) if (seat.pretend) return true
    return false
  }
}

function momentOf(round: Round, atMs: number): number {
  return round.clock.phase === 'running' ? Math.max(0, atMs - round.clock.startsAtMs) : 0
}

/** Two tabs of one desk, or a finger that presses twice: the second wish finds its work done. */
function isAlreadySo(round: Round, event: ClockEvent): boolean {
  const { phase } = round.clock
  if (event.kind === 'paused') return phase === 'paused'
  if (event.kind === 'resumed') return phase === 'running'
  if (event.kind === 'ended') return phase === 'ended'
  return event.kind === 'voided' && phase === 'void'
}
