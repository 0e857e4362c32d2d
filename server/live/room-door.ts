/**
 * The door of a room: under what name somebody comes in, and who waits there until the teacher has looked. Whoever waits is
 * not on record: a page that has lost its connection knocks again by itself.
 */

import type { RandomSource } from '../../engine/chance/random-source.ts'
import { friendlyName } from '../../engine/contest/friendly-names.ts'
import type { SeatId } from '../../engine/contest/ids.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { ClassRoster } from '../../engine/contest/rosters/class-roster.ts'
import { nameKey, readStudentName } from '../../engine/contest/student-name.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { KnockView } from '../../engine/wire/views.ts'
import { hashSecret } from '../secrets.ts'
import type { RoomSeats } from './room-seats.ts'

/** Two classes; more at a door is no class any more. */
export const KNOCKS_MAX = 60

/** What a page says of itself when it comes in. */
export type DoorWish = {
  readonly name: string | undefined
  readonly pupilId: string | undefined
  /** "That is me, on another device." */
  readonly moves: boolean
}

/** Somebody who waits. */
export type Knock = {
  readonly knockId: string
  readonly connectionId: string
  readonly token: string
  readonly name: string
  readonly pupilId: string | null
  /** The seat that is to be taken over; null for a new one. */
  readonly moves: SeatId | null
}

/** What is to be done about a wish. */
export type DoorAnswer =
  | { readonly kind: 'seat'; readonly name: string; readonly pupilId: string | null }
  | { readonly kind: 'wait'; readonly name: string; readonly pupilId: string | null; readonly moves: SeatId | null }

export class RoomDoor {
  readonly #newId: () => string
  /** By the hash of the page's own secret: knocking again is no second knock. */
  readonly #knocks = new Map<string, Knock>()
  entry: RoomEntry

  constructor(newId: () => string, entry: RoomEntry) {
    this.#newId = newId
    this.entry = entry
  }

  /** In the order in which they came. */
  get knocks(): readonly KnockView[] {
    return [...this.#knocks.values()].map(({ knockId, name, moves }) => ({ knockId, name, moves: moves !== null }))
  }

  /**
   * Decides by the teacher's settings; changes nothing.
   *
   * @param token the page's own secret: who knocks again keeps the name that was given
   * @param roster the one that names are picked from, if there is one
   */
  ask(
    wish: DoorWish,
    token: string,
    seats: RoomSeats,
    roster: ClassRoster | null,
    newRandom: () => RandomSource,
  ): Result<DoorAnswer, Refusal> {
    const named = this.#nameFor(wish, token, seats, roster, newRandom)
    if (!named.ok) return named
    const { name, pupilId, isOnList } = named.value
    // Who was given another name since is still the same child of the roster.
    const holder = (pupilId === null ? null : seats.ofPupil(pupilId)) ?? seats.ofName(name)
    if (holder !== null) {
      return wish.moves
        ? ok({ kind: 'wait', name: holder.name, pupilId, moves: holder.id })
        : err({ code: 'name/taken' })
    }
    const mustWait = this.entry.approve || !isOnList
    if (mustWait && this.#waitsUnder(name, token)) return err({ code: 'name/taken' })
    return ok(mustWait ? { kind: 'wait', name, pupilId, moves: null } : { kind: 'seat', name, pupilId })
  }

  /** Does somebody else wait under this name, for a seat of their own? */
  #waitsUnder(name: string, token: string): boolean {
    const own = hashSecret(token)
    return [...this.#knocks].some(
      ([key, knock]) => key !== own && knock.moves === null && nameKey(knock.name) === nameKey(name),
    )
  }

  wait(answer: Extract<DoorAnswer, { kind: 'wait' }>, token: string, connectionId: string): Result<null, Refusal> {
    const key = hashSecret(token)
    // One page waits once, whatever it called itself before.
    for (const [other, knock] of this.#knocks)
      if (other !== key && knock.connectionId === connectionId) this.#knocks.delete(other)
    if (!this.#knocks.has(key) && this.#knocks.size >= KNOCKS_MAX)
      return err({ code: 'room/door-crowded', max: KNOCKS_MAX })
    const knockId = this.#knocks.get(key)?.knockId ?? this.#newId()
    const { name, pupilId, moves } = answer
    this.#knocks.set(key, { knockId, connectionId, token, name, pupilId, moves })
    return ok(null)
  }

  /** @returns who waits under this identifier; null when nobody does any more */
  find(knockId: string): Knock | null {
    return [...this.#knocks.values()].find((knock) => knock.knockId === knockId) ?? null
  }

  /** Nobody waits there any more. @returns all who did */
  leaveAll(): readonly Knock[] {
    const all = [...this.#knocks.values()]
    this.#knocks.clear()
    return all
  }

  /** Whoever waited on this connection does not any more. @returns whether somebody did */
  leave(connectionId: string): boolean {
    for (const [key, knock] of this.#knocks) if (knock.connectionId === connectionId) return this.#knocks.delete(key)
    return false
  }

  #nameFor(
    { name, pupilId, moves }: DoorWish,
    token: string,
    seats: RoomSeats,
    roster: ClassRoster | null,
    newRandom: () => RandomSource,
  ): Result<{ name: string; pupilId: string | null; isOnList: boolean }, Refusal> {
    // A roster that was taken off the shelf leaves the room with typed names.
    const names = this.entry.names === 'roster' && roster === null ? 'typed' : this.entry.names
    if (names === 'given' && !moves) {
      const known = this.#knocks.get(hashSecret(token))
      const given = known?.name ?? friendlyName(newRandom(), (candidate) => this.#isGiven(candidate, seats))
      return ok({ name: given, pupilId: null, isOnList: true })
    }
    if (names === 'roster' && pupilId !== undefined) {
      const pupil = roster?.pupils.find((each) => each.pupilId === pupilId)
      return pupil === undefined ? err({ code: 'room/pick-a-name' }) : ok({ name: pupil.name, pupilId, isOnList: true })
    }
    if (name === undefined) return err({ code: names === 'roster' ? 'room/pick-a-name' : 'name/empty' })
    const read = readStudentName(name)
    if (!read.ok) return read
    // Nobody comes by a name of their own by saying that they move.
    if (names === 'given' && seats.ofName(read.value) === null) return err({ code: 'room/no-such-seat' })
    return ok({ name: read.value, pupilId: null, isOnList: names !== 'roster' })
  }

  /** Does anybody have this name, who sits, comes in just now, or waits? */
  #isGiven(name: string, seats: RoomSeats): boolean {
    if (seats.isTaken(name)) return true
    for (const knock of this.#knocks.values()) if (knock.name === name) return true
    return false
  }
}
