/**
 * How somebody comes into a room and leaves it: the door with its settings and its lock, who waits there, who sits, and
 * under what name. What is shown of it is on the disk; only who waits is not.
 */

import type { RoomId, SeatId, TeacherId } from '../../engine/contest/ids.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { KnockView } from '../../engine/wire/views.ts'
import { newSecret } from '../secrets.ts'
import type { LiveParts } from './parts.ts'
import type { RoomChanges } from './room-changes.ts'
import { type DoorWish, type Knock, RoomDoor } from './room-door.ts'
import { RoomSeats, type Seat } from './room-seats.ts'
import type { StoreEntry } from './store-entry.ts'

/** Who waited, and the seat that they have now; null when they were sent away. */
export type AnsweredKnock = { readonly knock: Knock; readonly seat: Seat | null }

/** A seat, and the secret that opens it again. */
type SeatTaken = { readonly seat: Seat; readonly token: string }

type EntranceParts = {
  readonly live: LiveParts
  readonly roomId: RoomId
  readonly teacherId: TeacherId
  readonly store: StoreEntry
  readonly changes: RoomChanges
  /** Whether the room is closed, or about to be: then nobody comes in any more. */
  readonly isClosing: () => boolean
}

export class RoomEntrance {
  readonly #parts: EntranceParts
  readonly #seats: RoomSeats
  readonly #door: RoomDoor
  #locked = false
  /** Knocks that are being answered, by their identifiers. */
  readonly #answering = new Map<string, Promise<Result<AnsweredKnock, Refusal>>>()

  constructor(parts: EntranceParts, entry: RoomEntry) {
    this.#parts = parts
    this.#seats = new RoomSeats(parts.live, parts.roomId, parts.store)
    this.#door = new RoomDoor(parts.live.newId, entry)
  }

  /** Puts back what the record held, at boot. */
  restore(seats: readonly Seat[], locked: boolean): void {
    this.#seats.restore(seats)
    this.#locked = locked
  }

  get entry(): RoomEntry {
    return this.#door.entry
  }

  get locked(): boolean {
    return this.#locked
  }

  get knocks(): readonly KnockView[] {
    return this.#door.knocks
  }

  get seats(): ReadonlyMap<SeatId, Seat> {
    return this.#seats.all
  }

  /** The roster that names are picked from; null where they are not. */
  get roster(): ClassRoster | null {
    const { rosterId } = this.entry
    return rosterId === null ? null : this.#rosterOnShelf(rosterId)
  }

  #rosterOnShelf(rosterId: string): ClassRoster | null {
    return this.#parts.live.shelf.roster(this.#parts.teacherId, rosterId)
  }

  /** How students come in from now on. Refused with a roster that is not on the teacher's own shelf. */
  async setEntry(entry: RoomEntry): Promise<Result<null, Refusal>> {
    const { rosterId } = entry
    if (rosterId !== null && this.#rosterOnShelf(rosterId) === null) return err({ code: 'shelf/not-yours' })
    const stored = await this.#parts.store({ kind: 'room-entry', roomId: this.#parts.roomId, entry })
    if (!stored.ok) return stored
    this.#door.entry = entry
    this.#parts.changes.views = true
    return stored
  }

  async lock(locked: boolean): Promise<Result<null, Refusal>> {
    const stored = await this.#parts.store({ kind: 'room-locked', roomId: this.#parts.roomId, locked })
    if (!stored.ok) return stored
    this.#locked = locked
    this.#parts.changes.views = true
    return ok(null)
  }

  /** Comes in, or waits at the door. @param ownToken the page's own secret; without one it is made here */
  async comeIn(
    wish: DoorWish,
    connectionId: string,
    ownToken = newSecret(),
  ): Promise<Result<({ kind: 'in' } & SeatTaken) | { kind: 'waiting' }, Refusal>> {
    if (this.#parts.isClosing()) return err({ code: 'room/closed' })
    const asked = this.#door.ask(wish, ownToken, this.#seats, this.roster, this.#parts.live.newRandom)
    if (this.locked && !(asked.ok && asked.value.kind === 'wait' && asked.value.moves !== null))
      return err({ code: 'room/locked' })
    if (!asked.ok) return asked
    if (asked.value.kind === 'wait') {
      const waits = this.#door.wait(asked.value, ownToken, connectionId)
      if (!waits.ok) return waits
      this.#parts.changes.views = true
      return ok({ kind: 'waiting' })
    }
    const joined = await this.#join({ ...asked.value, pretend: false, token: ownToken })
    return joined.ok ? ok({ kind: 'in', ...joined.value }) : joined
  }

  /** A simulated student comes in; no door is closed to them. */
  seatPretender(name: string, token: string | undefined): Promise<Result<SeatTaken, Refusal>> {
    if (this.#parts.isClosing()) return Promise.resolve(err({ code: 'room/closed' }))
    return this.#join({ name, pupilId: null, pretend: true, token })
  }

  async #join(wish: Parameters<RoomSeats['join']>[0]): Promise<Result<SeatTaken, Refusal>> {
    const joined = await this.#seats.join(wish)
    if (joined.ok) this.#parts.changes.views = true
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
    if (this.#parts.isClosing()) return err({ code: 'room/closed' })
    const seated = await this.#seatFor(knock)
    if (!seated.ok) return seated
    this.leaveDoor(knock.connectionId)
    this.#parts.changes.views = true
    return ok({ knock, seat: seated.value })
  }

  async #seatFor({ moves, name, pupilId, token }: Knock): Promise<Result<Seat, Refusal>> {
    if (moves !== null) return this.#seats.move(moves, token)
    const joined = await this.#seats.join({ name, pupilId, pretend: false, token })
    return joined.ok ? ok(joined.value.seat) : joined
  }

  /** The room is closed: nobody waits at its door any more. @returns all who did */
  emptyDoor(): readonly Knock[] {
    this.#parts.changes.views = true
    return this.#door.leaveAll()
  }

  /** Whoever waited on this connection is gone. */
  leaveDoor(connectionId: string): void {
    if (this.#door.leave(connectionId)) this.#parts.changes.views = true
  }

  seatOfTokenHash(tokenHash: string): Seat | null {
    return this.#seats.ofTokenHash(tokenHash)
  }

  async rename(seatId: SeatId, typedName: string): Promise<Result<null, Refusal>> {
    const renamed = await this.#seats.rename(seatId, typedName)
    if (renamed.ok) this.#parts.changes.tellEverybody()
    return renamed
  }

  async remove(seatId: SeatId): Promise<Result<Seat, Refusal>> {
    const removed = await this.#seats.remove(seatId)
    if (removed.ok) this.#parts.changes.views = true
    return removed
  }
}
