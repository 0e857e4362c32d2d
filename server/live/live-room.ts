/** A room while it lives: what it is, its door, its seats, its lesson and its rounds. All that is read here is on the disk. */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { TryHandedIn } from '../../engine/contest/hand-in.ts'
import type { RoomCode, RoomId, RoundId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import { TAKE_HOME_MS_MAX } from '../../engine/contest/limits.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Reached, Round } from '../../engine/contest/round-state.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { KnockView } from '../../engine/wire/views.ts'
import { newSecret } from '../secrets.ts'
import type { PlanUnderWay, RoundOnRecord } from '../store/record.ts'
import { leavesAStart } from './deal-start.ts'
import type { LiveParts } from './parts.ts'
import { type DoorWish, type Knock, RoomDoor } from './room-door.ts'
import { RoomLesson } from './room-lesson.ts'
import type { Standing, TurnsOfSeat } from './room-round.ts'
import { type ListedRound, RoomRounds } from './room-rounds.ts'
import { RoomSeats, type Seat } from './room-seats.ts'
import { RoomShowing } from './room-showing.ts'
import type { Guide, RoundSetup } from './round-guide.ts'
import { type StoreEntry, storeInRoom } from './store-entry.ts'
import { tookPart } from './took-part.ts'

/** What has changed since the last tick. */
export type Changes = {
  /** The views of desk and board. */
  views: boolean
  /** Those of all benches, */
  benches: boolean
  /** or only of these. */
  readonly seats: Set<SeatId>
  /** The lanes and cubes of these seats. */
  readonly lanes: Set<SeatId>
  /** How far the showing has gone. */
  showing: boolean
}

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

/** Who waited, and the seat that they have now; null when they were sent away. */
export type AnsweredKnock = { readonly knock: Knock; readonly seat: Seat | null }

export class LiveRoom {
  readonly facts: RoomFacts
  readonly changes: Changes = { views: false, benches: false, seats: new Set(), lanes: new Set(), showing: false }
  readonly showing = new RoomShowing()
  locked = false
  closed = false
  /** Rises with every tick that is sent. */
  version = 0
  /** Until when a take-home room is open; null in a room where all play at once. */
  deadlineMs: number | null
  readonly #parts: LiveParts
  readonly #store: StoreEntry
  readonly #seats: RoomSeats
  readonly #door: RoomDoor
  readonly #lesson: RoomLesson
  readonly #rounds: RoomRounds
  #closing: Promise<Result<null, Refusal>> | null = null
  /** Wishes to make this a take-home room, carried out one after the other. */
  #opening: Promise<unknown> = Promise.resolve()
  #nOpenings = 0
  /** Knocks that are being answered, by their identifiers. */
  readonly #answering = new Map<string, Promise<Result<AnsweredKnock, Refusal>>>()

  constructor(parts: LiveParts, facts: RoomFacts, { settings, entry, plan, deadlineMs }: RoomState) {
    this.#parts = parts
    this.facts = facts
    this.deadlineMs = deadlineMs
    this.#store = storeInRoom(parts, facts.id)
    this.#seats = new RoomSeats(parts, facts.id, this.#store)
    this.#door = new RoomDoor(parts.newId, entry)
    this.#lesson = new RoomLesson(facts.id, this.#store, settings, plan)
    this.#rounds = new RoomRounds(parts, facts.id, this.#store, () => this.#tellEverybody())
  }

  /** Puts back what the record held, at boot. */
  restore(state: {
    seats: readonly Seat[]
    rounds: readonly RoundOnRecord[]
    held: readonly { standing: Standing; parShown: boolean }[]
    locked: boolean
  }): void {
    this.#seats.restore(state.seats)
    this.#rounds.restore(state.rounds, state.held)
    this.locked = state.locked
  }

  // The door and the seats

  get entry(): RoomEntry {
    return this.#door.entry
  }

  get knocks(): readonly KnockView[] {
    return this.#door.knocks
  }

  /** The roster that names are picked from; null where they are not. */
  get roster(): ClassRoster | null {
    const { rosterId } = this.entry
    return rosterId === null ? null : this.#parts.shelf.roster(this.facts.teacherId, rosterId)
  }

  async setEntry(entry: RoomEntry): Promise<Result<null, Refusal>> {
    const { rosterId } = entry
    if (rosterId !== null && this.#parts.shelf.roster(this.facts.teacherId, rosterId) === null)
      return err({ code: 'shelf/not-yours' })
    const stored = await this.#store({ kind: 'room-entry', roomId: this.facts.id, entry })
    if (!stored.ok) return stored
    this.#door.entry = entry
    this.changes.views = true
    return stored
  }

  get seats(): ReadonlyMap<SeatId, Seat> {
    return this.#seats.all
  }

  /** Comes in, or waits at the door. @param ownToken the page's own secret; without one it is made here */
  async comeIn(
    wish: DoorWish,
    connectionId: string,
    ownToken = newSecret(),
  ): Promise<Result<{ kind: 'in'; seat: Seat; token: string } | { kind: 'waiting' }, Refusal>> {
    if (this.#isClosing) return err({ code: 'room/closed' })
    const asked = this.#door.ask(wish, ownToken, this.#seats, this.roster, this.#parts.newRandom)
    if (this.locked && !(asked.ok && asked.value.kind === 'wait' && asked.value.moves !== null))
      return err({ code: 'room/locked' })
    if (!asked.ok) return asked
    if (asked.value.kind === 'wait') {
      const waits = this.#door.wait(asked.value, ownToken, connectionId)
      if (!waits.ok) return waits
      this.changes.views = true
      return ok({ kind: 'waiting' })
    }
    const joined = await this.#join({ ...asked.value, pretend: false, token: ownToken })
    return joined.ok ? ok({ kind: 'in', ...joined.value }) : joined
  }

  /** A simulated student comes in; no door is closed to them. */
  seatPretender(name: string, token: string | undefined): Promise<Result<{ seat: Seat; token: string }, Refusal>> {
    if (this.#isClosing) return Promise.resolve(err({ code: 'room/closed' }))
    return this.#join({ name, pupilId: null, pretend: true, token })
  }

  async #join(wish: Parameters<RoomSeats['join']>[0]): Promise<Result<{ seat: Seat; token: string }, Refusal>> {
    const joined = await this.#seats.join(wish)
    if (joined.ok) this.changes.views = true
    return joined
  }

  /**
   * The teacher opens the door, or sends away. @returns who waited, and the seat that they have now: null when they were
   * sent away. Refused while the name is no longer free; then they go on waiting. Of two desks that answer at once the
   * first one decides.
   */
  answerKnock(knockId: string, letIn: boolean): Promise<Result<AnsweredKnock, Refusal>> {
    const underWay = this.#answering.get(knockId)
    if (underWay !== undefined) return underWay
    const answering = this.#answerKnock(knockId, letIn).finally(() => this.#answering.delete(knockId))
    this.#answering.set(knockId, answering)
    return answering
  }

  async #answerKnock(knockId: string, letIn: boolean): Promise<Result<AnsweredKnock, Refusal>> {
    const knock = this.#door.find(knockId)
    if (knock === null) return err({ code: 'room/nobody-there' })
    if (!letIn) {
      this.leaveDoor(knock.connectionId)
      return ok({ knock, seat: null })
    }
    if (this.#isClosing) return err({ code: 'room/closed' })
    const seated = await this.#seatFor(knock)
    if (!seated.ok) return seated
    this.leaveDoor(knock.connectionId)
    this.changes.views = true
    return ok({ knock, seat: seated.value })
  }

  async #seatFor({ moves, name, pupilId, token }: Knock): Promise<Result<Seat, Refusal>> {
    if (moves !== null) return this.#seats.move(moves, token)
    const joined = await this.#seats.join({ name, pupilId, pretend: false, token })
    return joined.ok ? ok(joined.value.seat) : joined
  }

  /** The room is closed: nobody waits at its door any more. @returns all who did */
  emptyDoor(): readonly Knock[] {
    this.changes.views = true
    return this.#door.leaveAll()
  }

  /** Whoever waited on this connection is gone. */
  leaveDoor(connectionId: string): void {
    if (this.#door.leave(connectionId)) this.changes.views = true
  }

  seatOfTokenHash(tokenHash: string): Seat | null {
    return this.#seats.ofTokenHash(tokenHash)
  }

  hasPretenders(): boolean {
    return this.#seats.hasPretenders()
  }

  /** Came in after the signal of the round; nobody is late where each plays alone. */
  isLate(seat: Seat, round = this.round): boolean {
    if (round === null || round.settings.pace === 'alone') return false
    return round.signalAtMs !== null && round.signalAtMs < seat.joinedAtMs
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

  /** The real cube of this student shows the start, or no longer. */
  setReady(seat: Seat, roundId: RoundId, ready: boolean): Result<null, Refusal> {
    if (this.#rounds.of(roundId) === null) return err({ code: 'contest/no-such-round' })
    seat.readyFor = ready ? roundId : null
    this.changes.views = true
    this.changes.seats.add(seat.id)
    return ok(null)
  }

  // The lesson

  get settings(): RoundSettings {
    return this.#lesson.settings
  }

  get plan(): PlanUnderWay | null {
    return this.#lesson.plan
  }

  set(settings: RoundSettings): Promise<Result<null, Refusal>> {
    return this.#thenShow(this.#lesson.set(settings))
  }

  usePlan(plan: LessonPlan | null): Promise<Result<null, Refusal>> {
    return this.#thenShow(this.#lesson.use(plan))
  }

  goToPart(at: number): Promise<Result<null, Refusal>> {
    return this.#thenShow(this.#lesson.goTo(at))
  }

  async #thenShow(done: Promise<Result<null, Refusal>>): Promise<Result<null, Refusal>> {
    const result = await done
    this.changes.views = true
    return result
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
    this.closed = true
    this.#rounds.stop()
    this.#tellEverybody()
    return ok(null)
  }

  get #isClosing(): boolean {
    return this.closed || this.#closing !== null
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
    return this.#begin(() => this.#rounds.start(number, this.settings))
  }

  /** Deals a round for real cubes, without its signal. */
  deal(number: number): Promise<Result<RoundId, Refusal>> {
    return this.#begin(() => this.#rounds.deal(number, this.settings))
  }

  async #begin(act: () => Promise<Result<RoundId, Refusal>>): Promise<Result<RoundId, Refusal>> {
    if (this.#isClosing) return err({ code: 'room/closed' })
    if (this.deadlineMs !== null || this.#nOpenings > 0) return err({ code: 'room/not-that-kind' })
    const nBefore = this.nRounds
    const begun = await act()
    if (nBefore < this.nRounds) for (const seat of this.seats.values()) seat.asksForHelp = false
    // Also when only the dealing was stored: the desk counts that round.
    this.#tellEverybody()
    return begun
  }

  /**
   * Makes this a take-home room: all rounds are open at once, for each to play alone, until the deadline. Where this stopped
   * half way it goes on when the same is asked again; anything else is refused once it has begun.
   */
  takeHome(rounds: readonly RoundSettings[], deadlineMs: number): Promise<Result<null, Refusal>> {
    this.#nOpenings++
    const opened = this.#opening
      .then(() => this.#takeHome(rounds, deadlineMs))
      .finally(() => {
        this.#nOpenings--
      })
    this.#opening = opened.catch(() => undefined)
    return opened
  }

  async #takeHome(rounds: readonly RoundSettings[], deadlineMs: number): Promise<Result<null, Refusal>> {
    const nowMs = this.#parts.nowMs()
    if (this.#isClosing) return err({ code: 'room/closed' })
    if (deadlineMs <= nowMs || nowMs + TAKE_HOME_MS_MAX < deadlineMs) return err({ code: 'room/bad-deadline' })
    const isUsed =
      this.deadlineMs === null
        ? this.nRounds > 0 || this.#rounds.isUnderWay
        : this.deadlineMs !== deadlineMs || !this.#rounds.areFirstOf(rounds)
    if (isUsed) return err({ code: 'room/already-used' })
    for (const each of rounds) if (!(await leavesAStart(each))) return err({ code: 'room/no-such-start' })
    const stored = await this.#store({ kind: 'room-deadline', roomId: this.facts.id, deadlineMs })
    if (!stored.ok) return stored
    this.deadlineMs = deadlineMs
    const opened = await this.#rounds.openAll(rounds, deadlineMs)
    this.#tellEverybody()
    return opened
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
    if (shown.ok) this.#tellEverybody()
    return shown
  }

  async changeClock(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    if (this.deadlineMs !== null && FOR_ALL_AT_ONCE.has(event.kind)) return err({ code: 'room/not-that-kind' })
    const changed = await this.#rounds.change(roundId, event)
    if (!changed.ok) return changed
    if (event.kind === 'ended' || event.kind === 'voided')
      for (const seat of this.seats.values()) seat.asksForHelp = false
    this.#tellEverybody()
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
    const round = this.#rounds.of(roundId)
    // Who came after the end had no part in it.
    if (round !== null && !tookPart(round, seat)) return err({ code: 'contest/round-over' })
    const judged = await this.#rounds.handIn(roundId, { ...sent, seatId: seat.id })
    if (!judged.ok) return judged
    this.changes.lanes.add(seat.id)
    this.changes.seats.add(seat.id)
    return judged
  }

  #tellEverybody(): void {
    this.changes.views = true
    this.changes.benches = true
  }
}
