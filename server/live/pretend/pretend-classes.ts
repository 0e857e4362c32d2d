/**
 * A pretend class: twelve simulated students who come into a room through the same door as everybody, over real
 * connections to this very server. Their seats are marked, and so is every screen of such a room.
 */

import type { RoomId } from '../../../engine/contest/ids.ts'
import { err, ok, type Result } from '../../../engine/result.ts'
import type { Refusal } from '../../../engine/wire/refusal.ts'
import type { LiveRoom } from '../live-room.ts'
import type { LiveParts } from '../parts.ts'
import { SKILLS } from './pretend-mind.ts'
import { PretendStudent } from './pretend-student.ts'

/** Invented; short enough for the narrowest lane. */
const NAMES = ['Amaru', 'Birk', 'Celia', 'Dilan', 'Esme', 'Farid', 'Grete', 'Ilko', 'Malou', 'Nuri', 'Oona', 'Vito']

export class PretendClasses {
  readonly #parts: LiveParts
  readonly #pretendKey: string
  readonly #classes = new Map<RoomId, PretendStudent[]>()
  readonly #seating = new Map<RoomId, Promise<Result<null, Refusal>>>()
  /** Address of this server on loopback; known once it listens. */
  url: string | null = null

  constructor(parts: LiveParts, pretendKey: string) {
    this.#parts = parts
    this.#pretendKey = pretendKey
  }

  /** Seats the class, all of it or nobody; pressing twice seats one class. */
  seat(room: LiveRoom): Promise<Result<null, Refusal>> {
    const underWay = this.#seating.get(room.facts.id)
    if (underWay !== undefined) return underWay
    if (this.#classes.has(room.facts.id)) return Promise.resolve(ok(null))
    const seating = this.#seat(room).finally(() => this.#seating.delete(room.facts.id))
    this.#seating.set(room.facts.id, seating)
    return seating
  }

  async #seat(room: LiveRoom): Promise<Result<null, Refusal>> {
    const students = SKILLS.map((_, index) => this.#newStudent(index))
    this.#classes.set(room.facts.id, students)
    const refusals = await Promise.all(
      students.map(async (student, index) => {
        const refusal = await student.join(room.facts.code, NAMES[index])
        // A real student may have come in under this name.
        return refusal?.code === 'name/taken' ? student.join(room.facts.code, `${NAMES[index]} ${index + 1}`) : refusal
      }),
    )
    const refusal = refusals.find((each) => each !== null)
    // Sent home while it was coming in: whoever was behind the door by then goes too.
    const isStillWanted = this.#classes.get(room.facts.id) === students
    if ((refusal === undefined || refusal === null) && isStillWanted) return ok(null)
    for (const student of students) student.stop()
    if (isStillWanted) this.#classes.delete(room.facts.id)
    const gone = await this.#removeSeats(room)
    return refusal === undefined || refusal === null ? gone : err(refusal)
  }

  /** Sends the class home and gives its seats up. */
  unseat(room: LiveRoom): Promise<Result<null, Refusal>> {
    this.sendHome(room)
    return this.#removeSeats(room)
  }

  async #removeSeats(room: LiveRoom): Promise<Result<null, Refusal>> {
    const seats = [...room.seats.values()].filter((seat) => seat.pretend)
    const removed = await Promise.all(seats.map((seat) => room.entrance.remove(seat.id)))
    const refused = removed.find((each) => !each.ok && each.error.code !== 'room/no-such-seat')
    return refused === undefined || refused.ok ? ok(null) : refused
  }

  /** After a restart: the simulated students that the record kept come back to their seats. */
  async comeBack(room: LiveRoom): Promise<void> {
    const seats = [...room.seats.values()].filter((seat) => seat.pretend)
    if (seats.length === 0 || this.#classes.has(room.facts.id)) return
    const students = seats.map((_, index) => this.#newStudent(index))
    this.#classes.set(room.facts.id, students)
    await Promise.all(students.map((student, index) => student.comeBack(seats[index].id)))
  }

  sendHome(room: LiveRoom): void {
    for (const student of this.#classes.get(room.facts.id) ?? []) student.stop()
    this.#classes.delete(room.facts.id)
  }

  stop(): void {
    for (const students of this.#classes.values()) for (const student of students) student.stop()
    this.#classes.clear()
  }

  #newStudent(index: number): PretendStudent {
    const { newRandom, nowMs } = this.#parts
    if (this.url === null) throw new Error('a pretend class needs a listening server')
    return new PretendStudent({
      url: this.url,
      pretendKey: this.#pretendKey,
      skill: SKILLS[index % SKILLS.length],
      random: newRandom(),
      nowMs,
    })
  }
}
