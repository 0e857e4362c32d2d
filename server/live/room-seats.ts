/**
 * The seats of a room as they are on the disk: nobody is shown before they are stored as having come in, nobody is gone
 * before that is stored. What is on its way only takes up room: a place among the most, and a name.
 */

import type { RoomId, SeatId } from '../../engine/contest/ids.ts'
import { ROOM_SEATS_MAX } from '../../engine/contest/limits.ts'
import { nameKey, readStudentName } from '../../engine/contest/student-name.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { hashSecret, newSecret } from '../secrets.ts'
import type { LiveParts } from './parts.ts'
import type { StoreEntry } from './store-entry.ts'

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

export class RoomSeats {
  readonly #parts: LiveParts
  readonly #roomId: RoomId
  readonly #store: StoreEntry
  #all = new Map<SeatId, Seat>()
  readonly #ofTokenHash = new Map<string, Seat>()
  #nComingIn = 0
  /** Keys of the names that are on their way to the disk. */
  readonly #claimedNames = new Set<string>()
  readonly #leaving = new Map<SeatId, Promise<Result<Seat, Refusal>>>()

  constructor(parts: LiveParts, roomId: RoomId, store: StoreEntry) {
    this.#parts = parts
    this.#roomId = roomId
    this.#store = store
  }

  /** In the order in which they came in, which a restart keeps. */
  get all(): ReadonlyMap<SeatId, Seat> {
    return this.#all
  }

  ofTokenHash(tokenHash: string): Seat | null {
    return this.#ofTokenHash.get(tokenHash) ?? null
  }

  hasPretenders(): boolean {
    for (const seat of this.#all.values()) if (seat.pretend) return true
    return false
  }

  restore(seats: readonly Seat[]): void {
    for (const seat of seats) this.#seat(seat)
  }

  /** @param token the page's own secret; without one it is made here */
  async join(
    typedName: string,
    pretend: boolean,
    token = newSecret(),
  ): Promise<Result<{ seat: Seat; token: string }, Refusal>> {
    if (this.#all.size + this.#nComingIn >= ROOM_SEATS_MAX) return err({ code: 'room/full', max: ROOM_SEATS_MAX })
    const name = this.#freeName(typedName)
    if (!name.ok) return name
    const seat: Seat = {
      id: this.#parts.newId() as SeatId,
      name: name.value,
      tokenHash: hashSecret(token),
      pretend,
      joinedAtMs: this.#parts.nowMs(),
      connection: null,
      asksForHelp: false,
    }
    this.#nComingIn++
    const { id: seatId, tokenHash, joinedAtMs: atMs } = seat
    const entry = {
      kind: 'seat-joined',
      seatId,
      roomId: this.#roomId,
      name: seat.name,
      tokenHash,
      pretend,
      atMs,
    } as const
    const stored = await this.#storeName(seat.name, () => this.#store(entry)).finally(() => {
      this.#nComingIn--
    })
    if (!stored.ok) return stored
    this.#seat(seat)
    return ok({ seat, token })
  }

  async rename(seatId: SeatId, typedName: string): Promise<Result<null, Refusal>> {
    const seat = this.#all.get(seatId)
    if (seat === undefined || this.#leaving.has(seatId)) return err({ code: 'room/no-such-seat' })
    const name = this.#freeName(typedName, seatId)
    if (!name.ok) return name
    const entry = { kind: 'seat-renamed', seatId, name: name.value } as const
    const stored = await this.#storeName(name.value, () => this.#store(entry))
    if (stored.ok) seat.name = name.value
    return stored
  }

  /** Gives the seat up; its name leaves the record, its turns stay without one. Removed twice at once is removed once. */
  remove(seatId: SeatId): Promise<Result<Seat, Refusal>> {
    const underWay = this.#leaving.get(seatId)
    if (underWay !== undefined) return underWay
    const seat = this.#all.get(seatId)
    if (seat === undefined) return Promise.resolve(err({ code: 'room/no-such-seat' }))
    const leaving = this.#remove(seat).finally(() => this.#leaving.delete(seatId))
    this.#leaving.set(seatId, leaving)
    return leaving
  }

  async #remove(seat: Seat): Promise<Result<Seat, Refusal>> {
    const stored = await this.#store({ kind: 'seat-removed', seatId: seat.id, atMs: this.#parts.nowMs() })
    if (!stored.ok) return stored
    this.#all.delete(seat.id)
    this.#ofTokenHash.delete(seat.tokenHash)
    return ok(seat)
  }

  #seat(seat: Seat): void {
    const last = [...this.#all.values()].at(-1)
    this.#all.set(seat.id, seat)
    this.#ofTokenHash.set(seat.tokenHash, seat)
    if (last === undefined || inOrder(last, seat) < 0) return
    this.#all = new Map([...this.#all.values()].sort(inOrder).map((each) => [each.id, each]))
  }

  #freeName(typedName: string, except?: SeatId): Result<string, Refusal> {
    const name = readStudentName(typedName)
    if (!name.ok) return name
    const key = nameKey(name.value)
    if (this.#claimedNames.has(key)) return err({ code: 'name/taken' })
    for (const seat of this.#all.values()) {
      if (seat.id !== except && nameKey(seat.name) === key) return err({ code: 'name/taken' })
    }
    return name
  }

  /** Keeps the name from everybody else while it is on its way. */
  async #storeName<T>(name: string, store: () => Promise<T>): Promise<T> {
    const key = nameKey(name)
    this.#claimedNames.add(key)
    try {
      return await store()
    } finally {
      this.#claimedNames.delete(key)
    }
  }
}

/** The order of the record: two that come in within one millisecond stand alike before and after a restart. */
function inOrder(a: Seat, b: Seat): number {
  return a.joinedAtMs - b.joinedAtMs || (a.id < b.id ? -1 : 1)
}
