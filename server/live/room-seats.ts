/**
 * The seats of a room as they are on the disk: nobody is shown before they are stored as having come in, nobody is gone
 * before that is stored. What is on its way only takes up room: a place among the most, and a name.
 */

import type { RoomId, RoundId, SeatId } from '../../engine/contest/ids.ts'
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
  /** Another device may take the seat over with a token of its own. */
  tokenHash: string
  readonly pretend: boolean
  /** Of the roster; null for whoever came in under a name of their own. */
  readonly pupilId: string | null
  readonly joinedAtMs: number
  /** Identifier of the connection that holds the seat now; the newest always wins. */
  connection: string | null
  asksForHelp: boolean
  /** The round whose start the real cube of this student shows; null for none. */
  readyFor: RoundId | null
  /** In a take-home room: the round that this student plays. */
  chosen: RoundId | null
  /** How long a message takes to the page and back; null when it is not known. */
  delayMs: number | null
}

/** What a seat is when nobody sits there yet, or after a restart. */
export const AN_EMPTY_SEAT = {
  connection: null,
  asksForHelp: false,
  readyFor: null,
  chosen: null,
  delayMs: null,
} as const

/** Who wants a seat. */
export type SeatWish = {
  /** As it was typed, picked or given; checked here. */
  readonly name: string
  readonly pupilId: string | null
  readonly pretend: boolean
  /** Made by the page; left out, the server makes one. */
  readonly token: string | undefined
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

  restore(seats: readonly Seat[]): void {
    for (const seat of seats) this.#seat(seat)
  }

  async join({
    name: typedName,
    pupilId,
    pretend,
    token = newSecret(),
  }: SeatWish): Promise<Result<{ seat: Seat; token: string }, Refusal>> {
    if (this.#all.size + this.#nComingIn >= ROOM_SEATS_MAX) return err({ code: 'room/full', max: ROOM_SEATS_MAX })
    const name = this.#freeName(typedName)
    if (!name.ok) return name
    const seat: Seat = {
      ...AN_EMPTY_SEAT,
      id: this.#parts.newId() as SeatId,
      name: name.value,
      tokenHash: hashSecret(token),
      pretend,
      pupilId,
      joinedAtMs: this.#parts.nowMs(),
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
      pupilId,
      atMs,
    } as const
    const stored = await this.#storeName(seat.name, () => this.#store(entry)).finally(() => {
      this.#nComingIn--
    })
    if (!stored.ok) return stored
    this.#seat(seat)
    return ok({ seat, token })
  }

  /** Another device takes the seat over: what the one before kept opens nothing any more. */
  async move(seatId: SeatId, token: string): Promise<Result<Seat, Refusal>> {
    const seat = this.#all.get(seatId)
    if (seat === undefined || this.#leaving.has(seatId)) return err({ code: 'room/no-such-seat' })
    const tokenHash = hashSecret(token)
    const stored = await this.#store({ kind: 'seat-moved', seatId, tokenHash })
    if (!stored.ok) return stored
    this.#ofTokenHash.delete(seat.tokenHash)
    seat.tokenHash = tokenHash
    this.#ofTokenHash.set(tokenHash, seat)
    return ok(seat)
  }

  /** The seat of this child of the roster, whatever it is called by now; null when nobody has picked that name. */
  ofPupil(pupilId: string): Seat | null {
    for (const seat of this.#all.values()) if (seat.pupilId === pupilId) return seat
    return null
  }

  /** Whether somebody has this name, or is about to. */
  isTaken(name: string): boolean {
    return this.#claimedNames.has(nameKey(name)) || this.ofName(name) !== null
  }

  /** The seat under this name, case and accents aside; null when nobody sits there under it. */
  ofName(name: string): Seat | null {
    const key = nameKey(name)
    for (const seat of this.#all.values()) if (nameKey(seat.name) === key) return seat
    return null
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
