/**
 * The round of a room, held twice (`held-twice.ts`): as accepted and as stored. Both are made by the same pure functions from
 * the same events, the stored one when the record says so.
 */

import { type ClockEvent, changeClock } from '../../engine/contest/change-clock.ts'
import { handIn, type TryHandedIn, withHandedIn } from '../../engine/contest/hand-in.ts'
import type { RoomId, RoundId, SeatId } from '../../engine/contest/ids.ts'
import { COUNTDOWN_MS, ROOM_ROUNDS_MAX } from '../../engine/contest/limits.ts'
import { giveNudge, type Nudge, withNudge } from '../../engine/contest/nudges.ts'
import { isOpen } from '../../engine/contest/round-clock.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { aNewRound, type Reached, type Round } from '../../engine/contest/round-state.ts'
import { momentOf, playSteps, type TurnsAnswer, type TurnsSent, takeTurns } from '../../engine/contest/take-turns.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { dealStart } from './deal-start.ts'
import { HeldTwice } from './held-twice.ts'
import type { LiveParts } from './parts.ts'
import type { StoreEntry } from './store-entry.ts'

/** A round and the number of its clock events, which is the number of the next one. */
export type Standing = { readonly round: Round; readonly nClockEvents: number }

export type TurnsOfSeat = Pick<TurnsSent, 'seatId' | 'late' | 'tryNumber' | 'from' | 'steps' | 'how'> & {
  readonly roundId: RoundId
}

export class RoomRound {
  readonly #parts: LiveParts
  readonly #roomId: RoomId
  readonly #nRoundsBefore: number
  readonly #onReplaced: (round: Round) => void
  readonly #held: HeldTwice<Standing>
  #dealing: { readonly number: number; readonly done: Promise<Result<RoundId, Refusal>> } | null = null

  /**
   * @param nRoundsBefore rounds of this room that others hold; the first one dealt here has the next number
   * @param onReplaced told of a round when the next one takes its place
   */
  constructor(
    parts: LiveParts,
    roomId: RoomId,
    store: StoreEntry,
    nRoundsBefore: number,
    onReplaced: (round: Round) => void,
  ) {
    this.#onReplaced = onReplaced
    this.#parts = parts
    this.#roomId = roomId
    this.#held = new HeldTwice(store)
    this.#nRoundsBefore = nRoundsBefore
  }

  restore(standing: Standing | null): void {
    this.#held.restore(standing)
  }

  /** The round as it is on the disk: the only one that may be shown. */
  get shown(): Round | null {
    return this.#held.durable?.round ?? null
  }

  /** Is this the round that is held, accepted already or stored? */
  holds(roundId: RoundId): boolean {
    return this.#held.applied?.round.id === roundId
  }

  /** @returns the refusal, once nothing that it rests on is under way any more */
  settled<T>(result: Result<T, Refusal>): Promise<Result<T, Refusal>> {
    return this.#held.tell(result)
  }

  get nRounds(): number {
    return this.#held.durable?.round.number ?? this.#nRoundsBefore
  }

  /** Whether a round is being dealt, or one is played that the teacher has to end before anything else. */
  get isUnderWay(): boolean {
    const phase = this.#held.applied?.round.clock.phase
    return this.#dealing !== null || phase === 'running' || phase === 'paused'
  }

