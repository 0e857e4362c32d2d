/**
 * Rounds of a class that are over and no longer held. The room knows of them what a list shows; the record has the rest.
 * Turns that were made in one of them without a connection may still come in: they are judged on what the record holds of
 * their student, and kept there, where a review finds them.
 */

import { handIn, type TryHandedIn } from '../../engine/contest/hand-in.ts'
import type { RoundId } from '../../engine/contest/ids.ts'
import type { Reached } from '../../engine/contest/round-state.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { StoredRound } from '../store/record.ts'
import type { ListedRound } from './listed-round.ts'
import type { LiveParts } from './parts.ts'
import { replayRound } from './replay-round.ts'
import type { Seat } from './room-seats.ts'
import type { StoreEntry } from './store-entry.ts'
import { tookPart } from './took-part.ts'

export class EarlierRounds {
  readonly #parts: Pick<LiveParts, 'record' | 'nowMs'>
  readonly #store: StoreEntry
  #list: ListedRound[] = []
  /** One after the other, so that each is judged on what the one before has left on record. */
  #newest: Promise<unknown> = Promise.resolve()

  constructor(parts: Pick<LiveParts, 'record' | 'nowMs'>, store: StoreEntry) {
    this.#parts = parts
    this.#store = store
  }

  /** The first one first. */
  get list(): readonly ListedRound[] {
    return this.#list
  }

  restore(rounds: readonly ListedRound[]): void {
    this.#list = [...rounds]
  }

  /** The next round has taken its place. */
  add(round: ListedRound): void {
    this.#list.push(round)
  }

  /**
   * Judges a try that comes in after the end, and keeps it when it is its student's best of those.
   *
   * @returns what it reached, once that is on the disk. Refused for a round that is none of these, that was struck out, or
   *   that had ended before the student came, and by the rules of `handIn`
   */
  handIn(seat: Seat, roundId: RoundId, sent: Omit<TryHandedIn, 'seatId'>): Promise<Result<Reached | null, Refusal>> {
    const done = this.#newest.then(() => this.#handIn(seat, roundId, sent))
    this.#newest = done.catch(() => undefined)
    return done
  }

  async #handIn(
    seat: Seat,
    roundId: RoundId,
    sent: Omit<TryHandedIn, 'seatId'>,
  ): Promise<Result<Reached | null, Refusal>> {
    const isOurs = this.#list.some(({ id }) => id === roundId)
    const stored = isOurs ? await this.#parts.record.loadRound(roundId) : null
    if (stored === null) return err({ code: 'contest/no-such-round' })
    const round = replayRound(partOf(stored, seat))
    if (!tookPart(round, seat)) return err({ code: 'contest/round-over' })
    const next = handIn(round, { ...sent, seatId: seat.id })
    if (!next.ok) return next
    const { judged, isKept } = next.value
    if (!isKept) return ok(judged.reached)
    const { number: tryNumber, steps } = judged
    const atMs = this.#parts.nowMs()
    const kept = await this.#store({ kind: 'handed-in', roundId, seatId: seat.id, tryNumber, steps, atMs })
    return kept.ok ? ok(judged.reached) : kept
  }
}

/** Only what this seat did: nothing else is asked, and a whole class would take a while to replay. */
function partOf(stored: StoredRound, { id }: Seat): StoredRound {
  const isOwn = ({ seatId }: { readonly seatId: Seat['id'] }) => seatId === id
  const { tries, steps, nudges, handedIn } = stored
  return {
    ...stored,
    tries: tries.filter(isOwn),
    steps: steps.filter(isOwn),
    nudges: nudges.filter(isOwn),
    handedIn: handedIn.filter(isOwn),
  }
}