  /**
   * Deals a start and gives the signal in COUNTDOWN_MS; a round that was dealt before is only given its signal.
   *
   * @param number the round that the desk means; pressing twice, or from two tabs, starts one round
   */
  start(number: number, settings: RoundSettings): Promise<Result<RoundId, Refusal>> {
    const round = this.#held.applied?.round
    // Dealt ahead for real cubes; or the server was killed, or the disk refused, between the dealing and the signal. The desk
    // counts that round already.
    const isWaiting = round?.clock.phase === 'ready' && number === round.number + 1
    if (this.#dealing === null && round !== undefined && (number === round.number || isWaiting))
      return this.#giveSignal(round)
    return this.#once(number, async () => {
      const dealt = await this.#deal(number, settings)
      return dealt.ok ? this.#giveSignal(dealt.value) : dealt
    })
  }

  /** Deals a start and waits with the signal. Dealing twice deals one round. */
  deal(number: number, settings: RoundSettings): Promise<Result<RoundId, Refusal>> {
    const round = this.#held.applied?.round
    if (this.#dealing === null && round?.number === number) return this.#held.tell(ok(round.id))
    return this.#once(number, async () => {
      const dealt = await this.#deal(number, settings)
      return dealt.ok ? ok(dealt.value.id) : dealt
    })
  }

  #once(number: number, act: () => Promise<Result<RoundId, Refusal>>): Promise<Result<RoundId, Refusal>> {
    if (this.#dealing?.number === number) return this.#dealing.done
    if (this.#dealing !== null) return this.#held.tell(err({ code: 'room/round-open' }))
    const done = act().finally(() => {
      this.#dealing = null
    })
    this.#dealing = { number, done }
    return done
  }

  async #deal(number: number, settings: RoundSettings): Promise<Result<Round, Refusal>> {
    if (number !== this.nRounds + 1) return this.#held.tell(err({ code: 'contest/wrong-phase', phase: 'other-round' }))
    if (number > ROOM_ROUNDS_MAX) return err({ code: 'room/too-many-rounds', max: ROOM_ROUNDS_MAX })
    if (this.#held.applied !== null && isOpen(this.#held.applied.round.clock))
      return this.#held.tell(err({ code: 'room/round-open' }))
    const start = await dealStart(settings, this.#parts.newRandom())
    if (start === null) return err({ code: 'room/no-such-start' })
    const round = aNewRound({ id: this.#parts.newId() as RoundId, number, settings, start })
    const dealt: Standing = { round, nClockEvents: 0 }
    const entry = {
      kind: 'round-drawn',
      roundId: round.id,
      roomId: this.#roomId,
      number,
      settings,
      start: formatStickers(start),
      atMs: this.#parts.nowMs(),
    } as const
    const stored = await this.#held.change(dealt, entry, (durable) => {
      if (durable !== null) this.#onReplaced(durable.round)
      return dealt
    })
    return stored.ok ? ok(round) : stored
  }

  async #giveSignal({ id }: Round): Promise<Result<RoundId, Refusal>> {
    if (this.#held.applied?.round.id !== id || this.#held.applied.round.clock.phase !== 'ready')
      return this.#held.tell(ok(id))
    const started = await this.change(id, { kind: 'started', startsAtMs: this.#parts.nowMs() + COUNTDOWN_MS })
    return started.ok ? ok(id) : started
  }

  /** Pause, resume, add time, end, void, outage. Asking again for what is so is no fault. */
  async change(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    const { applied } = this.#held
    if (applied === null || applied.round.id !== roundId) return this.#held.tell(err({ code: 'contest/no-such-round' }))
    if (this.#held.isAstray) return err({ code: 'store/saving-paused' })
    if (isAlreadySo(applied.round, event)) return this.#held.tell(ok(null))
    const next = afterEvent(applied, event)
    if (!next.ok) return this.#held.tell(next)
    const { nClockEvents: order } = applied
    const entry = { kind: 'clock-event', roundId, order, event, atMs: this.#parts.nowMs() } as const
    return this.#held.change(next.value, entry, (durable) => {
      if (durable?.round.id !== roundId) return durable
      const after = afterEvent(durable, event)
      return after.ok ? after.value : this.#neverStored(durable, event.kind)
    })
  }

  /** Checks and stores the turns of a seat; resolves when they are on the disk. */
  async takeTurns({ roundId, ...sent }: TurnsOfSeat): Promise<Result<TurnsAnswer, Refusal>> {
    const { applied } = this.#held
    if (applied === null || applied.round.id !== roundId) return this.#held.tell(err({ code: 'contest/no-such-round' }))
    if (this.#held.isAstray) return err({ code: 'store/saving-paused' })
    const event: TurnsSent = { ...sent, atMs: this.#parts.nowMs() }
    const taken = takeTurns(applied.round, event)
    if (!taken.ok) return this.#held.tell(taken)
    const { round, fresh, answer } = taken.value
    const { how } = sent
    if (fresh === null) return this.#held.tell(ok(answer))
    const { tryNumber, from, steps } = fresh
    const { seatId, late, atMs } = event
    const momentMs = momentOf(applied.round, atMs)
    const entry = { kind: 'steps', roundId, seatId, tryNumber, from, steps, late, how, momentMs, atMs } as const
    const stored = await this.#held.change({ ...applied, round }, entry, (durable) => {
      if (durable?.round.id !== roundId) return durable
      const after = playSteps(durable.round, { ...event, from, steps, momentMs })
      return after.ok ? { ...durable, round: after.value.round } : this.#neverStored(durable, 'steps')
    })
    return stored.ok ? ok(answer) : stored
  }

  /** Sends nudges, which show with the next view when all of them are stored. */
  async nudge(roundId: RoundId, seatIds: readonly SeatId[], nudge: Nudge): Promise<Result<null, Refusal>> {
    const given = await Promise.all(seatIds.map((seatId) => this.#nudgeOne(roundId, seatId, nudge)))
    return given.find((each) => !each.ok) ?? ok(null)
  }

  async #nudgeOne(roundId: RoundId, seatId: SeatId, nudge: Nudge): Promise<Result<null, Refusal>> {
    const applied = this.#appliedRound(roundId)
    if (!applied.ok) return this.#held.tell(applied)
    const next = giveNudge(applied.value.round, { seatId, nudge, atMs: this.#parts.nowMs() })
    if (!next.ok) return this.#held.tell(next)
    const { round, given } = next.value
    return this.#held.change({ ...applied.value, round }, { kind: 'nudge', roundId, seatId, ...given }, (durable) =>
      durable?.round.id === roundId ? { ...durable, round: withNudge(durable.round, seatId, given) } : durable,
    )
  }

  /** Judges a try that comes in after the end, and keeps it beside the ranking. */
  async handIn(roundId: RoundId, sent: TryHandedIn): Promise<Result<Reached | null, Refusal>> {
    const applied = this.#appliedRound(roundId)
    if (!applied.ok) return this.#held.tell(applied)
    const next = handIn(applied.value.round, sent)
    if (!next.ok) return this.#held.tell(next)
    const { round, judged, isKept } = next.value
    const answer = ok(judged.reached)
    if (!isKept) return this.#held.tell(answer)
    const { seatId } = sent
    const { number: tryNumber, steps } = judged
    const entry = { kind: 'handed-in', roundId, seatId, tryNumber, steps, atMs: this.#parts.nowMs() } as const
    const stored = await this.#held.change({ ...applied.value, round }, entry, (durable) =>
      durable?.round.id === roundId ? { ...durable, round: withHandedIn(durable.round, seatId, judged) } : durable,
    )
    return stored.ok ? answer : stored
  }

  #appliedRound(roundId: RoundId): Result<Standing, Refusal> {
    const { applied } = this.#held
    if (applied === null || applied.round.id !== roundId) return err({ code: 'contest/no-such-round' })
    return this.#held.isAstray ? err({ code: 'store/saving-paused' }) : ok(applied)
  }

  /** The record holds what the rules do not allow here. Shown stays what was; a restart will tell. */
  #neverStored(durable: Standing, what: string): Standing {
    this.#parts.log.error({ room: this.#roomId, round: durable.round.id, what }, 'stored, but against the rules')
    return durable
  }
}

function afterEvent(standing: Standing, event: ClockEvent): Result<Standing, Refusal> {
  const changed = changeClock(standing.round, event)
  return changed.ok ? ok({ round: changed.value, nClockEvents: standing.nClockEvents + 1 }) : changed
}

/** Two tabs of one desk, or a finger that presses twice: the second wish finds its work done. */
function isAlreadySo(round: Round, event: ClockEvent): boolean {
  const { phase } = round.clock
  if (event.kind === 'paused') return phase === 'paused'
  if (event.kind === 'resumed') return phase === 'running'
  if (event.kind === 'ended') return phase === 'ended'
  return event.kind === 'voided' && phase === 'void'
}
